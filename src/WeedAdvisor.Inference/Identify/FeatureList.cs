using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Identify;

/// <summary>
/// The features that weeds are known by: list <c>weed-feature</c> in the order of the file. List
/// <c>weed-feature-either</c>, where there is one, names features that shut each other out: those with the same text.
/// </summary>
public sealed class FeatureList
{
    private const string Features = "weed-feature",
        Either = "weed-feature-either";

    private readonly WordList _texts;
    private readonly ImmutableDictionary<string, string> _either;

    /// <summary>The features of the knowledge.</summary>
    public FeatureList(KnowledgeBase knowledge)
    {
        _texts = knowledge.Vocabulary.GetValueOrDefault(Features) ?? new WordList(Features, []);
        _either = (knowledge.Vocabulary.GetValueOrDefault(Either)?.Words ?? []).ToImmutableDictionary(
            pair => pair.Key,
            pair => pair.Value,
            StringComparer.Ordinal
        );
    }

    /// <summary>Every feature and its text, in order.</summary>
    public ImmutableArray<KeyValuePair<string, string>> All => _texts.Words;

    /// <summary>A feature in plain words.</summary>
    public string TextOf(string feature) => _texts.TextOf(feature);

    /// <summary>Features in plain words.</summary>
    public IEnumerable<string> TextsOf(IEnumerable<string> features) => features.Select(TextOf);

    /// <summary>
    /// The feature among the others that shuts this one out; null when none does, or when this one is among them.
    /// </summary>
    public string? RivalOf(string feature, WordSet others) =>
        _either.TryGetValue(feature, out string? group) && !others.Contains(feature)
            ? others.FirstOrDefault(other => _either.GetValueOrDefault(other) == group)
            : null;
}
