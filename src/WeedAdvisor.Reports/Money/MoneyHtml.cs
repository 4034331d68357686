using System.Collections.Immutable;
using System.Net;
using System.Text;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>
/// What the ways of a visit cost, as one HTML page that stands by itself: no script, nothing from outside, and readable
/// on paper.
/// </summary>
public static class MoneyHtml
{
    private const string Style =
        "body{font-family:sans-serif;line-height:1.4;max-width:75em;margin:1em auto;padding:0 1em;color:#000;background:#fff}"
        + "table{border-collapse:collapse;width:100%}caption{text-align:left;font-weight:bold;padding:.5em 0}"
        + "th,td{border-bottom:1px solid #999;padding:.25em .5em;text-align:right;vertical-align:top}"
        + "th:first-child,td:first-child,td.text{text-align:left}tr.today{background:#eee;font-weight:bold}"
        + "code{font-size:85%}svg{max-width:100%;height:auto}"
        + "@media print{body{max-width:none;margin:0;font-size:9pt}section{break-inside:auto}tr,svg{break-inside:avoid}thead{display:table-header-group}}";

    /// <summary>The page; lines end with a line feed.</summary>
    public static string Of(MoneyReport report)
    {
        var html = new StringBuilder();
        string title = $"What each way costs: {report.Visit.Nursery ?? report.Visit.Id}";
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append($"<title>{Safe(title)}</title>\n<style>{Style}</style>\n</head>\n<body>\n");
        html.Append($"<h1>{Safe(title)}</h1>\n");
        Paragraph(html, $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge {report.Knowledge.Stamp.Brief}");
        foreach (AreaMoney area in report.Areas)
            WriteArea(html, area);
        html.Append("<section>\n<h2>How to read this</h2>\n");
        List(html, MoneyNotes.Standing(report));
        return html.Append("</section>\n</body>\n</html>\n").ToString();
    }

    private static void WriteArea(StringBuilder html, AreaMoney area)
    {
        html.Append($"<section>\n<h2>{Safe(area.Area.Name)}</h2>\n");
        foreach (string refusal in area.Refusals)
            Paragraph(html, refusal);
        if (area.Compared is { } compared)
        {
            foreach (string basis in MoneyNotes.Basis(compared))
                Paragraph(html, basis);
            if (area.Against is { } against)
                WriteAgainst(html, compared, against);
            else
                WriteWays(html, compared);
        }

        html.Append("</section>\n");
    }

    private static void WriteWays(StringBuilder html, WaysCompared compared)
    {
        html.Append("<table>\n<caption>Ways through the year, the cheapest first</caption>\n<thead>\n<tr><th scope=\"col\">way</th>");
        foreach (MoneyColumn column in MoneyColumns.All)
            html.Append($"<th scope=\"col\">{Safe(column.Long)}</th>");
        html.Append("</tr>\n</thead>\n<tbody>\n");
        foreach (Way way in compared.Ways)
        {
            bool isToday = way == compared.Today;
            html.Append(isToday ? "<tr class=\"today\">" : "<tr>");
            html.Append($"<th scope=\"row\">{Safe(way.Plan.Name)} <code>{Safe(way.Plan.Id)}</code></th>");
            foreach (MoneyColumn column in MoneyColumns.All)
                html.Append($"<td>{Safe(column.Value(compared, way))}</td>");
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
        string[] left = [.. MoneyNotes.Left(compared)];
        if (left.Length == 0)
            return;
        html.Append("<h3>Not compared</h3>\n");
        List(html, left);
    }

    private static void WriteAgainst(StringBuilder html, WaysCompared compared, WayAgainst against)
    {
        html.Append($"<h3>{Safe(against.Way.Plan.Name)} against today's way</h3>\n");
        html.Append("<table>\n<caption>Partial budget, US dollars a year for 1000 pots; only what changes</caption>\n");
        html.Append("<thead>\n<tr><th scope=\"col\">line</th><th scope=\"col\">amount</th><th scope=\"col\">working</th></tr>\n</thead>\n");
        foreach ((string title, ImmutableArray<BudgetLine> lines) in AgainstText.Parts(against.Budget))
        {
            html.Append($"<tbody>\n<tr><th scope=\"rowgroup\">{Safe(title)}</th>");
            html.Append($"<th>{Safe(Figures.Dollars(lines.Sum(line => line.Usd)))}</th><td></td></tr>\n");
            foreach (BudgetLine line in lines)
            {
                html.Append($"<tr><td>{Safe(line.Name)}</td><td>{Safe(Figures.Dollars(line.Usd))}</td>");
                html.Append($"<td class=\"text\">{Safe(line.Working)}</td></tr>\n");
            }

            html.Append("</tbody>\n");
        }

        html.Append("</table>\n");
        Paragraph(html, AgainstText.NetLine(compared, against.Budget));
        Paragraph(html, MoneyNotes.Wage(against, compared.Case.WageUsd));
        Paragraph(html, MoneyNotes.Payback(against));
        html.Append("<h3>What moves the net change most</h3>\n");
        Paragraph(html, "One input at a time, low to high. The line stands at the net change reckoned with.");
        html.Append("<figure>\n").Append(SwingSvg.Of(against.Sensitivity, "What moves the net change most")).Append("</figure>\n");
        WriteSwings(html, against.Sensitivity);
    }

    private static void WriteSwings(StringBuilder html, Sensitivity sensitivity)
    {
        html.Append("<table>\n<caption>The same in figures</caption>\n<thead>\n<tr><th scope=\"col\">input</th><th scope=\"col\">from</th>");
        html.Append("<th scope=\"col\">to</th><th scope=\"col\">net change from</th><th scope=\"col\">to</th></tr>\n</thead>\n<tbody>\n");
        foreach (Swing swing in sensitivity.Swings)
        {
            html.Append($"<tr><th scope=\"row\">{Safe($"{swing.Input.Name}, {swing.Input.Unit}")}</th>");
            html.Append($"<td>{Figures.Plain(swing.Input.Low)}</td><td>{Figures.Plain(swing.Input.High)}</td>");
            html.Append($"<td>{SwingBars.Signed(swing.AtLow)}</td><td>{SwingBars.Signed(swing.AtHigh)}</td></tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static void Paragraph(StringBuilder html, string text) => html.Append($"<p>{Safe(text)}</p>\n");

    private static void List(StringBuilder html, IEnumerable<string> items)
    {
        html.Append("<ul>\n");
        foreach (string item in items)
            html.Append($"<li>{Safe(item)}</li>\n");
        html.Append("</ul>\n");
    }

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
