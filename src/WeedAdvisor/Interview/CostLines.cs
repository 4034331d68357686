using System.Globalization;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Weeding;

namespace WeedAdvisor.Interview;

/// <summary>The costs of an area as lines.</summary>
internal static class CostLines
{
    private const int NarrowestName = 16;

    private static readonly int[] s_rounds = [6, 10, 10, 13, 10], s_ways = [6, 9, 10, 10];

    /// <summary>Why something cannot be reckoned; then the rounds, then the ways, for all pots.</summary>
    public static IEnumerable<AdviceLine> Of(CostSum sum, int width) =>
        sum.Refusals.SelectMany(why => Text(why, width, LineTone.Warning))
            .Concat(sum is { Intervals: { } intervals, Ways: { } ways } ? Rounds(intervals, ways.Case, width) : [])
            .Concat(sum.Ways is { } compared ? Ways(compared, width) : []);

    /// <summary>What today's way costs, item by item, for 1000 pots: there is nothing to hold it against.</summary>
    public static IEnumerable<AdviceLine> Items(Way way, int width)
    {
        foreach (AdviceLine line in Text(way.Plan.Name, width, LineTone.Heading))
            yield return line;
        foreach (AdviceLine line in Text($"{Figures.Dollars(way.Usd)} a year for 1000 pots. The others are held against it.", width))
            yield return line;
        foreach (CostItem item in way.Items)
        {
            foreach (string line in Wrapping.Lines($"{item.Name}: {Figures.Dollars(item.Usd)}", width, "- ", "  "))
                yield return new AdviceLine(line);
            foreach (string line in Wrapping.Lines(item.Working, width, "    ", "    "))
                yield return new AdviceLine(line, LineTone.Quiet);
        }
    }

    private static IEnumerable<AdviceLine> Rounds(IntervalComparison compared, MoneyCase money, int width)
    {
        double scale = money.Pots / 1000.0;
        string head = Row(s_rounds, "Weeks", "hours", "cost", "seeds shed", "standing");
        yield return new AdviceLine(Cut($"{head}  all pots, a year", width), LineTone.Heading);
        foreach (WeedingSeason season in compared.Seasons)
        {
            bool isCheapest = season.IntervalWeeks == compared.Cheapest.IntervalWeeks;
            string[] marks =
            [
                .. isCheapest ? ["cheapest"] : Array.Empty<string>(),
                .. season.IntervalWeeks == money.IntervalWeeks ? ["now"] : Array.Empty<string>(),
            ];
            string row = Row(
                s_rounds,
                season.IntervalWeeks.ToString(CultureInfo.InvariantCulture),
                Whole(season.Hours * scale),
                Figures.Dollars((decimal)(season.CostUsd(compared.WageUsdPerHour) * scale)),
                Whole(season.SeedsShed * scale),
                Whole(season.Standing * scale));
            yield return new AdviceLine(Cut($"{row}  {string.Join(", ", marks)}".TrimEnd(), width), isCheapest ? LineTone.Heading : LineTone.Plain);
        }

        string applied = money.TodayControl is { } share
            ? $"What you apply stops {Figures.Percent(share)}."
            : "What was applied counts until it runs out.";
        foreach (AdviceLine line in Text($"{WeedingWords.CheapestAt(compared)} {applied}", width, LineTone.Quiet))
            yield return line;
    }

    private static IEnumerable<AdviceLine> Ways(WaysCompared compared, int width)
    {
        int name = Math.Max(NarrowestName, width - s_ways.Sum());
        yield return new AdviceLine("");
        yield return new AdviceLine(
            "Ways, cheapest first".PadRight(name)[..name] + Row(s_ways, "weeks", "hours", "a year", "change"), LineTone.Heading);
        int rank = 0;
        foreach (Way way in compared.Ways)
        {
            rank++;
            bool isToday = way == compared.Today;
            string mark = $"{rank.ToString(CultureInfo.InvariantCulture),2}.{(isToday ? '*' : ' ')}";
            string figures = Row(
                s_ways,
                way.Plan.IntervalWeeks.ToString(CultureInfo.InvariantCulture),
                Whole((double)way.Hours * compared.Case.Pots / 1000),
                Figures.Dollars(All(compared, way.Usd)),
                isToday ? "-" : Change(All(compared, way.Usd - compared.Today.Usd)));
            // The rounds have a column of their own.
            foreach (string line in Wrapping.Lines(way.Plan.Means, name, mark, "    "))
            {
                yield return new AdviceLine(
                    Cut(line.PadRight(name) + figures, width), isToday ? LineTone.Heading : LineTone.Plain, way.Plan.Id);
                figures = "";
            }
        }

        foreach (AdviceLine line in Text("* today's way. Of all pots, plants that cannot be sold counted in.", width, LineTone.Quiet))
            yield return line;
        foreach (AdviceLine line in MoneyNotes.Left(compared).SelectMany(why => Text($"Not compared. {why}", width, LineTone.Quiet)))
            yield return line;
        foreach (AdviceLine line in compared.Case.LeftOut.SelectMany(why => Text($"Not counted: {why}", width, LineTone.Quiet)))
            yield return line;
    }

    private static decimal All(WaysCompared compared, decimal usd) => usd * compared.Case.Pots / 1000;

    private static string Change(decimal usd) => usd < 0 ? "-" + Figures.Dollars(-usd) : "+" + Figures.Dollars(usd);

    private static string Whole(double number) => Math.Round(number).ToString("#,0", CultureInfo.InvariantCulture);

    private static string Row(int[] columns, params string[] cells) =>
        string.Concat(cells.Zip(columns, (cell, column) => " " + cell.PadLeft(column - 1)));

    private static string Cut(string line, int width) => line.Length <= width ? line : line[..width];

    private static IEnumerable<AdviceLine> Text(string text, int width, LineTone tone = LineTone.Plain) =>
        Wrapping.Lines(text, width).Select(line => new AdviceLine(line, tone));
}
