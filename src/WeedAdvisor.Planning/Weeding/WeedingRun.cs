using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// Runs a plan week by week: seedlings come up, a round pulls, plants seed, die and grow. <c>docs/weeding-model.md</c>
/// has the equations.
/// </summary>
public static class WeedingRun
{
    private const double Pots = 1000,
        SecondsInHour = 3600,
        MinutesInHour = 60;

    /// <summary>What the plan comes to, for 1000 pots; refused when the plan is wrong.</summary>
    public static Outcome<WeedingSeason, string> Of(WeedingPlan plan)
    {
        ImmutableArray<string> refusals = plan.Refusals();
        return refusals.IsEmpty
            ? Outcome<WeedingSeason, string>.Good(Run(plan))
            : Outcome<WeedingSeason, string>.Bad(refusals);
    }

    private static WeedingSeason Run(WeedingPlan plan)
    {
        WeedCohorts[] weeds = [.. plan.Weeds.Select(weed => new WeedCohorts(weed))];
        ImmutableArray<int> walked = RoundSchedule.Of(plan);
        var rounds = ImmutableArray.CreateBuilder<WeedingRound>(walked.Length);
        double[] open = new double[plan.Weeks],
            room = new double[plan.Weeks],
            vigour = new double[plan.Weeks];
        for (int week = 0; week < plan.Weeks; week++)
        {
            (open[week], room[week]) = Emerge(plan, weeds, week);
            if (rounds.Count < walked.Length && walked[rounds.Count] == week)
                rounds.Add(Round(plan, weeds, week));

            vigour[week] = 1 / Math.Max(1, Cover(weeds) / (Pots * plan.Numbers.PotSurfaceCm2));
            foreach (WeedCohorts weed in weeds)
                weed.EndWeek(week, vigour[week]);
        }

        return new WeedingSeason(
            plan.IntervalWeeks,
            rounds.DrainToImmutable(),
            [.. weeds.Select(weed => weed.Fate())],
            Clearing(plan, weeds),
            plan.Numbers.MaterialsUsd
        )
        {
            Course = new WeedingCourse([.. open], [.. room], [.. vigour]),
        };
    }

    // Plants lie anywhere on the surface, so the share they leave open falls as exp(-cover).
    private static (double Open, double Room) Emerge(WeedingPlan plan, WeedCohorts[] weeds, int week)
    {
        int ofYear = (plan.FirstWeek + week) % WeedTraits.WeeksInYear;
        double open = Math.Exp(-Cover(weeds) / (Pots * plan.Numbers.PotSurfaceCm2));
        double ready = 0;
        for (int i = 0; i < weeds.Length; i++)
        {
            ImmutableArray<double> control = plan.Weeds[i].Control;
            ready += weeds[i].Ready(ofYear, control.IsEmpty ? 0 : control[week], open);
        }

        double places = Math.Max(0, (Pots * plan.Numbers.MostWeedsPerPot) - weeds.Sum(weed => weed.Standing));
        double room = ready <= places ? 1 : places / ready;
        foreach (WeedCohorts weed in weeds)
            weed.Emerge(room);
        return (open, room);
    }

    private static double Cover(WeedCohorts[] weeds) => weeds.Sum(weed => weed.CoverCm2);

    private static WeedingRound Round(WeedingPlan plan, WeedCohorts[] weeds, int week)
    {
        double[] pulled = new double[PlantSizes.Count];
        foreach (WeedCohorts weed in weeds)
            weed.Pull(plan.SmallestPulledCm, plan.Missed, pulled);
        return Worked(plan.Numbers, week, pulled);
    }

    private static WeedingRound Clearing(WeedingPlan plan, WeedCohorts[] weeds)
    {
        double[] standing = new double[PlantSizes.Count];
        foreach (WeedCohorts weed in weeds)
            weed.Count(standing);
        return Worked(plan.Numbers, plan.Weeks, standing);
    }

    private static WeedingRound Worked(WeedingNumbers numbers, int week, double[] pulled) =>
        new(
            week,
            numbers.WalkingMinutes / MinutesInHour,
            [.. pulled.Select((count, size) => count * numbers.PullSeconds[size] / SecondsInHour)],
            [.. pulled]
        );
}
