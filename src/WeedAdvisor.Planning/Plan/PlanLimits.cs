using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>Whether a way keeps the hours and the money that the grower has.</summary>
public static class PlanLimits
{
    private const decimal Thousand = 1000;

    /// <summary>Whether it does.</summary>
    /// <param name="request">What is asked; hours and budget count.</param>
    /// <param name="year">The year.</param>
    /// <param name="way">The way.</param>
    public static bool Keeps(PlanRequest request, YearCase year, Way way) =>
        (request.HoursPerWeek is not { } hours || BusiestWeekHours(year, way) <= hours)
        && (request.BudgetUsd is not { } budget || SpentUsd(year, way) <= budget);

    /// <summary>Hours of the busiest week, for all pots.</summary>
    public static decimal BusiestWeekHours(YearCase year, Way way) => way.HoursByWeek().Max() * year.Pots / Thousand;

    /// <summary>What is spent on materials and a year's share of tools, US dollars for all pots.</summary>
    public static decimal SpentUsd(YearCase year, Way way) =>
        (way.Of(CostKind.Material) + way.Of(CostKind.Equipment)) * year.Pots / Thousand;
}
