using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Identify;

/// <summary>How well a weed fits what was seen.</summary>
/// <param name="Weed">The weed.</param>
/// <param name="Matches">Features seen that its record names.</param>
/// <param name="NotRecorded">
/// Features seen that its record does not name, and that nothing in it shuts out. No proof of anything: records are not
/// complete.
/// </param>
/// <param name="Missing">Features that its record names and that were looked for in vain.</param>
/// <param name="ShutOut">Features seen that go against one that its record names.</param>
public sealed record WeedFit(
    Weed Weed,
    WordSet Matches,
    WordSet NotRecorded,
    WordSet Missing,
    ImmutableArray<ShutOut> ShutOut
)
{
    /// <summary>What a contradiction costs, against the one point that a match brings.</summary>
    public const int ContradictionCosts = 2;

    /// <summary>
    /// What speaks against the weed. Even this is no proof: a flower may not be open yet, an eye may err.
    /// </summary>
    public int Contradictions => Missing.Count + ShutOut.Length;

    /// <summary>
    /// One point for each match, none for a feature that is not recorded, two points less for each contradiction. The
    /// most that can be had is the number of features seen, and only a weed that fits all of it has that.
    /// </summary>
    public int Score => Matches.Count - (ContradictionCosts * Contradictions);

    /// <summary>Whether the record names everything that was seen, and nothing speaks against it.</summary>
    public bool FitsAll => NotRecorded.Count == 0 && Contradictions == 0;

    /// <summary>Holds a weed against what was seen.</summary>
    internal static WeedFit Of(Weed weed, Sighting sighting, FeatureList features)
    {
        string[] unnamed = [.. sighting.Seen.Where(seen => !weed.Features.Contains(seen))];
        ImmutableArray<ShutOut> shut =
        [
            .. unnamed
                .Select(seen => (seen, rival: features.RivalOf(seen, weed.Features)))
                .Where(pair => pair.rival is not null)
                .Select(pair => new ShutOut(pair.seen, pair.rival!)),
        ];
        return new WeedFit(
            weed,
            WordSet.Of(sighting.Seen.Where(weed.Features.Contains)),
            WordSet.Of(unnamed.Except(shut.Select(pair => pair.Seen))),
            WordSet.Of(sighting.Absent.Where(weed.Features.Contains)),
            shut
        );
    }
}

/// <summary>
/// A feature seen that goes against a feature on record: leaves in pairs against leaves one at a time.
/// </summary>
/// <param name="Seen">What was seen.</param>
/// <param name="Recorded">What the record names instead.</param>
public sealed record ShutOut(string Seen, string Recorded);
