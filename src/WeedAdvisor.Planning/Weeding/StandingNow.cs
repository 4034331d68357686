using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>Turns the cover that was noted at the visit into plants.</summary>
internal static class StandingNow
{
    private const double Pots = 1000;

    /// <summary>
    /// Plants by age: the covered surface divided by what one plant of that stage covers. None when nothing stands or
    /// its cover is not known.
    /// </summary>
    public static ImmutableArray<double> Of(SetupWeed weed, WeedTraits traits, WeedingNumbers numbers)
    {
        if (weed.Stage is null or "expected" || weed.CoverPercent is not { } cover || cover == 0)
            return [];
        double diameter = numbers[
            "diameter-cm-seen-"
                + weed.Stage switch
                {
                    "seedling" => "seedling",
                    "young" => "young",
                    _ => "grown",
                }
        ];
        int age = AgeAt(diameter, traits);
        // What flowers or seeds is old enough to, however small it looks.
        if (weed.Stage == "seeding")
            age = Math.Max(age, traits.FirstSeedWeek);
        else if (weed.Stage == "flowering")
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
