using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// What a year may stand on: all intervals in each part of the year, over every set of measures with at most one cover.
/// </summary>
internal static class StandingChoices
{
    private static readonly ImmutableArray<int?> s_intervals =
    [
        .. IntervalComparison.UsualIntervals.Select(weeks => (int?)weeks),
        null,
    ];

    private static readonly ImmutableArray<YearRounds> s_rounds =
    [
        .. from spring in s_intervals
        from summer in s_intervals
        from cool in s_intervals
        select new YearRounds(spring, summer, cool),
    ];

    /// <summary>The choices.</summary>
    /// <param name="plan">The case; what its request leaves out or asks for is kept.</param>
    /// <param name="effort">Which rounds are looked at.</param>
    public static IEnumerable<StandingChoice> Of(PlanCase plan, PlanEffort effort)
    {
        string[] must = [.. plan.Request.With.Where(id => plan.Measures.Any(measure => measure.Id == id))];
        foreach (ImmutableArray<Practice> measures in MeasureSets(plan))
        {
            if (!must.All(id => measures.Any(measure => measure.Id == id)))
                continue;
            ImmutableArray<YearRounds> all = effort.Rounds.IsEmpty ? s_rounds : effort.Rounds;
            foreach (YearRounds rounds in all.Where(one => plan.Request.Rounds.All(wish => wish.Allows(one))))
                yield return new StandingChoice(rounds, measures);
        }
    }

    private static IEnumerable<ImmutableArray<Practice>> MeasureSets(PlanCase plan)
    {
        Practice[] covers = [.. plan.Measures.Where(measure => Mulches.KindOf(measure) is not null)];
        Practice[] others = [.. plan.Measures.Except(covers)];
        bool hasCover =
            plan.Lies.LiesAlready is not null || plan.Lies.Parts.Any(part => Mulches.KindOf(part.Action) is not null);
        foreach (Practice? cover in covers.Where(_ => !hasCover).Cast<Practice?>().Prepend(null))
        {
            ImmutableArray<Practice> laid = cover is null ? [] : [cover];
            yield return laid;
            foreach (Practice other in others)
                yield return [.. laid, other];
        }
    }
}
