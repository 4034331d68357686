using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Reports.Text;
using Digits = WeedAdvisor.Planning.Rates.Units.Figures;

namespace WeedAdvisor.Reports.Rates;

/// <summary>A rate sum as text: the figures first, then how they come about.</summary>
public static class RateText
{
    private const int Significant = 4, WidestLabel = 34;

    /// <summary>The answer with its working, what was assumed, what to mind, and the sources.</summary>
    /// <param name="report">The sum that was done.</param>
    /// <param name="width">Columns of the page.</param>
    public static string Of(RateReport report, int width)
    {
        var page = new Page(width);
        page.Write(0, report.Form.Title);
        page.Gap();
        return page + Body(report, width);
    }

    /// <summary>The same without the title.</summary>
    /// <param name="report">The sum that was done.</param>
    /// <param name="width">Columns of the page.</param>
    public static string Body(RateReport report, int width)
    {
        var page = new Page(width);
        Results(page, report.Answer);
        page.Heading("Working");
        foreach (WorkingLine line in report.Answer.Working)
            page.Write(2, "- ", line.ToString());
        List(page, "Assumed", report.Assumed);
        List(page, "Mind", report.Answer.Cautions);
        Sources(page, report);
        return page.ToString();
    }

    private static void Results(Page page, RateAnswer answer)
    {
        int column = Math.Min(WidestLabel, answer.Results.Max(result => result.Label.Length)) + 2;
        page.Write(0, "RESULT");
        foreach (RateResult result in answer.Results)
        {
            // A label too long for the column stands above its figure.
            bool isLong = result.Label.Length > column - 2;
            if (isLong)
                page.Write(2, result.Label);
            page.Write(2, (isLong ? "" : result.Label).PadRight(column), Shown(result));
            if (result.IsMeasuredOut)
                page.Write(2, new string(' ', column), MeasuredOut(result));
        }

        foreach (string note in answer.Notes)
            page.Write(2, note);
    }

    /// <summary>A figure in its unit and the others, to four significant figures.</summary>
    public static string Shown(RateResult result)
    {
        string[] figures = [.. result.Shown.Select(value => Digits.Of(value, Significant))];
        return figures is [var own, .. { Length: > 0 } also] ? $"{own} ({string.Join(", ", also)})" : figures[0];
    }

    /// <summary>What a scale or a jug can show of a figure that is weighed or poured.</summary>
    private static string MeasuredOut(RateResult result)
    {
        string[] amounts = [.. MeasuringOut.Of(result.Value).Select(amount => amount.ToString())];
        return amounts.Length == 0 ? "too little to measure out" : $"measure out {string.Join(" or ", amounts)}";
    }

    private static void List(Page page, string title, IEnumerable<string> texts)
    {
        string[] all = [.. texts];
        if (all.Length == 0)
            return;
        page.Heading(title);
        foreach (string text in all)
            page.Write(2, "- ", text);
    }

    private static void Sources(Page page, RateReport report)
    {
        if (report.Answer.Sources.IsEmpty)
            return;
        page.Heading("Sources");
        foreach (string key in report.Answer.Sources)
        {
            if (report.CitationOf(key) is { } citation)
                page.Write(2, $"[{key}] ", citation);
            else
                page.Write(2, $"[{key}]");
        }
    }
}
