using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Plan;

/// <summary>
/// What a plan asks out of the till, said once for the page of an area and that of the nursery: what a year spends, and
/// what tools cost on the day they are bought.
/// </summary>
internal static class PlanSpending
{
    /// <summary>What a year spends: the figure that a budget limits.</summary>
    public const string Spent = "materials, visits and a year's share of tools";

    /// <summary>The figure, US dollars for all pots.</summary>
    public static Amount Of(YearCase year, Way way) => Amounts.Dollars(PlanLimits.SpentUsd(year, way));

    /// <summary>Who does it, and with what, where licence or tools are missing; null where nothing is.</summary>
    public static Line? Missing(YearCase year, PlannedWay plan)
    {
        Way way = plan.Way;
        if (plan.Uses.Length > 0 && year.Reading.HasNobodyLicensed)
            return Line.Of(
                $"Nobody here is licensed: a licensed person is called in for each use and brings his tools; his "
                    + $"visits cost {Amounts.Dollars(way.CalledInUsd * year.Pots / 1000)} of it (invented: "
                    + $"licensed-applicator). Nothing of it is for your own hands."
            );
        return way.Tools.IsEmpty
            ? null
            : Line.Of(
                $"To buy for it: {Listing.And([.. way.Tools.Select(tool => tool.Name)])}, "
                    + $"{Amounts.Dollars(way.OutlayUsd)} (invented prices); a year's share of it is counted."
            );
    }
}
