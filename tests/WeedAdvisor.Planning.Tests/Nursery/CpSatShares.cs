using System.Collections.Immutable;
using Google.OrTools.Sat;
using WeedAdvisor.Planning.Nursery;

namespace WeedAdvisor.Planning.Tests.Nursery;

/// <summary>
/// The shares of a nursery as a model for CP-SAT: another way to the optimum, by other people's code.
/// </summary>
internal static class CpSatShares
{
    private const decimal Unit = 100;

    /// <summary>The proven least cost; null when no choice keeps the limits.</summary>
    public static decimal? Solve(
        ImmutableArray<ImmutableArray<Offer>> areas,
        decimal? hours,
        decimal? usd,
        double seconds
    )
    {
        var model = new CpModel();
        BoolVar[][] takes =
        [
            .. areas.Select(
                (offers, area) => offers.Select((_, offer) => model.NewBoolVar($"{area}-{offer}")).ToArray()
            ),
        ];
        foreach (BoolVar[] area in takes)
            model.AddExactlyOne(area);
        if (hours is { } most)
            model.Add(Sum(offer => offer.HoursPerWeek) <= (long)(most * Unit));
        if (usd is { } money)
            model.Add(Sum(offer => offer.SpentUsd) <= (long)(money * Unit));
        model.Minimize(Sum(offer => offer.Usd));
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"max_time_in_seconds:{seconds},num_workers:1,random_seed:1"
            ),
        };
        CpSolverStatus status = solver.Solve(model);
        Assert.True(status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible, status.ToString());
        return status == CpSolverStatus.Optimal ? (decimal)Math.Round(solver.ObjectiveValue) / Unit : null;

        LinearExpr Sum(Func<Offer, decimal> of) =>
            LinearExpr.Sum(
                takes.SelectMany((area, i) => area.Select((take, j) => take * (long)(of(areas[i][j]) * Unit)))
            );
    }
}
