using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>How a place changes what comes up there. What is not known changes nothing.</summary>
internal static class SiteFactors
{
    /// <summary>The factor on the base pressure of a weed.</summary>
    public static double Of(Weed weed, WeedSite site, WeedingNumbers numbers) =>
        Moisture(weed, site.SurfaceMoisture, numbers) * Surroundings(weed, site.Surroundings, numbers);

    private static double Moisture(Weed weed, string? surface, WeedingNumbers numbers)
    {
        if (!weed.FavouredBy.Contains("wet-surface"))
            return 1;
        return surface switch
        {
            "wet" => numbers["wet-surface-percent"] / 100,
            "dry-between" => numbers["dry-surface-percent"] / 100,
            _ => 1,
        };
    }

    private static double Surroundings(Weed weed, string? around, WeedingNumbers numbers)
    {
        if (!weed.SpreadsBy.Contains("wind") && !weed.SpreadsBy.Contains("ballistic"))
            return 1;
        return around switch
        {
            "weedy-seeding" => numbers["surroundings-percent-seeding"] / 100,
            "weed-free" => numbers["surroundings-percent-weed-free"] / 100,
            _ => 1,
        };
    }
}
