using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>Turns the cover that was noted at the visit into plants.</summary>
public static class StandingNow
{
    private const double Pots = 1000;

    /// <summary>
    /// Plants by age of a weed that was noted in one stage or in several; no more than find room.
    /// </summary>
    public static ImmutableArray<double> Of(ImmutableArray<WeedSeen> seen, WeedTraits traits, WeedingNumbers numbers)
    {
        double[] standing = new double[WeedTraits.Ages];
        foreach (WeedSeen one in seen)
        {
            ImmutableArray<double> plants = Of(one.Stage, one.CoverOfAreaPercent, traits, numbers);
            for (int age = 0; age < plants.Length; age++)
                standing[age] += plants[age];
        }

        double sum = standing.Sum(),
            most = Pots * numbers.MostWeedsPerPot;
        int last = Array.FindLastIndex(standing, plants => plants > 0);
        return [.. standing.Take(last + 1).Select(plants => sum > most ? plants * most / sum : plants)];
    }

    // The covered surface divided by what one plant of that stage covers. None when nothing stands or its cover is not
    // known.
    private static ImmutableArray<double> Of(
        string? stage,
        decimal? coverPercent,
        WeedTraits traits,
        WeedingNumbers numbers
    )
    {
        if (stage is null or "expected" || coverPercent is not { } cover || cover == 0)
            return [];
        double diameter = numbers[
            "diameter-cm-seen-"
                + stage switch
                {
                    "seedling" => "seedling",
                    "young" => "young",
                    _ => "grown",
                }
        ];
        int age = AgeAt(diameter, traits);
        // What flowers or seeds is old enough to, however small it looks.
        if (stage == "seeding")
            age = Math.Max(age, traits.FirstSeedWeek);
        else if (stage == "flowering")
            age = Math.Max(age, traits.FirstSeedWeek - 1);
        double covered = Pots * numbers.PotSurfaceCm2 * (double)cover / 100;
        double plants = covered / (Math.PI / 4 * diameter * diameter);
        double[] standing = new double[Math.Min(age, WeedTraits.Ages - 1) + 1];
        standing[^1] = Math.Min(plants, Pots * numbers.MostWeedsPerPot);
        return [.. standing];
    }

    private static int AgeAt(double diameter, WeedTraits traits)
    {
        int age = 0;
        while (age < WeedTraits.Ages - 1 && traits.DiameterCm[age] < diameter)
            age++;
        return age;
    }
}
