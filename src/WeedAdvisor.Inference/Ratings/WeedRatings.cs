using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Ratings;

/// <summary>Finds the published ratings of a treatment that speak of a weed.</summary>
internal static class WeedRatings
{
    /// <summary>
    /// The ratings of the most specific name that has any: the weed itself, then the names under which tables rate it,
    /// best match first, then its kind. Empty when none is published, and of a weed that nobody has named.
    /// </summary>
    public static IReadOnlyList<Rating> Of(Treatment treatment, Weed weed) =>
        First<Rating[]>(weed, name =>
            treatment.Ratings.Where(rating => rating.On == name).ToArray() is [_, ..] found ? found : null
        ) ?? [];

    /// <summary>
    /// What is known under the most specific name of a weed under which anything is; null when nothing is. Asked of
    /// every treatment for every weed while knowledge is compiled.
    /// </summary>
    public static T? First<T>(Weed weed, Func<string, T?> known)
        where T : class
    {
        if (weed.IsUnnamed)
            return null;
        if (known(weed.Id) is { } ofWeed)
            return ofWeed;
        foreach (string name in weed.RatedAs)
        {
            if (known(name) is { } ofName)
                return ofName;
        }

        return known(weed.Kind);
    }
}
