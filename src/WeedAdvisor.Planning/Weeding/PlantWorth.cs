using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What weeds cost by the piece, US dollars.</summary>
/// <param name="Pulled">One weed that is pulled, by class of <see cref="PlantSizes"/>.</param>
/// <param name="ToCome">One seedling that is left to come after the last week.</param>
public sealed record PiecePrices(ImmutableArray<double> Pulled, double ToCome)
{
    /// <summary>One plant that grows to 10 cm.</summary>
    public double GrewOld { get; init; }

    /// <summary>One plant that grows to 20 cm, on top of that.</summary>
    public double GrewOvergrown { get; init; }
}

/// <summary>
/// What one more plant of a weed costs, with all that descends from it, when it has come up in a given week of a plan.
/// With the crowding of the pots taken as given the whole cost of a weed is the sum over its plants, for then nothing
/// in the model is but a share of something else. Worked out backwards from the last week.
/// </summary>
public sealed class PlantWorth
{
    private readonly double[] _first;

    private PlantWorth(double[] seedling, double[] first)
    {
        Seedling = [.. seedling];
        _first = first;
    }

    /// <summary>
    /// US dollars for one plant that has come up in each week of the plan, before a round of that week.
    /// </summary>
    public ImmutableArray<double> Seedling { get; }

    /// <summary>US dollars for plants that stand at the start, by age in weeks.</summary>
    public double OfStanding(ImmutableArray<double> plants)
    {
        double sum = 0;
        for (int age = 0; age < plants.Length; age++)
            sum += plants[age] * _first[age];
        return sum;
    }

    /// <summary>The worth under a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="walked">The weeks in which it walks a round.</param>
    /// <param name="weed">The weed.</param>
    /// <param name="course">How crowded the pots are.</param>
    /// <param name="prices">What weeds cost by the piece.</param>
    /// <param name="control">
    /// Share of the descendants that is stopped as they come up, 0 to 1, for each week of the plan.
    /// </param>
    /// <param name="isLeast">
    /// Whether <paramref name="course"/> and <paramref name="control"/> say how little there is of each at least: then
    /// the worth is never more than it is under any course and control between.
    /// </param>
    public static PlantWorth Of(
        WeedingPlan plan,
        ImmutableArray<int> walked,
        PlannedWeed weed,
        WeedingCourse course,
        PiecePrices prices,
        ReadOnlySpan<double> control,
        bool isLeast = false
    )
    {
        WeedTraits traits = weed.Traits;
        const int ages = WeedTraits.Ages;
        double[] here = new double[ages],
            later = new double[ages],
            seedling = new double[plan.Weeks],
            pulledUsd = new double[ages],
            grownUsd = new double[ages];
        bool[] isPulled = new bool[ages];
        for (int age = 0; age < ages; age++)
        {
            pulledUsd[age] = prices.Pulled[traits.Classes.Size[age]];
            isPulled[age] = traits.DiameterCm[age] >= plan.SmallestPulledCm;
            grownUsd[age] =
                (traits.Classes.GrowsOld[age] ? prices.GrewOld : 0)
                + (traits.Classes.GrowsOver[age] ? prices.GrewOvergrown : 0);
            later[age] = pulledUsd[age];
        }

        double seed = prices.ToCome,
            root = prices.ToCome,
            rootNext = prices.ToCome;
        int round = walked.Length - 1;
        for (int week = plan.Weeks - 1; week >= 0; week--)
        {
            bool isRound = round >= 0 && walked[round] == week;
            if (isRound)
                round--;
            double shed = traits.SeedsPerWeek * course.Vigour[week] * traits.SeedlingsPerSeed * seed;
            double spared = weed.Frost.IsEmpty ? 1 : 1 - weed.Frost[week];
            // What is pulled in this week comes again two weeks later.
            double again = traits.ResproutShare * rootNext;
            for (int age = 0; age < ages; age++)
            {
                double left =
                    (1 - traits.DeathShare[age]) * spared * (grownUsd[age] + later[Math.Min(age + 1, ages - 1)]);
                if (age >= traits.FirstSeedWeek)
                    left += shed;
                here[age] =
                    isRound && isPulled[age]
                        ? ((1 - plan.Missed) * (pulledUsd[age] + again)) + (plan.Missed * left)
                        : left;
            }

            seedling[week] = here[0];
            int ofYear = (plan.FirstWeek + week) % WeedTraits.WeeksInYear;
            bool inSeason = traits.WeekShare[ofYear] > 0;
            rootNext = root;
            if (inSeason)
            {
                double kept = traits.SeedKept * seed;
                double up = (1 - control[week]) * course.Room[week] * here[0];
                double g = traits.GerminatingShare * course.Open[week];
                double now = (g * up) + ((1 - g) * kept);
                if (isLeast)
                    now = Math.Min(now, (traits.GerminatingShare * up) + ((1 - traits.GerminatingShare) * kept));
                seed = now;
                root = course.Room[week] * here[0];
            }
            else
            {
                seed *= traits.SeedKept;
            }

            (here, later) = (later, here);
        }

        return new PlantWorth(seedling, later);
    }
}
