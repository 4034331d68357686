using System.Globalization;
using System.Text;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>What the ways of a visit cost, as plain text.</summary>
public static class MoneyText
{
    private const int Indent = 4;

    /// <summary>The report as text; lines end with a line feed.</summary>
    public static string Of(MoneyReport report, int width)
    {
        var page = new Page(width);
        page.Write(0, $"What each way costs, {report.Visit.Nursery ?? "a nursery without a name"}");
        page.Write(0, $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge {report.Knowledge.Stamp.Brief}");
        foreach (AreaMoney area in report.Areas)
            WriteArea(page, area);
        page.Heading("How to read this");
        if (report.Areas.Any(area => area.Compared is not null))
        {
            foreach (string note in MoneyNotes.Standing(report))
                page.Write(2, "- ", note);
        }

        page.Write(2, "- ", "One way line by line: 'weedadvisor money VISIT --area ID --against WAY', with the word in brackets.");
        return page.ToString();
    }

    /// <summary>One way against today's, line by line: the partial budget with its working and what moves it most.</summary>
    /// <param name="compared">The ways.</param>
    /// <param name="against">The one way.</param>
    /// <param name="width">Columns.</param>
    public static string Against(WaysCompared compared, WayAgainst against, int width)
    {
        var page = new Page(width);
        AgainstText.Write(page, compared, against);
        return page.ToString();
    }

    private static void WriteArea(Page page, AreaMoney area)
    {
        page.Gap();
        page.Rule('=');
        page.Write(0, $"{area.Area.Name} ({area.Area.Id})");
        page.Rule('=');
        foreach (string refusal in area.Refusals)
            page.Write(0, refusal);
        if (area.Compared is not { } compared)
            return;
        foreach (string basis in MoneyNotes.Basis(compared))
            page.Write(0, basis);
        if (area.Against is { } against)
            AgainstText.Write(page, compared, against);
        else
            WriteWays(page, compared);
    }

    private static void WriteWays(Page page, WaysCompared compared)
    {
        page.Gap();
        bool isTable = page.Width >= Indent + MoneyColumns.All.Sum(column => column.Width);
        if (isTable)
            page.Drawn(Indent, Row(column => column.Short));
        int rank = 0;
        foreach (Way way in compared.Ways)
        {
            rank++;
            string mark = way == compared.Today ? "*" : " ";
            page.Write(0, $"{rank.ToString(CultureInfo.InvariantCulture).PadLeft(2)}.{mark}", $"{way.Plan.Name} [{way.Plan.Id}]");
            if (isTable)
                page.Drawn(Indent, Row(column => column.Value(compared, way)));
            else
                page.Write(Indent, string.Join("; ", MoneyColumns.All.Select(column => $"{column.Long} {column.Value(compared, way)}")));
        }

        page.Write(0, "* today's way");
        foreach (string left in MoneyNotes.Left(compared))
            page.Write(0, $"Not compared. {left}");
    }

    private static string Row(Func<MoneyColumn, string> cell)
    {
        var row = new StringBuilder();
        foreach (MoneyColumn column in MoneyColumns.All)
            row.Append(cell(column).PadLeft(column.Width));
        return row.ToString();
    }
}
