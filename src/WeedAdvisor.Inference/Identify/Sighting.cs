using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Identify;

/// <summary>
/// What was seen of an unknown weed, in words of list <c>weed-feature</c>. No word is in two of the sets.
/// </summary>
public sealed record Sighting
{
    /// <summary>Nothing looked at yet.</summary>
    public static Sighting Empty { get; } = new();

    /// <summary>Features that the plant shows.</summary>
    public WordSet Seen { get; private init; } = WordSet.Empty;

    /// <summary>Features that were looked for and are not there.</summary>
    public WordSet Absent { get; private init; } = WordSet.Empty;

    /// <summary>Features that the grower could not tell; they say nothing and are not asked again.</summary>
    public WordSet Unsure { get; private init; } = WordSet.Empty;

    /// <summary>A sighting of features seen and features seen to be absent.</summary>
    /// <exception cref="ArgumentException">A feature is said to be there and not to be there.</exception>
    public static Sighting Of(IEnumerable<string> seen, IEnumerable<string> absent)
    {
        var sighting = new Sighting { Seen = WordSet.Of(seen), Absent = WordSet.Of(absent) };
        return sighting.Seen.Overlaps(sighting.Absent)
            ? throw new ArgumentException("a feature cannot be both there and not there", nameof(absent))
            : sighting;
    }

    /// <summary>The plant shows the feature.</summary>
    public Sighting See(string feature)
    {
        Sighting open = Forget(feature);
        return open with { Seen = WordSet.Of(open.Seen.Append(feature)) };
    }

    /// <summary>The plant does not show the feature.</summary>
    public Sighting Miss(string feature)
    {
        Sighting open = Forget(feature);
        return open with { Absent = WordSet.Of(open.Absent.Append(feature)) };
    }

    /// <summary>Nobody can tell.</summary>
    public Sighting Pass(string feature)
    {
        Sighting open = Forget(feature);
        return open with { Unsure = WordSet.Of(open.Unsure.Append(feature)) };
    }

    /// <summary>Takes back what was said of the feature.</summary>
    public Sighting Forget(string feature) =>
        new()
        {
            Seen = Without(Seen, feature),
            Absent = Without(Absent, feature),
            Unsure = Without(Unsure, feature),
        };

    /// <summary>Whether anything was said of the feature.</summary>
    public bool Speaks(string feature) =>
        Seen.Contains(feature) || Absent.Contains(feature) || Unsure.Contains(feature);

    private static WordSet Without(WordSet words, string word) => WordSet.Of(words.Where(other => other != word));
}
