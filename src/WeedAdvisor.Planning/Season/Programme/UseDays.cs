using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// Finds the days of its week on which each use of a plan is allowed once the earlier ones have been carried out, on
/// whichever of their days that was.
/// </summary>
/// <param name="season">The case.</param>
/// <param name="ask">A line to the rules.</param>
/// <param name="knowledge">The knowledge.</param>
internal sealed class UseDays(SeasonCase season, Func<AreaCase, AreaAdvice> ask, KnowledgeBase knowledge)
{
    // Days that leave a choice of weather.
    private const int EnoughDays = 3;

    /// <summary>The uses with their days, up to the first one that has none.</summary>
    public ImmutableArray<PlannedUse> Of(SeasonPlan plan)
    {
        var uses = ImmutableArray.CreateBuilder<PlannedUse>();
        foreach (SeasonApplication application in plan.Applications)
        {
            DateOnly[] free = Free(application);
            PlannedUse? use = Use(application, free, uses);
            for (int earlier = uses.Count - 1; earlier >= 0 && !HasEnough(use, free); earlier--)
                use = Sharing(application, free, uses, earlier, use);
            if (use is null)
                break;
            uses.Add(use);
        }

        return uses.ToImmutable();
    }

    /// <summary>
    /// The days of a week on which a treatment is clear apart from the plan, and has time to be watered in.
    /// </summary>
    public DateOnly[] Free(SeasonApplication application) =>
        [
            .. season
                .Year.DaysOf(application.Week)
                .Where(day => season.Weekly.IsClear(application.Name, day) && IsDoneBeforeFilm(application.Name, day)),
        ];

    /// <summary>What is clear on a day after some uses.</summary>
    public AreaAdvice After(DateOnly day, IEnumerable<PastApplication> done) =>
        ask(PlannedUse.After(season.Through, day, done));

    private static bool HasEnough(PlannedUse? use, DateOnly[] free) =>
        use?.Days.Length >= Math.Min(EnoughDays, free.Length);

    private PlannedUse? Use(SeasonApplication application, DateOnly[] free, ImmutableArray<PlannedUse>.Builder earlier)
    {
        DayRun[] runs = [.. DayRun.In(Allowed(application, free, earlier))];
        return runs.Length == 0
            ? null
            : new PlannedUse(application.Name, runs.MaxBy(run => run.Length), runs.Length > 1)
            {
                Week = application.Week,
                Usd = application.Cost,
            };
    }

    // Where two uses stand as close as may be, the later one would be left with the last day of its week: the earlier
    // one gives up some of its own last days.
    private PlannedUse? Sharing(
        SeasonApplication application,
        DateOnly[] free,
        ImmutableArray<PlannedUse>.Builder uses,
        int earlier,
        PlannedUse? use
    )
    {
        PlannedUse whole = uses[earlier];
        for (
            int length = whole.Days.Length - 1;
            length >= (use is null ? 1 : EnoughDays) && !HasEnough(use, free);
            length--
        )
        {
            uses[earlier] = whole with { Days = whole.Days with { Last = whole.Days.First.AddDays(length - 1) } };
            PlannedUse? shared = Use(application, free, uses);
            if (shared is not null && shared.Days.Length <= (use?.Days.Length ?? 0))
                break;
            if (shared is not null)
                (use, whole) = (shared, uses[earlier]);
        }

        uses[earlier] = whole;
        return use;
    }

    // What is asked of earlier uses can hang on the first day on which they may have been made as well as on the last.
    private IEnumerable<DateOnly> Allowed(
        SeasonApplication application,
        DateOnly[] free,
        ImmutableArray<PlannedUse>.Builder earlier
    )
    {
        if (free.Length == 0 || earlier.Count == 0)
            return free;
        HashSet<DateOnly> barred =
        [
            .. Barred(application.Name, free, [.. earlier.Select(use => use.DoneOn(use.Days.Last))]),
            .. Barred(application.Name, free, [.. earlier.Select(use => use.DoneOn(use.Days.First))]),
        ];
        return free.Where(day => !barred.Contains(day));
    }

    private IEnumerable<DateOnly> Barred(string treatment, DateOnly[] free, ImmutableArray<PastApplication> done)
    {
        foreach (
            (DateOnly from, DateOnly to) in season.Rules.Stretches.Of(
                day => PlannedUse.After(season.Through, day, done),
                free[0],
                free[^1]
            )
        )
        {
            if (After(from, done).IsClear(treatment))
                continue;
            for (DateOnly day = from; day <= to; day = day.AddDays(1))
                yield return day;
        }
    }

    // Those who water in, and those who put the film on, must be through before it closes.
    private bool IsDoneBeforeFilm(string treatment, DateOnly day) =>
        season.Through.CoveringAfter(day) is not { } film
        || (
            day.AddDays((int)(knowledge.Treatments[treatment].WaterInWithinDays ?? 0)) < film
            && new HandDays(season, [new PlannedUse(treatment, new DayRun(day, day), false)], knowledge).AreOpen(film)
        );
}
