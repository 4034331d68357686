using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>The clear actions: the best of each group with what matters most, the rest by name.</summary>
internal static class BriefActions
{
    private const int MostCautionsOfPractice = 2;
    private const int Left = 6;

    /// <summary>The actions of an area.</summary>
    /// <param name="style">How it is written.</param>
    /// <param name="area">The advice.</param>
    /// <param name="told">What is told of each action that is told in full.</param>
    public static IEnumerable<Block> Of(BriefStyle style, AreaAdvice area, IReadOnlyDictionary<string, ToldAction> told)
    {
        var notes = new Notes(InFull(area).Select(action => told[action.Action].Points));
        foreach (ActionGroup group in ActionGroup.Of(area))
        {
            yield return Heading.Section(group.Title);
            if (group.Actions.IsEmpty)
                yield return new Paragraph("Nothing is clear to do now.").At(2);
            foreach (ClearAction action in group.InFull)
            {
                yield return new Blank();
                yield return new ItemList([ItemOf(style, action, told[action.Action], notes)]);
            }

            foreach (Block block in Rest(style.Names, [.. group.Rest]))
                yield return block;
        }

        foreach (Block block in notes.Blocks())
            yield return block;
    }

    /// <summary>All there is to say of the actions told in full, whatever was told of them before.</summary>
    public static ImmutableArray<(string Action, ImmutableArray<Point> Points)> PointsOf(
        BriefStyle style,
        AreaAdvice area
    ) => [.. InFull(area).Select(action => (action.Action, Point.Of(style, action)))];

    /// <summary>The actions told in full.</summary>
    public static IEnumerable<ClearAction> InFull(AreaAdvice area) =>
        ActionGroup.Of(area).SelectMany(group => group.InFull);

    private static Item ItemOf(BriefStyle style, ClearAction action, ToldAction told, Notes notes)
    {
        (ImmutableArray<Point> points, string? toldIn) = told;
        IEnumerable<Block> below =
            toldIn is not null && points.IsEmpty
                ? Dates(style, action)
                :
                [
                    .. What(style, action, toldIn),
                    .. Points(style, action, points, notes)
                        .Select(block => block is Keyed keyed ? keyed.About(action.Action) : block),
                ];
        return new Item(
            Item.Rank(action.Rank),
            Head(style.Names, action, toldIn is not null && points.IsEmpty ? $": see {toldIn}" : "")
        )
        {
            Below = [.. below.Select(block => block.At(Left))],
        };
    }

    private static IEnumerable<Block> What(BriefStyle style, ClearAction action, string? toldIn)
    {
        CatalogueAction? record = style.Names.Record(action.Action);
        if (toldIn is not null)
            yield return new Paragraph($"How, why and what to mind: see {toldIn}.");
        else if (record is not null)
            yield return new Paragraph(record.What);
        Line effect = EffectLine(style.Names, action.Effect, record);
        Line? cost = Costs.Of(action, Names.CostBasis(style.IsForPots));
        yield return new Paragraph(cost is null ? effect : Line.Of($"{effect}; {cost}"));
        foreach (Block block in Dates(style, action).Concat(DayLine.Of(action)))
            yield return block;
    }

    private static IEnumerable<Block> Dates(BriefStyle style, ClearAction action) =>
        DateLines
            .Of(style.Names.Dates(action.Action, style.Area, style.Day), style.Day)
            .Select(line => new Paragraph(line));

    private static Line Head(Names names, ClearAction action, Line after)
    {
        // Who reads no more than the name must see that something could still stand against it.
        string unless = action.Status == ActionStatus.Clear ? "" : $", {StatusWords.Of(action, names.NeedInShort)}";
        var head = Line.Of($"{new Named(names.Action(action.Action))} ({Figures.Share(action.Merit)}){unless}{after}");
        return head with { Action = action.Action, Tone = Tone.Strong };
    }

    private static IEnumerable<Block> Points(
        BriefStyle style,
        ClearAction action,
        ImmutableArray<Point> points,
        Notes notes
    )
    {
        Treatment? treatment = style.Names.Treatment(action.Action);
        Point[] own = [.. points.Where(point => !notes.Holds(point))];
        Point[] cautions = [.. own.Where(point => point.IsCaution)];
        // What to mind with a chemical is never cut short.
        bool isAll = treatment is not null || cautions.Length <= MostCautionsOfPractice + 1;
        int shown = isAll ? cautions.Length : MostCautionsOfPractice;
        foreach (Point point in own.Where(point => !point.IsCaution).Concat(cautions.Take(shown)))
            yield return point.Block();
        if (cautions.Length > shown)
        {
            string more = Figures.Count(cautions.Length - shown, "more caution", "more cautions");
            yield return new Keyed(Point.Mind, $"{more} ('why' shows them)");
        }

        if (notes.LettersOf(points) is { } letters)
            yield return new Keyed("notes: ", letters);
        if (treatment is not null)
        {
            yield return new Keyed(
                "label first: ",
                Line.FromString(string.Join("; ", Safety.BriefLinesFor(treatment, style.Day))) with
                {
                    Tone = Tone.Warning,
                }
            );
        }
    }

    private static IEnumerable<Block> Rest(Names names, ImmutableArray<ClearAction> rest) =>
        rest.IsEmpty
            ? []
            :
            [
                new Blank(),
                new ItemList([
                    .. rest.Select(action => new Item(
                        Item.Rank(action.Rank),
                        Head(names, action, Costs.Brief(action) is { } cost ? Line.Of($": {cost}") : Line.Empty)
                    )),
                ]),
            ];

    private static Line EffectLine(Names names, Effect effect, CatalogueAction? record)
    {
        if (effect.Parts.IsEmpty)
            return "No weeds to count an effect on";
        if (effect.Reduction is not { } reduction)
            return "No published effect on these weeds";
        string[] silent =
        [
            .. effect.Parts.Where(part => part.LowPercent is null).Select(part => names.Weed(part.Weed)),
        ];
        string missing = silent.Length == 0 ? "" : $" (no figure for {Listing.And(silent)})";
        bool fromMemory =
            record is not null && (record.Memory.Contains("effects") || record.Memory.Contains("ratings"));
        return Line.Of(
            $"About {Amounts.Percent(reduction)} fewer of the weeds "
                + $"seen{missing}{(fromMemory ? ", partly from memory" : "")}"
        );
    }
}
