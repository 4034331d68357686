using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>Plain words for rounds of weeding.</summary>
public static class WeedingWords
{
    /// <summary>Which interval is the cheapest, and from which to which wage, in a sentence.</summary>
    public static Line CheapestAt(IntervalComparison compared)
    {
        // The other changes lie at wages that nobody is asking about; the JSON has them all.
        double? from = compared
            .WageChanges.LastOrDefault(change => change.WageUsdPerHour <= (double)compared.WageUsd)
            ?.WageUsdPerHour;
        double? to = compared
            .WageChanges.FirstOrDefault(change => change.WageUsdPerHour > (double)compared.WageUsd)
            ?.WageUsdPerHour;
        Line wages = (from, to) switch
        {
            (null, null) => "at any wage",
            ({ } low, null) => Line.Of($"at any wage from {Amounts.Dollars(low)} an hour up"),
            (null, { } high) => Line.Of($"at any wage up to {Amounts.Dollars(high)} an hour"),
            ({ } low, { } high) => Line.Of($"at wages from {Amounts.Dollars(low)} to {Amounts.Dollars(high)} an hour"),
        };
        return Line.Of($"{Figures.Sentence(Every(compared.Cheapest.Season))} is the cheapest {wages}.");
    }

    /// <summary>How often a season is weeded.</summary>
    public static string Every(WeedingSeason season) => Weeks(season.IntervalWeeks);

    /// <summary>Weeks between rounds.</summary>
    public static string Weeks(int weeks) => weeks == 1 ? "every week" : $"every {weeks} weeks";
}
