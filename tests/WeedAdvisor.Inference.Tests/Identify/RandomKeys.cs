using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Identify;

/// <summary>Weeds with any features, and any sighting.</summary>
internal sealed record Case(KnowledgeBase Knowledge, string[] Seen, string[] Absent)
{
    public Sighting Sighting => Sighting.Of(Seen, Absent);

    public Identification Ask() => new WeedKey(Knowledge).Of(Sighting);
}

internal static class RandomKeys
{
    private static readonly string[] s_features = ["a", "b", "c", "d", "e", "f", "g", "h"];

    private static readonly Gen<string[]> s_some = Gen
        .Bool.Array[s_features.Length]
        .Select(takes => s_features.Where((_, at) => takes[at]).ToArray());

    /// <summary>
    /// What is absent is drawn apart from what is seen; a and b, and c, d and e, shut each other out.
    /// </summary>
    public static Gen<Case> Cases { get; } =
        Gen.Select(s_some.Array[1, 9], s_some, s_some)
            .Select(
                (weeds, seen, absent) =>
                    new Case(
                        Of(
                            s_features,
                            [("a", "one"), ("b", "one"), ("c", "two"), ("d", "two"), ("e", "two")],
                            [.. weeds.Select((features, at) => ($"weed-{at}", features))]
                        ),
                        seen,
                        [.. absent.Except(seen)]
                    )
            );

    public static KnowledgeBase Of(
        string[] features,
        (string Feature, string Group)[] either,
        params (string Id, string[] Features)[] weeds
    ) =>
        SmallKnowledge.Of() with
        {
            Vocabulary = ImmutableSortedDictionary<string, WordList>
                .Empty.Add(
                    "weed-feature",
                    new WordList("weed-feature", [.. features.Select(word => KeyValuePair.Create(word, word))])
                )
                .Add(
                    "weed-feature-either",
                    new WordList(
                        "weed-feature-either",
                        [.. either.Select(pair => KeyValuePair.Create(pair.Feature, pair.Group))]
                    )
                ),
            Weeds = weeds.ToImmutableSortedDictionary(
                weed => weed.Id,
                weed => WeedOf(weed.Id, weed.Features),
                StringComparer.Ordinal
            ),
        };

    private static Weed WeedOf(string id, string[] features) =>
        Invented.Weed(id) with
        {
            Features = WordSet.Of(features),
        };
}
