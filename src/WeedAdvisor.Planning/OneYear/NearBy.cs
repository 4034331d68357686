namespace WeedAdvisor.Planning.OneYear;

/// <summary>What comes into the pots of a year from places near by.</summary>
public static class NearBy
{
    /// <summary>The same year with some of the seedlings kept away: what stands in the pots stays.</summary>
    /// <param name="year">The year.</param>
    /// <param name="kept">Share of a weed's seedlings that does not come any more, 0 to 1, by the weed's id.</param>
    public static YearCase Without(YearCase year, Func<string, double> kept) =>
        year with
        {
            Weeds = year.Weeds with { Counted = [.. year.Weeds.Counted.Select(weed => Without(weed, kept))] },
        };

    private static YearWeed Without(YearWeed weed, Func<string, double> kept) =>
        kept(weed.Weed.Id) is var share and > 0
            ? weed with
            {
                Traits = weed.Traits with { SeedlingsPerYear = weed.Traits.SeedlingsPerYear * (1 - share) },
            }
            : weed;
}
