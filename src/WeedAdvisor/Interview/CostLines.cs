using System.Globalization;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview;

/// <summary>What weeds cost, in lines for the screen.</summary>
internal static class CostLines
{
    private const decimal Thousand = 1000;

    /// <summary>The intervals side by side, for all pots.</summary>
    public static IEnumerable<AdviceLine> Rounds(IntervalComparison compared, decimal pots, decimal now)
    {
        double scale = (double)(pots / Thousand);
        yield return new AdviceLine("Rounds compared, a year, all pots", LineTone.Heading);
        yield return new AdviceLine("  every      hours       cost       seeds shed", LineTone.Quiet);
        foreach (WeedingSeason season in compared.Seasons)
        {
            string mark = season.IntervalWeeks == compared.Cheapest.IntervalWeeks ? "  cheapest" : "";
            string today = season.IntervalWeeks == now ? "  now" : "";
            yield return new AdviceLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  {season.IntervalWeeks,2} weeks {season.Hours * scale,8:#,0.0} {"$" + (season.CostUsd(compared.WageUsdPerHour) * scale).ToString("#,0", CultureInfo.InvariantCulture),10} {season.SeedsShed * scale,16:#,0}{mark}{today}"));
        }

        foreach (WageChange change in compared.WageChanges)
        {
            yield return new AdviceLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  From ${change.WageUsdPerHour:0.00} an hour up, every {change.AboveWeeks} weeks is cheaper than every {change.BelowWeeks}."), LineTone.Quiet);
        }
    }

    /// <summary>The ways, cheapest first.</summary>
    public static IEnumerable<AdviceLine> Ways(WaysCompared compared)
    {
        yield return new AdviceLine("The ways, cheapest first: $ a year for 1000 pots, against today's (Enter: line by line)", LineTone.Heading);
        foreach (Way way in compared.Ways)
        {
            bool isToday = way == compared.Today;
            decimal change = way.Usd - compared.Today.Usd;
            string against = isToday ? "today" : (change > 0 ? "+" : "-") + Figures.Dollars(Math.Abs(change));
            yield return new AdviceLine(
                $"{(isToday ? "*" : " ")}{Figures.Dollars(way.Usd),8} {against,8}  {way.Hours.ToString("0.0", CultureInfo.InvariantCulture),5} h  {way.Plan.Name}",
                isToday ? LineTone.Heading : LineTone.Plain,
                way.Plan.Id);
        }
    }
}
