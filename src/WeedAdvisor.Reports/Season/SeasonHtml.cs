using System.Net;
using System.Text;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>Season plans as one HTML file: no scripts, nothing from elsewhere, readable on paper.</summary>
public static class SeasonHtml
{
    private const string Style =
        "body{font:16px/1.45 system-ui,sans-serif;max-width:62rem;margin:1.5rem auto;padding:0 1rem;color:#111}"
        + "svg{width:100%;height:auto;font:12px system-ui,sans-serif}.small{font-size:10px;fill:#555}"
        + "table{border-collapse:collapse;margin:.5rem 0}td,th{border:1px solid #bbb;padding:.2rem .6rem;text-align:left;vertical-align:top}"
        + "td.n{text-align:right;white-space:nowrap}td.d{white-space:nowrap}h2{border-top:2px solid #111;padding-top:.6rem}"
        + "@media print{body{max-width:none}h2{break-before:page}h2:first-of-type{break-before:auto}}";

    /// <summary>The page.</summary>
    public static string Of(SeasonReport report)
    {
        var html = new StringBuilder();
        string title = $"Season plan for {report.Visit.Nursery ?? "a nursery without a name"}";
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">")
            .Append($"<title>{Text(title)}</title><style>{Style}</style></head>\n<body>\n<h1>{Text(title)}</h1>\n")
            .Append($"<p>Visit {Text(report.Visit.Id)}, {Figures.LongDay(report.Visit.Date)}; knowledge {Text(report.Knowledge.Stamp.Brief)}. All money in US dollars for 1000 pots.</p>\n");
        foreach (AreaSeason area in report.Areas)
            Area(html, area, report);
        List(html, "Before any chemical", Safety.StandingLines);
        return html.Append("</body>\n</html>\n").ToString();
    }

    private static void Area(StringBuilder html, AreaSeason area, SeasonReport report)
    {
        html.Append($"<h2>{Text(area.Area.Name)}</h2>\n");
        if (area.Plan is not { } plan)
        {
            foreach (string refusal in area.Refusals)
                html.Append($"<p>{Text(refusal)}</p>\n");
            return;
        }

        Year(html, area.Area.Name, plan, report);
        if (area.After is not { } after)
            return;
        html.Append("<h2>The year after, if this plan is carried out</h2>\n");
        Year(html, area.Area.Name, after, report);
    }

    private static void Year(StringBuilder html, string name, YearPlan plan, SeasonReport report)
    {
        html.Append(StripSvg.Of(Strip.Of(plan), $"{name}: weeks across, weeds down")).Append('\n');
        html.Append("<p>Dark: held. Hatched: partly held. Red: comes up and is not held. Grey: does not come up. Letters: what goes on. Bars at the top: nothing may go on.</p>\n");
        if (!plan.Clash.IsEmpty)
            List(html, "No plan: these wishes cannot all be met", plan.Clash);
        if (plan.Plan is { } best)
            Best(html, plan, best, report);
        List(html, "When nothing may go on", plan.Closed.Select(span => $"{Days(plan.Case.Year, span.FromWeek, span.ToWeek)}: {span.Because}"));
        Work(html, plan);
        List(html, "Assumed", plan.Assumed);
    }

    private static void Best(StringBuilder html, YearPlan plan, SeasonPlan best, SeasonReport report)
    {
        html.Append("<h3>What goes on</h3>\n");
        if (best.Applications.IsEmpty)
            html.Append($"<p>{Text(SeasonWords.Nothing(plan))}</p>\n");
        else
            Applications(html, plan, best, report);
        html.Append("<h3>What it costs</h3>\n<table>\n");
        Row(html, "preventives", Figures.Dollars(best.ApplicationCost));
        Row(html, "hands for what gets through", Figures.Dollars(best.EscapeCost));
        Row(html, "together", Figures.Dollars(best.Total));
        Row(html, "hands alone, nothing put on", Figures.Dollars(plan.HandsOnlyUsd));
        html.Append("</table>\n");
        html.Append($"<p>{Text(SeasonWords.Proof(plan, best))}</p>\n");
        List(html, "What the rules cost", plan.RulePrices.Select(price => $"{price.Rule.In(plan.Case.Problem)}: {Figures.Dollars(price.Price)}"));
        List(html, "What gets through", plan.Escapes
            .OrderByDescending(span => span.Usd)
            .Select(span => FormattableString.Invariant(
                $"{report.Knowledge.Weeds[span.Weed].Name}, {Days(plan.Case.Year, span.FromWeek, span.ToWeek)}: about {span.Seedlings:0} seedlings, {Figures.Dollars(span.Usd)} of pulling")));
    }

    private static void Applications(StringBuilder html, YearPlan plan, SeasonPlan best, SeasonReport report)
    {
        Strip strip = Strip.Of(plan);
        html.Append("<table><tr><th></th><th>Days</th><th>What</th><th>Groups</th><th>Cost</th></tr>\n");
        for (int i = 0; i < best.Applications.Length; i++)
        {
            SeasonApplication one = best.Applications[i];
            Treatment treatment = report.Knowledge.Treatments[one.Name];
            string groups = string.Join(" + ", treatment.Actives.Select(active => active.Group ?? "none").Distinct());
            html.Append($"<tr><td>{strip.Letters[i]}</td><td class=\"d\">{SeasonWords.Days(plan.Uses[i])}</td><td>{Text(treatment.Name)}</td><td>{Text(groups)}</td><td class=\"n\">{Figures.Dollars(one.Cost)}</td></tr>\n");
        }

        html.Append("</table>\n");
    }

    private static void Work(StringBuilder html, YearPlan plan)
    {
        if (plan.Work.IsEmpty)
            return;
        html.Append("<h3>All work, by day</h3>\n<table><tr><th>Days</th><th>Kind</th><th>What</th></tr>\n");
        foreach (PlannedWork work in plan.Work)
        {
            string days = SeasonWords.Days(work.Day, work.LastDay);
            html.Append($"<tr><td class=\"d\">{days}</td><td>{Text(SeasonWords.Kind(work.Kind))}</td><td>{Text(work.Text)}</td></tr>\n");
        }

        html.Append("</table>\n");
    }

    private static string Days(SeasonYear year, int from, int to) =>
        $"{Figures.Day(year.DayOf(from))} to {Figures.Day(year.DayOf(to + 1).AddDays(-1))}";

    private static void Row(StringBuilder html, string label, string value) =>
        html.Append($"<tr><td>{Text(label)}</td><td class=\"n\">{Text(value)}</td></tr>\n");

    private static void List(StringBuilder html, string heading, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
            return;
        html.Append($"<h3>{Text(heading)}</h3>\n<ul>\n");
        foreach (string line in all)
            html.Append($"<li>{Text(line)}</li>\n");
        html.Append("</ul>\n");
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
