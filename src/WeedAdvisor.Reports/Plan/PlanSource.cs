using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Plan;

/// <summary>What mowing round about is worth, said alike on the page of an area and of the nursery.</summary>
internal static class PlanSource
{
    /// <summary>The sentence.</summary>
    public static Line Of(YearCase year, SourceCleaned source, Names names)
    {
        return Line.Of(
            $"{new Named(names.Action(source.Action))}: {source.Times} times a year cost {All(source.CostsUsd)} and "
                + $"save {All(Math.Max(0, source.SavesUsd))} in these pots; "
                + $"{(source.SavesUsd > source.CostsUsd ? "do it first" : "for these alone it does not pay")}. "
                + $"It is not in the sums of the plan."
        ) with
        {
            Action = source.Action,
        };

        Amount All(decimal usd) => Amounts.Dollars(usd * year.Pots / 1000);
    }
}
