using System.Collections.Immutable;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Interview.Words;

/// <summary>Finding out which weed it is: what was said of its features so far, and what follows.</summary>
public sealed class Narrowing
{
    private readonly WeedKey _key;
    private readonly Stack<Sighting> _before = new();

    /// <summary>Begins with nothing looked at.</summary>
    public Narrowing(KnowledgeBase knowledge)
    {
        _key = new WeedKey(knowledge);
        Found = _key.Of(Sighting.Empty);
    }

    /// <summary>The features.</summary>
    public FeatureList Features => _key.Features;

    /// <summary>What was said.</summary>
    public Sighting Sighting => Found.Sighting;

    /// <summary>What follows from it.</summary>
    public Identification Found { get; private set; }

    /// <summary>Whether anything was said.</summary>
    public bool HasBegun => Sighting != Sighting.Empty;

    /// <summary>The feature is there.</summary>
    public void See(string feature) => Go(Sighting.See(feature));

    /// <summary>The feature is not there.</summary>
    public void Miss(string feature) => Go(Sighting.Miss(feature));

    /// <summary>Nobody can tell.</summary>
    public void Pass(string feature) => Go(Sighting.Pass(feature));

    /// <summary>Ticks a feature: seen, then not there, then open again.</summary>
    public void Tick(string feature) =>
        Go(
            Sighting.Seen.Contains(feature) ? Sighting.Miss(feature)
            : Sighting.Absent.Contains(feature) ? Sighting.Forget(feature)
            : Sighting.See(feature)
        );

    /// <summary>Forgets everything.</summary>
    public void Clear() => Go(Sighting.Empty);

    /// <summary>Takes the last word back; false when there is none.</summary>
    public bool Back()
    {
        if (!_before.TryPop(out Sighting? before))
            return false;
        Found = _key.Of(before);
        return true;
    }

    /// <summary>
    /// The features whose word or text holds what is looked for, in order; with nothing typed, all of them.
    /// </summary>
    public ImmutableArray<KeyValuePair<string, string>> Search(string typed)
    {
        string folded = NearWords.Fold(typed);
        return
        [
            .. Features.All.Where(feature =>
                feature.Key.Contains(folded, StringComparison.Ordinal)
                || NearWords.Fold(feature.Value).Contains(folded, StringComparison.Ordinal)
            ),
        ];
    }

    private void Go(Sighting next)
    {
        _before.Push(Sighting);
        Found = _key.Of(next);
    }
}
