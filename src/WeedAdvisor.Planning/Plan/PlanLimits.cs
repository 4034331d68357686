using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// The hours and the money that the grower has: which years keep them, and a search that keeps to them.
/// </summary>
public static class PlanLimits
{
    private const decimal Thousand = 1000,
        MinutesInHour = 60;

    // Of 1000 pots: what the search rounds.
    private const decimal Rounding = 0.001m;

    /// <summary>Whether a way keeps them.</summary>
    public static bool Keeps(PlanRequest request, YearCase year, Way way) =>
        (request.HoursPerWeek is not { } hours || BusiestWeekHours(year, way) <= hours)
        && (request.BudgetUsd is not { } budget || Spent(way) <= (budget * Thousand / year.Pots) + Rounding);

    /// <summary>
    /// Whether no year with these rounds and measures can keep them, whatever preventives go on: walking alone takes
    /// too many hours, or what is bought for rounds and measures costs too much.
    /// </summary>
    public static bool CannotBeKept(PlanRequest request, YearCase year, Way bare) =>
        (request.BudgetUsd is { } budget && SpentUsd(year, bare) > budget)
        || (request.HoursPerWeek is { } hours && AtLeast(year, bare).Max() > hours);

    /// <summary>
    /// Whether nobody need look at all: what stands when the year is over is cleared, and the walk alone takes more
    /// hours than there are.
    /// </summary>
    public static bool IsHopeless(PlanRequest request, YearCase year) =>
        request.HoursPerWeek is { } hours
        && (decimal)year.Numbers.WalkingMinutes / MinutesInHour * year.Pots / Thousand > hours * PlanSearch.MostSpread;

    /// <summary>Hours of the busiest week, for all pots.</summary>
    public static decimal BusiestWeekHours(YearCase year, Way way) => way.HoursByWeek().Max() * year.Pots / Thousand;

    /// <summary>What is spent on materials and a year's share of tools, US dollars for all pots.</summary>
    public static decimal SpentUsd(YearCase year, Way way) => Spent(way) * year.Pots / Thousand;

    /// <summary>How many uses the budget leaves money for at most over a choice; null where there is none.</summary>
    public static int? MostUses(SeasonCase season, PlanRequest request, Way bare)
    {
        if (request.BudgetUsd is not { } budget)
            return null;
        YearCase year = season.Sums;
        decimal cheapest = season
            .Problem.Candidates.Select(one => WayCosting.SpentOfUse(year, year.Knowledge.Treatments[one.Name]))
            .DefaultIfEmpty(0)
            .Min();
        decimal left = (budget * Thousand / year.Pots) + Rounding - Spent(bare);
        return cheapest <= 0 ? null : (int)Math.Clamp(left / cheapest, 0, year.Weeks);
    }

    /// <summary>
    /// The preventives of a choice under the limits: what costs more than is left is never searched, and no use falls
    /// in a week in which walking leaves no hours for it. Nothing that keeps the limits is left out.
    /// </summary>
    /// <param name="season">The case over the choice.</param>
    /// <param name="request">The limits.</param>
    /// <param name="bare">The choice with nothing put on.</param>
    public static SeasonCase Under(SeasonCase season, PlanRequest request, Way bare)
    {
        if (request is { HoursPerWeek: null, BudgetUsd: null })
            return season;
        YearCase year = season.Sums;
        decimal[] walked = AtLeast(year, bare);
        SeasonProblem problem = season.Problem;
        var uses = problem
            .Candidates.Select(candidate =>
                (candidate.Name, Use: WayCosting.CostOf(year, OnceOf(year, candidate.Name)).Value!)
            )
            .ToImmutableDictionary(one => one.Name, one => one.Use, StringComparer.Ordinal);
        return season with
        {
            Problem = problem with
            {
                Candidates = request.HoursPerWeek is { } hours
                    ?
                    [
                        .. problem.Candidates.Select(one =>
                            InFreeWeeks(one, uses[one.Name].Hours.Middle, walked, hours)
                        ),
                    ]
                    : problem.Candidates,
                Limits = request.BudgetUsd is { } budget
                    ? problem.Limits with
                    {
                        Spending = new SpendingLimit(
                            problem.Candidates.ToImmutableDictionary(
                                one => one.Name,
                                one => WayCosting.SpentOfUse(year, year.Knowledge.Treatments[one.Name]),
                                StringComparer.Ordinal
                            ),
                            Math.Max(0, (budget * Thousand / year.Pots) - Spent(bare))
                        ),
                    }
                    : problem.Limits,
            },
        };
    }

    private static SeasonCandidate InFreeWeeks(
        SeasonCandidate candidate,
        decimal use,
        decimal[] walked,
        decimal hours
    ) => candidate with { Cost = [.. candidate.Cost.Select((cost, week) => walked[week] + use > hours ? null : cost)] };

    private static WayPart OnceOf(YearCase year, string treatment) => new(year.Knowledge.Treatments[treatment], [0]);

    /// <summary>
    /// The same with only what goes on with tools that are there: for a budget that leaves nothing for tools.
    /// </summary>
    public static SeasonCase WithTheToolsThere(SeasonCase season) =>
        season with
        {
            Problem = season.Problem with
            {
                Candidates =
                [
                    .. season.Problem.Candidates.Where(candidate =>
                        season.Sums.Reading.HasNobodyLicensed
                        || !season.Sums.Reading.Lacks(season.Sums.Knowledge.Treatments[candidate.Name].NeedsEquipment)
                    ),
                ],
            },
        };

    /// <summary>
    /// The preventives of a choice whose first round is spread: they stop seed, not plants, so nothing goes on before
    /// the week in which the last part of the pots is clean.
    /// </summary>
    public static SeasonCase AfterCleaning(SeasonCase season, int spreadWeeks) =>
        spreadWeeks <= 1
            ? season
            : season with
            {
                Problem = season.Problem with
                {
                    Candidates =
                    [
                        .. season.Problem.Candidates.Select(one =>
                            one with
                            {
                                Cost = [.. one.Cost.Select((cost, week) => week < spreadWeeks - 1 ? null : cost)],
                            }
                        ),
                    ],
                },
            };

    // Hours of each week that are there whatever goes on: walking, what is laid, and the first round with all it pulls,
    // since what stands now is stopped by nothing.
    private static decimal[] AtLeast(YearCase year, Way bare)
    {
        decimal[] hours = [.. bare.HoursByWeek()];
        int spread = bare.Plan.SpreadWeeks;
        foreach (WeedingRound round in bare.Season.Rounds.Where(round => round.Week >= spread))
            hours[round.Week] -= (decimal)round.PullingHours.Sum();
        foreach (Way part in bare.Parts.IsEmpty ? [bare] : bare.Parts)
            hours[bare.Season.Clearing.Week + part.Plan.FirstRoundWeek] -=
                (decimal)part.Season.Clearing.PullingHours.Sum() / spread;
        return [.. hours.Select(one => one * year.Pots / Thousand)];
    }

    private static decimal Spent(Way way) => way.Of(CostKind.Material) + way.Of(CostKind.Equipment);
}
