using WeedAdvisor.Inference.Identify;

namespace WeedAdvisor.Interview.Words;

/// <summary>Features as people name them: by their word, or by words of their text.</summary>
public static class FeatureNames
{
    private const int MostNamed = 4;

    /// <summary>The one feature that is meant.</summary>
    public static Typed<string> Find(FeatureList features, string typed)
    {
        string folded = NearWords.Fold(typed);
        if (folded.Length == 0)
            return Typed<string>.Wrong("a feature has no name");
        string[] exact =
        [
            .. Where(features, feature => feature.Key == folded || NearWords.Fold(feature.Value) == folded),
        ];
        string[] found =
            exact.Length > 0
                ? exact
                :
                [
                    .. Where(features, feature =>
                        NearWords.HasWords(feature.Key, folded)
                        || NearWords.HasWords(NearWords.Fold(feature.Value), folded)
                    ),
                ];
        return found.Length switch
        {
            1 => Typed<string>.As(found[0]),
            0 => Typed<string>.Wrong($"no feature '{typed}'" + Hint(features, typed)),
            _ => Typed<string>.Wrong(
                $"'{typed}' fits several features: {string.Join(", ", found.Take(MostNamed))}"
                    + (found.Length > MostNamed ? " and more" : "")
            ),
        };
    }

    private static IEnumerable<string> Where(FeatureList features, Func<KeyValuePair<string, string>, bool> fits) =>
        features.All.Where(fits).Select(feature => feature.Key);

    private static string Hint(FeatureList features, string typed) =>
        NearWords.Nearest(typed, features.All.Select(feature => feature.Key)) is { } near
            ? $" (did you mean '{near}'?)"
            : "";
}
