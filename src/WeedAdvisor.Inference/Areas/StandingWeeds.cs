using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>What the weeds of an area are, taken together: what the order of its work turns on.</summary>
public sealed record StandingWeeds
{
    private const string NamedLater = "named-later";

    private static readonly WordSet s_belowOnly = WordSet.Of([WaysOfLife.Below]);

    /// <summary>
    /// Whether naming one comes before all other work: what is done hangs on it. What is of a kind of list
    /// <c>named-later</c> waits where weeds that have a name stand beside it.
    /// </summary>
    public required bool NamingComesFirst { get; init; }

    /// <summary>
    /// Whether one is about to shed seed or spores, or already does. What comes from below only does not press so.
    /// </summary>
    public required bool IsAnyAboutToSeed { get; init; }

    /// <summary>Whether a film or mat is about to shed spores or splash cups, or already does.</summary>
    public required bool IsAnyMatAboutToSpread { get; init; }

    /// <summary>Whether films and mats cover at least half of what the weeds that are up cover.</summary>
    public required bool AreMostlyMats { get; init; }

    /// <summary>The one that covers most of all that are up; null when none is up or two cover as much.</summary>
    public required string? Main { get; init; }

    /// <summary>Whether all that is up stands beside the pots: it is worked on as if there were none.</summary>
    public required bool AreBesideThePots { get; init; }

    /// <summary>The weeds of an area, taken together.</summary>
    /// <param name="weeds">The weeds seen.</param>
    /// <param name="knowledge">Their records; of a weed that it does not hold only the cover counts.</param>
    public static StandingWeeds Of(ImmutableArray<WeedSeen> weeds, KnowledgeBase knowledge)
    {
        (WeedSeen Seen, Weed Weed)[] known =
        [
            .. weeds
                .Where(seen => knowledge.Weeds.ContainsKey(seen.Weed))
                .Select(seen => (seen, knowledge.Weeds[seen.Weed])),
        ];
        (WeedSeen Seen, Weed Weed)[] unnamed = [.. known.Where(one => one.Weed.IsUnnamed)];
        return new StandingWeeds
        {
            NamingComesFirst =
                unnamed.Any(one => !IsNamedLater(one.Weed, knowledge))
                || (unnamed.Length > 0 && !known.Any(one => one.Seen.IsUp == true && !one.Weed.IsUnnamed)),
            IsAnyAboutToSeed = known.Any(one =>
                one.Seen.IsAboutToSeed && !WaysOfLife.Of(one.Weed, knowledge.Usual).Equals(s_belowOnly)
            ),
            IsAnyMatAboutToSpread = known.Any(one => one.Seen.IsAboutToSeed && IsOfSpores(one.Weed, knowledge)),
            AreMostlyMats = MostlyMats(known, knowledge),
            Main = MostOf(weeds),
            AreBesideThePots =
                weeds.Any(seen => seen.IsUp == true)
                && weeds.All(seen => seen.IsUp == false || seen.Stands == WeedSeen.InGround),
        };
    }

    private static bool IsNamedLater(Weed weed, KnowledgeBase knowledge) =>
        knowledge.Vocabulary.TryGetValue(NamedLater, out WordList? kinds) && kinds.Contains(weed.Kind);

    private static bool IsOfSpores(Weed weed, KnowledgeBase knowledge) =>
        WaysOfLife.Of(weed, knowledge.Usual).Contains(WaysOfLife.Spores);

    // A cover that was not noted counts as a trace.
    private static bool MostlyMats((WeedSeen Seen, Weed Weed)[] known, KnowledgeBase knowledge)
    {
        ILookup<bool, decimal> covers = known
            .Where(one => one.Seen.IsUp != false)
            .ToLookup(one => IsOfSpores(one.Weed, knowledge), one => one.Seen.CoverOfAreaPercent ?? 1);
        return covers.Contains(true) && covers[true].Sum() >= covers[false].Sum();
    }

    // Several stages of one weed cover together.
    private static string? MostOf(ImmutableArray<WeedSeen> weeds)
    {
        (string Weed, decimal Cover)[] covers =
        [
            .. weeds
                .Where(seen => seen.IsUp == true)
                .GroupBy(seen => seen.Weed)
                .Select(one => (one.Key, one.Sum(seen => seen.CoverOfAreaPercent ?? 1)))
                .OrderByDescending(one => one.Item2)
                .Take(2),
        ];
        return covers switch
        {
            [var only] => only.Weed,
            [var first, var second] when first.Cover > second.Cover => first.Weed,
            _ => null,
        };
    }
}
