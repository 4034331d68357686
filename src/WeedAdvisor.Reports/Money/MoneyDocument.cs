using System.Globalization;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>What the ways of a visit cost, area by area.</summary>
public static class MoneyDocument
{
    private const int CellIndent = 4;

    /// <summary>The document.</summary>
    public static Document Of(MoneyReport report) =>
        new(
            $"What each way costs, {report.Visit.Nursery ?? "a nursery without a name"}",
            [
                new Paragraph(
                    $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge "
                        + $"{report.Knowledge.Stamp.Brief}"
                ),
                .. LiftedBars.Of(report.Knowledge.Stamp),
                .. report.Areas.SelectMany(OfArea),
                Heading.Section("How to read this"),
                ItemList
                    .Dashes([
                        .. report.Areas.Any(area => area.Compared is not null) ? MoneyNotes.Standing(report) : [],
                        "One way line by line: 'weedadvisor money VISIT --area ID --against WAY', with the word in "
                            + "brackets.",
                    ])
                    .At(2),
            ]
        );

    private static IEnumerable<Block> OfArea(AreaMoney area)
    {
        yield return new Heading(HeadingLevel.Area, Line.Of($"{new Named(area.Area.Name)} ({area.Area.Id})"))
        {
            IsBoxed = true,
        };
        foreach (string refusal in area.Refusals)
            yield return new Paragraph(refusal);
        if (area.Compared is not { } compared)
            yield break;
        foreach (Line basis in MoneyNotes.Basis(compared))
            yield return new Paragraph(basis);
        foreach (Block block in area.Against is { } against ? AgainstBlocks.Of(compared, against) : Ways(compared))
            yield return block;
    }

    private static IEnumerable<Block> Ways(WaysCompared compared)
    {
        yield return new Blank();
        yield return new Table(
            [.. MoneyColumns.All.Select(column => column.Shape)],
            [.. compared.Ways.Select((way, at) => RowOf(compared, way, at + 1))]
        )
        {
            Caption = "Ways through the year, the cheapest first",
            RowHead = "way",
            HeadPlace = RowHeadPlace.Above,
            CellIndent = CellIndent,
            SentenceIndent = CellIndent,
            Between = "; ",
        };
        yield return new Paragraph("* today's way");
        foreach (Line left in MoneyNotes.Left(compared))
            yield return new Paragraph(Line.Of($"Not compared. {left}"));
    }

    private static Row RowOf(WaysCompared compared, Way way, int rank)
    {
        bool isToday = way == compared.Today;
        var head = Line.Of($"{new Named(way.Plan.Name)} [{way.Plan.Id}]");
        return new Row(
            head with
            {
                Action = way.Plan.Id,
            },
            [.. MoneyColumns.All.Select(column => column.Value(compared, way))]
        )
        {
            Mark = $"{rank.ToString(CultureInfo.InvariantCulture).PadLeft(2)}.{(isToday ? "*" : " ")}",
            Tone = isToday ? Tone.Strong : Tone.Normal,
        };
    }
}
