using System.Globalization;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Rounds;

/// <summary>What the figures of an area rest on, in words.</summary>
internal static class WeedingAssumptions
{
    public static IEnumerable<string> Of(YearCase year)
    {
        yield return $"Weeds: {string.Join(", ", year.Weeds.Counted.Select(InShort))}.";
        foreach (string left in year.Weeds.LeftOut)
            yield return $"Left out: {left}";
        yield return Place(year.Site);
        yield return Pots(year);
        yield return PotMulch.Of(year.Reading) is { } mulch
            ? $"Mulch: {mulch.Kind}, "
                + (mulch.DepthCm is { } depth ? $"{Number((double)depth)} cm." : "of working depth.")
            : "No mulch.";
        foreach (string line in Treatments(year))
            yield return line;
        yield return $"A round passes over {Number(year.Numbers.Missed * 100)} % of the weeds of "
            + $"{Number(year.Numbers.SmallestPulledCm)} cm and more; smaller ones are left.";
        yield return $"The first round is on {year.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, and "
            + $"{year.Weeks} weeks are looked at. At the end all that stands is cleared, and that is counted.";
        yield return $"An hour costs ${Number((double)year.WageUsd)} ({Wage.Says(year.Wage.From, year.Prices.Find)}), "
            + $"the materials of a round for 1000 pots ${Number(year.Numbers.MaterialsUsd)}.";
        yield return "The cost counts what today's mulch and applications cost, plants that weeds spoil, and the work "
            + "that seed left behind makes next year: 'weedadvisor money' has it item by item.";
        if (year.Reading.RoundsAnswered is { } weeks && weeks > 0 && weeks != decimal.Truncate(weeks))
            yield return $"Your interval of {Number((double)weeks)} weeks is counted in whole weeks.";
        yield return "How many weeds come up, how fast they are pulled and walked past are working values of "
            + "rules/weeding.yaml, "
            + "set by published costs per pot. Time your own crew over one block and put your figures there.";
    }

    private static string Pots(YearCase year) =>
        $"Pots of {Number((double)year.Block.WidthCm.Value)} cm{Assumed(year.Block.WidthCm.From)}, "
        + $"{Number((double)year.Block.ApartCm.Value)} cm from centre to centre{Assumed(year.Block.ApartCm.From)}.";

    private static string Assumed(Origin from) => from == Origin.Assumed ? " (assumed)" : "";

    private static string Place(WeedSite site) =>
        $"They come up as in zone '{site.EmergenceZone}', on a surface that "
        + (
            site.SurfaceMoisture switch
            {
                "wet" => "stays wet",
                "dry-between" => "dries between waterings",
                "moist" => "stays moist",
                _ => "is taken to stay moist (not answered)",
            }
        )
        + ", with surroundings "
        + (
            site.Surroundings switch
            {
                "weedy-seeding" => "where weeds seed.",
                "weed-free" => "kept free of weeds.",
                "mown" => "that are mown.",
                _ => "taken to be mown (not answered).",
            }
        );

    private static IEnumerable<string> Treatments(YearCase year)
    {
        if (year.TodayControl is { } stopped and > 0)
        {
            yield return $"Your programme stops {Number(stopped * 100)} % of the seedlings in every week.";
            yield break;
        }

        string[] again =
        [
            .. year.PastYear.Select(past => year.Knowledge.RecordOf(past)!.Name).Distinct(StringComparer.Ordinal),
        ];
        yield return again.Length == 0
            ? "No treatment is counted. Say what your programme stops with --control."
            : $"What went on in the year before goes on again at the same time: {string.Join("; ", again)}. Say "
                + "instead what your programme stops with --control.";
        foreach ((Treatment treatment, int weeksAgo) in year.Acting)
        {
            yield return $"{treatment.Name}, {weeksAgo} weeks ago, still stops what it is rated on until its published "
                + $"time is over.";
        }
    }

    private static string InShort(YearWeed weed)
    {
        double standing = weed.Standing.Sum();
        return standing > 0
            ? $"{weed.Traits.Name} ({Number(Math.Round(standing))} stand in 1000 pots now)"
            : weed.Traits.Name;
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
