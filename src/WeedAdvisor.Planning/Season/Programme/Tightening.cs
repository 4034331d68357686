using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// Takes out of a problem what the rules do not allow after an earlier use of the same plan. The search knows intervals
/// and limits, not the rules: where it found a use that has no day left, the distance that the rules ask for is looked
/// up by asking them, and the search goes on with that.
/// </summary>
internal static class Tightening
{
    private const int LongestGap = 60;

    // Each goes further than the one before; the last takes whatever fails out of the year, so that there is an end.
    private const int TriesWithGaps = 40,
        TriesWithWeeks = 100;

    /// <summary>The case without what failed.</summary>
    /// <param name="season">The case.</param>
    /// <param name="plan">A plan of it.</param>
    /// <param name="done">Its uses up to the one that has no day.</param>
    /// <param name="days">Asks the rules.</param>
    /// <param name="tries">How often the case has been tightened.</param>
    public static SeasonCase Of(
        SeasonCase season,
        SeasonPlan plan,
        ImmutableArray<PlannedUse> done,
        UseDays days,
        int tries
    )
    {
        SeasonApplication failed = plan.Applications[done.Length];
        if (tries >= TriesWithWeeks)
            return Without(season, failed, all: true);
        ImmutableArray<SeasonGap> gaps = tries < TriesWithGaps ? Gaps(season, plan, done, days) : [];
        return gaps.IsEmpty
            ? Without(season, failed, all: false)
            : season with
            {
                Problem = season.Problem with { Gaps = [.. season.Problem.Gaps, .. gaps] },
            };
    }

    private static SeasonCase Without(SeasonCase season, SeasonApplication failed, bool all)
    {
        SeasonCandidate candidate = season.Problem.Candidates[failed.Candidate];
        ImmutableArray<decimal?> cost = all
            ? [.. candidate.Cost.Select(_ => (decimal?)null)]
            : candidate.Cost.SetItem(failed.Week, null);
        return season with
        {
            Problem = season.Problem with
            {
                Candidates = season.Problem.Candidates.SetItem(failed.Candidate, candidate with { Cost = cost }),
            },
        };
    }

    // The distances that one earlier use asks for: of what failed, and of all that fails with it for the same reason.
    private static ImmutableArray<SeasonGap> Gaps(
        SeasonCase season,
        SeasonPlan plan,
        ImmutableArray<PlannedUse> done,
        UseDays days
    )
    {
        SeasonApplication failed = plan.Applications[done.Length];
        if (days.Free(failed) is not [.., var day])
            return [];
        PastApplication[] all = [.. done.Select(use => use.DoneOn(use.Days.Last))];
        AreaAdvice with = days.After(day, all);
        for (int i = done.Length - 1; i >= 0; i--)
        {
            PastApplication[] others = [.. all.Where((_, at) => at != i)];
            AreaAdvice without = days.After(day, others);
            if (with.IsClear(failed.Name) || !without.IsClear(failed.Name))
                continue;
            HashSet<string> waiting =
            [
                .. season
                    .Problem.Candidates.Select(one => one.Name)
                    .Where(name => without.IsClear(name) && !with.IsClear(name)),
            ];
            ImmutableArray<SeasonGap> gaps = Distances(season, plan, i, done[i], day, others, waiting, days);
            if (gaps.Any(gap => gap.After == failed.Name))
                return gaps;
        }

        return [];
    }

    // The earlier use is moved back week by week, no further than the one before it, until each may follow.
    private static ImmutableArray<SeasonGap> Distances(
        SeasonCase season,
        SeasonPlan plan,
        int earlier,
        PlannedUse use,
        DateOnly day,
        PastApplication[] others,
        HashSet<string> waiting,
        UseDays days
    )
    {
        var gaps = ImmutableArray.CreateBuilder<SeasonGap>();
        int week = season.Year.WeekOf(day),
            now = plan.Applications[earlier].Week;
        int first = earlier > 0 ? plan.Applications[earlier - 1].Week + 1 : week - LongestGap;
        for (int moved = now - 1; moved >= first && waiting.Count > 0; moved--)
        {
            PastApplication before = use.DoneOn(season.Year.DaysOf(moved).Last());
            AreaAdvice advice = days.After(day, others.Append(before).OrderBy(one => one.Date));
            foreach (string may in waiting.Where(advice.IsClear).ToArray())
            {
                waiting.Remove(may);
                gaps.Add(new SeasonGap(use.Treatment, may, week - moved));
            }
        }

        return gaps.ToImmutable();
    }
}
