using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Ratings;

/// <summary>Finds the published ratings of a treatment that speak of a weed.</summary>
internal static class WeedRatings
{
    /// <summary>
    /// The ratings of the most specific name that has any: the weed itself, then the names under which tables rate it,
    /// best match first, then its kind. Empty when none is published, and of a weed that nobody has named.
    /// </summary>
    public static IReadOnlyList<Rating> Of(Treatment treatment, Weed weed)
    {
        if (weed.IsUnnamed)
            return [];
        foreach (string name in (string[])[weed.Id, .. weed.RatedAs, weed.Kind])
        {
            Rating[] found = [.. treatment.Ratings.Where(rating => rating.On == name)];
            if (found.Length > 0)
                return found;
        }

        return [];
    }
}
