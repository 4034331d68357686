using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>Season plans as plain text: the strip first, then what goes on, what it costs, what escapes, what was assumed.</summary>
public static class SeasonText
{
    private const int LongestCostLabel = 34;

    /// <summary>The text; lines end with a line feed.</summary>
    /// <param name="report">The plans.</param>
    /// <param name="width">Columns of the page.</param>
    /// <param name="full">Whether all work, all escapes and all assumptions are listed.</param>
    /// <param name="colour">Whether the strip is coloured with the control sequences of ECMA-48 (SGR), as terminals take them.</param>
    public static string Of(SeasonReport report, int width, bool full, bool colour = false)
    {
        var page = new Page(width);
        page.Write(0, $"Season plan for {report.Visit.Nursery ?? "a nursery without a name"}");
        page.Write(0, $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge {report.Knowledge.Stamp.Brief}");
        foreach (AreaSeason area in report.Areas)
            new AreaPage(page, report, full).Write(area);
        if (report.Areas.Any(area => area.Plan is not null))
            SafetySection.Write(page);
        return colour ? StripColour.Of(page.ToString(), report) : page.ToString();
    }

    private sealed class AreaPage(Page page, SeasonReport report, bool full)
    {
        private readonly Names _names = new(report.Knowledge);

        public void Write(AreaSeason area)
        {
            page.Gap();
            page.Rule('=');
            page.Write(0, area.Area.Name);
            if (area.Plan is not { } plan)
            {
                foreach (string refusal in area.Refusals)
                    page.Write(2, refusal);
                return;
            }

            Year(plan);
            if (area.After is { } after)
            {
                page.Gap();
                page.Rule('-');
                page.Write(0, "The year after, if this plan is carried out");
                Year(after);
            }

            page.Heading("Assumed");
            foreach (string line in full ? plan.Assumed : plan.Assumed.Take(3))
                page.Write(2, "- ", line);
            if (!full)
                page.Write(2, "All work by day, every escape and every assumption: --full.");
        }

        private void Year(YearPlan plan)
        {
            page.Write(0, Span(plan));
            Drawn(plan);
            Clash(plan);
            Applications(plan);
            Money(plan);
            Escapes(plan);
            Closed(plan);
            if (full)
                Work(plan);
        }

        private static string Span(YearPlan plan)
        {
            SeasonYear year = plan.Case.Year;
            return $"{Figures.Day(year.From)} to {Figures.Day(year.DayOf(SeasonYear.Weeks).AddDays(-1))}; {plan.Case.Region.Name}; all money for 1000 pots";
        }

        private void Drawn(YearPlan plan)
        {
            const int Columns = StripText.NameColumns + SeasonYear.Weeks;
            page.Gap();
            if (page.Width < Columns)
            {
                page.Write(0, FormattableString.Invariant($"The strip of the year needs {Columns} columns: use --width {Columns} or more."));
                return;
            }

            foreach (string line in StripText.Lines(Strip.Of(plan)))
                page.Drawn(0, line);
            page.Write(0, StripText.Key);
        }

        private void Clash(YearPlan plan)
        {
            if (plan.Clash.IsEmpty)
                return;
            page.Heading("No plan");
            page.Write(2, $"These wishes cannot all be met: {string.Join("; ", plan.Clash)}. Drop or loosen one of them.");
        }

        private void Applications(YearPlan plan)
        {
            if (plan.Plan is not { } best)
                return;
            page.Heading("What goes on");
            if (best.Applications.IsEmpty)
                page.Write(2, SeasonWords.Nothing(plan));
            Strip strip = Strip.Of(plan);
            for (int i = 0; i < best.Applications.Length; i++)
            {
                SeasonApplication one = best.Applications[i];
                Treatment treatment = report.Knowledge.Treatments[one.Name];
                page.Write(2, $"{strip.Letters[i]}  ", $"{SeasonWords.Days(plan.Uses[i])}  {treatment.Name} (groups {Groups(treatment)}), {Figures.Dollars(one.Cost)}");
            }
        }

        private static string Groups(Treatment treatment) =>
            string.Join(" + ", treatment.Actives.Select(active => active.Group ?? "none").Distinct());

        private void Money(YearPlan plan)
        {
            if (plan.Plan is not { } best)
                return;
            page.Heading("What it costs");
            Cost("preventives", best.ApplicationCost);
            Cost("hands for what gets through", best.EscapeCost);
            Cost("together", best.Total);
            Cost("hands alone, nothing put on", plan.HandsOnlyUsd);
            page.Write(2, SeasonWords.Proof(plan, best));
            foreach (RulePrice price in plan.RulePrices)
                page.Write(2, "- ", $"{price.Rule.In(plan.Case.Problem)}: {Price(price.Price, price.Percent)}");
            foreach (MonthPrice month in plan.MonthPrices)
                page.Write(2, "- ", $"not going out in {MonthName(month)}: {(month.Usd is { } usd ? Price(usd, month.Percent ?? 0) : "no plan is left")}");
            Next(plan, best);
        }

        private static string MonthName(MonthPrice month) => Figures.LongDay(new DateOnly(month.Year, month.Month, 1))[2..];

        private static string Price(decimal usd, decimal percent) => usd == 0
            ? "costs nothing"
            : FormattableString.Invariant($"costs {Figures.Dollars(usd)} ({percent:0.#} %)");

        private void Cost(string label, decimal usd) =>
            page.Drawn(2, label.PadRight(LongestCostLabel) + Figures.Dollars(usd).PadLeft(12));

        private void Next(YearPlan plan, SeasonPlan best)
        {
            if (plan.NextBest.IsEmpty)
                return;
            page.Heading(plan.NextBestIsProven ? "The next best, proven" : "The next best found");
            foreach ((SeasonPlan next, ImmutableArray<PlannedUse> uses) in plan.NextBest.Zip(plan.UsesOfNextBest))
                page.Write(2, "- ", $"{Figures.Dollars(next.Total)} (+{Figures.Dollars(next.Total - best.Total)}): {SeasonWords.Brief(uses, _names.Action)}");
        }

        private void Escapes(YearPlan plan)
        {
            if (plan.Escapes.IsEmpty)
                return;
            page.Heading("What gets through");
            EscapeSpan[] spans = [.. plan.Escapes.OrderByDescending(span => span.Usd).ThenBy(span => span.Weed, StringComparer.Ordinal).ThenBy(span => span.FromWeek)];
            const int Few = 6;
            foreach (EscapeSpan span in full ? spans : spans.Take(Few))
            {
                page.Write(2, "- ", FormattableString.Invariant(
                    $"{_names.Weed(span.Weed)}, {Figures.Day(plan.Case.Year.DayOf(span.FromWeek))} to {Figures.Day(plan.Case.Year.DayOf(span.ToWeek + 1).AddDays(-1))}: about {span.Seedlings:0} seedlings, {Figures.Dollars(span.Usd)} of pulling"));
            }

            if (!full && spans.Length > Few)
                page.Write(2, $"and {spans.Length - Few} more spans.");
        }

        private void Closed(YearPlan plan)
        {
            if (plan.Closed.IsEmpty)
                return;
            page.Heading("When nothing may go on");
            foreach (ClosedSpan span in plan.Closed)
                page.Write(2, "- ", $"{Figures.Day(plan.Case.Year.DayOf(span.FromWeek))} to {Figures.Day(plan.Case.Year.DayOf(span.ToWeek + 1).AddDays(-1))}: {span.Because}");
        }

        private void Work(YearPlan plan)
        {
            page.Heading("All work, by day");
            foreach (PlannedWork work in plan.Work)
                page.Write(2, "- ", $"{SeasonWords.Days(work.Day, work.LastDay)}: {SeasonWords.Kind(work.Kind)}. {work.Text}");
        }
    }
}
