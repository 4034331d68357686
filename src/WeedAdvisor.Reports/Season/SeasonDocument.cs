using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>Season plans: the strip first, then what goes on, what it costs, what escapes, what was assumed.</summary>
public static class SeasonDocument
{
    private const int MostAssumed = 3;

    /// <summary>The document.</summary>
    /// <param name="report">The plans.</param>
    /// <param name="full">Whether all work, all escapes and all assumptions are listed.</param>
    public static Document Of(SeasonReport report, bool full) =>
        new(
            $"Season plan for {report.Visit.Nursery ?? "a nursery without a name"}",
            [
                new Paragraph(
                    $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge "
                        + $"{report.Knowledge.Stamp.Brief}"
                ),
                .. LiftedBars.Of(report.Knowledge.Stamp),
                .. report.Areas.SelectMany(area => OfArea(area, report, full)),
                .. report.Areas.Any(area => area.Plan is not null) ? SafetyBlocks.Standing() : [],
            ]
        );

    private static IEnumerable<Block> OfArea(AreaSeason area, SeasonReport report, bool full)
    {
        yield return new Heading(HeadingLevel.Area, new Named(area.Area.Name));
        if (area.Plan is not { } plan)
        {
            foreach (string refusal in area.Refusals)
                yield return Said(refusal);
            yield break;
        }

        var names = new Names(report.Knowledge);
        foreach (Block block in Year(plan, names, full))
            yield return block;
        if (area.After is { } after)
        {
            yield return new Heading(HeadingLevel.Part, "The year after, if this plan is carried out");
            foreach (Block block in Year(after, names, full))
                yield return block;
        }

        yield return Heading.Section("Assumed");
        yield return ItemList
            .Dashes((full ? plan.Assumed : plan.Assumed.Take(MostAssumed)).Select(Line.FromString))
            .At(2);
        if (!full)
            yield return Said("All work by day, every escape and every assumption: --full.");
    }

    private static IEnumerable<Block> Year(YearPlan plan, Names names, bool full) =>
        [
            new Paragraph(Span(plan)),
            new Blank(),
            new StripDrawing($"{plan.Case.Area.Name}: weeks across, weeds down", Strip.Of(plan)),
            .. Clash(plan),
            .. SeasonUses.Of(plan, names),
            .. SeasonCosts.Of(plan, names),
            .. Escapes(plan, names, full),
            .. Closed(plan),
            .. full ? Work(plan) : [],
        ];

    private static Line Span(YearPlan plan)
    {
        SeasonYear year = plan.Case.Year;
        return $"{Figures.Day(year.From)} to {Figures.Day(year.DayOf(SeasonYear.Weeks).AddDays(-1))}; "
            + $"{plan.Case.Region.Name}; all money for 1000 pots{Of(plan.Case.Sums.Costed)}";
    }

    private static string Of(CostSite site) =>
        site.Block is { } block
            ? FormattableString.Invariant($" of {block.Pots.Value:#,0}{(site.IsNumberTold ? "" : " (assumed)")}")
            : "";

    private static IEnumerable<Block> Clash(YearPlan plan)
    {
        if (plan.Clash.IsEmpty)
            yield break;
        yield return Heading.Section("No plan");
        yield return Said(
            new Line([
                new Words(
                    $"These wishes cannot all be met: {string.Join("; ", plan.Clash)}. Drop or loosen one of them."
                ),
            ])
            {
                Tone = Tone.Warning,
            }
        );
    }

    private static IEnumerable<Block> Escapes(YearPlan plan, Names names, bool full)
    {
        const int Few = 6;
        if (plan.Escapes.IsEmpty)
            yield break;
        yield return Heading.Section("What gets through");
        EscapeSpan[] spans =
        [
            .. plan
                .Escapes.OrderByDescending(span => span.Usd)
                .ThenBy(span => span.Weed, StringComparer.Ordinal)
                .ThenBy(span => span.FromWeek),
        ];
        yield return ItemList.Dashes((full ? spans : spans.Take(Few)).Select(span => Escape(span, plan, names))).At(2);
        if (!full && spans.Length > Few)
            yield return Said(Line.Of($"and {spans.Length - Few} more spans."));
    }

    private static Line Escape(EscapeSpan span, YearPlan plan, Names names) =>
        Line.Of(
            $"{new Named(names.Weed(span.Weed))}, {SeasonWords.Weeks(plan.Case.Year, span.FromWeek, span.ToWeek)}: "
                + $"about {new Amount((decimal)span.Seedlings, "seedlings", "0")}, {Amounts.Dollars(span.Usd)} of "
                + $"pulling"
        );

    private static IEnumerable<Block> Closed(YearPlan plan)
    {
        if (plan.Closed.IsEmpty)
            yield break;
        yield return Heading.Section("When nothing may go on");
        yield return ItemList
            .Dashes(
                plan.Closed.Select(span =>
                    Line.FromString($"{SeasonWords.Weeks(plan.Case.Year, span.FromWeek, span.ToWeek)}: {span.Because}")
                )
            )
            .At(2);
    }

    private static IEnumerable<Block> Work(YearPlan plan)
    {
        yield return Heading.Section("All work, by day");
        yield return ItemList
            .Dashes(
                plan.Work.Select(work =>
                    Line.FromString($"{SeasonWords.Days(work.Day, work.LastDay)}: {SeasonWords.Work(work, ". ")}") with
                    {
                        Action = work.Action,
                    }
                )
            )
            .At(2);
    }

    private static Block Said(Line line) => new Paragraph(line).At(2);
}
