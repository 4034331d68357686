using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Text.Brief;

/// <summary>The clear actions: the best of each group with what matters most, the rest by name.</summary>
internal static class BriefActions
{
    private const int MostCautionsOfPractice = 2;
    private const int Left = 6;

    /// <summary>Writes the actions of an area.</summary>
    /// <param name="page">The page.</param>
    /// <param name="style">How it is written.</param>
    /// <param name="area">The advice.</param>
    /// <param name="told">What earlier areas of the report told; it grows.</param>
    public static void Write(Page page, BriefStyle style, AreaAdvice area, Told told)
    {
        var points = InFull(area).ToDictionary(
            action => action.Action,
            action => told.WhatIsNew(action.Action, Point.Of(style, action)),
            StringComparer.Ordinal);
        var notes = new Notes(InFull(area).Select(action => points[action.Action]));
        foreach (ActionGroup group in ActionGroup.Of(area))
        {
            page.Heading(group.Title);
            if (group.Actions.IsEmpty)
                page.Write(2, "Nothing is clear to do now.");
            foreach (ClearAction action in group.InFull)
            {
                page.Gap();
                string? toldIn = told.AreaOf(action.Action);
                if (toldIn is not null && points[action.Action].IsEmpty)
                {
                    WriteHead(page, style.Names, action, $": see {toldIn}");
                    WriteDates(page, style, action);
                    continue;
                }

                WriteAction(page, style, action, toldIn);
                WritePoints(page, style, action, points[action.Action], notes);
            }

            WriteRest(page, style.Names, [.. group.Rest]);
        }

        notes.Write(page);
        foreach (ClearAction action in InFull(area).Where(action => !style.Names.IsTreatment(action.Action)))
            told.Add(action.Action, area.Area.Name, points[action.Action]);
    }

    /// <summary>The actions told in full.</summary>
    public static IEnumerable<ClearAction> InFull(AreaAdvice area) =>
        ActionGroup.Of(area).SelectMany(group => group.InFull);

    private static void WriteAction(Page page, BriefStyle style, ClearAction action, string? toldIn)
    {
        CatalogueAction? record = style.Names.Record(action.Action);
        WriteHead(page, style.Names, action);
        if (toldIn is not null)
            page.Write(Left, $"How, why and what to mind: see {toldIn}.");
        else if (record is not null)
            page.Write(Left, record.What);
        string basis = Names.CostBasis(style.IsForPots);
        string?[] figures = [EffectText(style.Names, action.Effect, record), Costs.Text(action, basis)];
        page.Write(Left, Figures.Sentence(string.Join("; ", figures.Where(figure => figure is not null))));
        WriteDates(page, style, action);
        DayLine.Write(page, Left, action);
    }

    private static void WriteDates(Page page, BriefStyle style, ClearAction action) =>
        DateLines.Write(page, Left, style.Names.Dates(action.Action, style.Area, style.Day), style.Day);

    private static void WriteHead(Page page, Names names, ClearAction action, string after = "")
    {
        string rank = action.Rank.ToString(CultureInfo.InvariantCulture).PadLeft(3);
        // Who reads no more than the name must see that something could still stand against it.
        string unless = action.Status == ActionStatus.Clear ? "" : $", {StatusWords.Of(action, names.NeedInShort)}";
        page.Write(0, $" {rank}. ", $"{names.Action(action.Action)} ({Figures.Share(action.Merit)}){unless}{after}");
    }

    private static void WritePoints(
        Page page, BriefStyle style, ClearAction action, ImmutableArray<Point> points, Notes notes)
    {
        Treatment? treatment = style.Names.Treatment(action.Action);
        Point[] own = [.. points.Where(point => !notes.Holds(point))];
        Point[] cautions = [.. own.Where(point => point.IsCaution)];
        // What to mind with a chemical is never cut short.
        bool isAll = treatment is not null || cautions.Length <= MostCautionsOfPractice + 1;
        int shown = isAll ? cautions.Length : MostCautionsOfPractice;
        foreach (Point point in own.Where(point => !point.IsCaution).Concat(cautions.Take(shown)))
            page.Write(Left, point.Mark, point.Own);
        if (cautions.Length > shown)
        {
            string more = Figures.Count(cautions.Length - shown, "more caution", "more cautions");
            page.Write(Left, Point.Mind, $"{more} ('why' shows them)");
        }

        if (notes.LettersOf(points) is { } letters)
            page.Write(Left, "notes: ", letters);
        if (treatment is not null)
            page.Write(Left, "label first: ", string.Join("; ", Safety.BriefLinesFor(treatment, style.Day)));
    }

    private static void WriteRest(Page page, Names names, ImmutableArray<ClearAction> rest)
    {
        if (rest.IsEmpty)
            return;
        page.Gap();
        foreach (ClearAction action in rest)
            WriteHead(page, names, action, Costs.Short(action) is { } cost ? $": {cost}" : "");
    }

    private static string EffectText(Names names, Effect effect, CatalogueAction? record)
    {
        if (effect.Parts.IsEmpty)
            return "no weeds to count an effect on";
        if (effect.Reduction is not { } reduction)
            return "no published effect on these weeds";
        string[] silent =
            [.. effect.Parts.Where(part => part.LowPercent is null).Select(part => names.Weed(part.Weed))];
        string missing = silent.Length == 0 ? "" : $" (no figure for {Listing.And(silent)})";
        bool fromMemory = record is not null && (record.Memory.Contains("effects") || record.Memory.Contains("ratings"));
        return $"about {Figures.Percent(reduction)} fewer of the weeds seen{missing}"
            + (fromMemory ? ", partly from memory" : "");
    }
}
