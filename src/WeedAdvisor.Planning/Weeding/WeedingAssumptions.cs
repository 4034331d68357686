using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What the figures of an area rest on, in words.</summary>
internal static class WeedingAssumptions
{
    public static IEnumerable<string> Of(
        WeedingSetup setup,
        WeedingPlan plan,
        string hour,
        ImmutableArray<SetupWeed> named,
        decimal? interval,
        ImmutableArray<(Treatment Treatment, int WeeksAgo)> acting
    )
    {
        yield return $"Weeds: {string.Join(", ", plan.Weeds.Select(weed => InShort(weed)))}.";
        foreach (SetupWeed film in named.Where(weed => weed.Weed.Kind == "alga"))
            yield return $"Left out: {film.Weed.Name}, a film that cannot be pulled.";
        yield return $"They come up as in zone '{setup.Site.EmergenceZone}', on a surface that "
            + (
                setup.Site.SurfaceMoisture switch
                {
                    "wet" => "stays wet",
                    "dry-between" => "dries between waterings",
                    "moist" => "stays moist",
                    _ => "is taken to stay moist (not answered)",
                }
            )
            + ", with surroundings "
            + (
                setup.Site.Surroundings switch
                {
                    "weedy-seeding" => "where weeds seed.",
                    "weed-free" => "kept free of weeds.",
                    "mown" => "that are mown.",
                    _ => "taken to be mown (not answered).",
                }
            );
        yield return setup.Mulch is { } mulch
            ? $"Mulch: {mulch.Kind}, "
                + (mulch.DepthCm is { } depth ? $"{Number((double)depth)} cm." : "of working depth.")
            : "No mulch.";
        yield return setup.Control > 0
            ? $"Your programme stops {Number(setup.Control * 100)} % of the seedlings in every week."
            : "No further treatment is counted. Say what your programme stops with --control.";
        foreach ((Treatment treatment, int weeksAgo) in acting)
        {
            yield return $"{treatment.Name}, {weeksAgo} weeks ago, still stops what it is rated on until its published "
                + $"time is over.";
        }

        yield return $"A round passes over {Number(plan.Missed * 100)} % of the weeds of "
            + $"{Number(plan.SmallestPulledCm)} cm and more; smaller ones are left.";
        yield return $"The first round is on {CalendarDay.Text(setup.Start)}, and "
            + $"{plan.Weeks} weeks are looked at. At the end all that stands is cleared, and that is counted.";
        yield return $"An hour costs {hour}, the materials of a round for 1000 pots "
            + $"${Number(plan.Numbers.MaterialsUsd)}.";
        if (interval is { } weeks && weeks > 0 && weeks != decimal.Truncate(weeks))
            yield return $"Your interval of {Number((double)weeks)} weeks is counted in whole weeks.";
        yield return "How many weeds come up, how fast they are pulled and walked past are working values of "
            + "rules/weeding.yaml, "
            + "set by published costs per pot. Time your own crew over one block and put your figures there.";
    }

    private static string InShort(PlannedWeed weed)
    {
        double standing = weed.Standing.Sum();
        return standing > 0
            ? $"{weed.Traits.Name} ({Number(Math.Round(standing))} stand in 1000 pots now)"
            : weed.Traits.Name;
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
