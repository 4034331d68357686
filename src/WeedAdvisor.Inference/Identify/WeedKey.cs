using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Identify;

/// <summary>
/// Finds out which weed it is, from features in any order. No answer shuts a weed out for good: one wrong look must not
/// hide the right weed. Safe to share between threads.
/// </summary>
/// <param name="knowledge">The knowledge.</param>
public sealed class WeedKey(KnowledgeBase knowledge)
{
    // With more weeds in front than this, tells would be a book; a further feature says more.
    private const int MostToSettle = 5;

    /// <summary>The features.</summary>
    public FeatureList Features { get; } = new(knowledge);

    /// <summary>The weeds that fit what was seen.</summary>
    public Identification Of(Sighting sighting)
    {
        ImmutableArray<WeedFit> fits =
        [
            .. knowledge
                .Weeds.Values.Where(weed => !weed.IsUnnamed)
                .Select(weed => WeedFit.Of(weed, sighting, Features))
                .OrderByDescending(fit => fit.Score)
                .ThenByDescending(fit => fit.Matches.Count)
                .ThenBy(fit => fit.Weed.Id, StringComparer.Ordinal),
        ];
        ImmutableArray<WeedFit> leaders = [.. fits.TakeWhile(fit => fit.Score == fits[0].Score)];
        ImmutableArray<WeedFit> candidates = Candidates(fits, leaders);
        return new Identification
        {
            Sighting = sighting,
            Fits = fits,
            Leaders = leaders,
            Candidates = candidates,
            Next = Next(candidates, sighting),
            Tells = leaders.Length <= MostToSettle ? Tells([.. leaders.Select(fit => fit.Weed)]) : [],
        };
    }

    private static ImmutableArray<WeedFit> Candidates(ImmutableArray<WeedFit> fits, ImmutableArray<WeedFit> leaders) =>
        leaders.Length != 1
            ? leaders
            : [leaders[0], .. fits.Skip(1).Where(fit => fit.Contradictions == 0 && fit.Score >= leaders[0].Score - 1)];

    // The fewer are left on average, the better; equally good features go by the order of the list.
    private NextFeature? Next(ImmutableArray<WeedFit> candidates, Sighting sighting) =>
        Features
            .All.Select(pair => pair.Key)
            .Where(feature => !sighting.Speaks(feature) && Features.RivalOf(feature, sighting.Seen) is null)
            .Select(feature =>
            {
                int with = candidates.Count(fit => fit.Weed.Features.Contains(feature));
                return new NextFeature(feature, with, candidates.Length - with);
            })
            .Where(next => next is { With: > 0, Without: > 0 })
            .MaxBy(next => next.With * next.Without);

    private static ImmutableArray<WeedTell> Tells(ImmutableArray<Weed> leaders)
    {
        var tells = new List<(bool Between, WeedTell Tell)>();
        foreach (Weed weed in leaders)
        {
            foreach (LookAlike other in weed.LookAlikes)
            {
                if (!tells.Any(told => told.Tell.Weed == other.Weed && told.Tell.Other == weed.Id))
                {
                    bool between = leaders.Any(leader => leader.Id == other.Weed);
                    tells.Add((between, new WeedTell(weed.Id, other.Weed, other.Tell)));
                }
            }
        }

        return [.. tells.OrderBy(told => told.Between ? 0 : 1).Select(told => told.Tell)];
    }
}
