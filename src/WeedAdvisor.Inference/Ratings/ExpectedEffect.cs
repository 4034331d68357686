using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Ratings;

/// <summary>What an action is expected to do to the weeds seen, from published figures alone.</summary>
public static class ExpectedEffect
{
    // A weed of which only a trace is seen, or that is expected to come up, still counts a little.
    private const decimal LeastCoverPercent = 1;

    /// <summary>
    /// The cover-weighted mean of the middles of the published ranges. Of a weed without a figure, or without a name,
    /// nothing is promised; when none has one, the mean is missing.
    /// </summary>
    /// <param name="action">The action.</param>
    /// <param name="seen">The weeds seen; each is a weed of the knowledge.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="escapes">What came through earlier applications in the area; empty when that does not
    /// count.</param>
    public static Effect Of(
        CatalogueAction action,
        ImmutableArray<WeedSeen>? seen,
        KnowledgeBase knowledge,
        ImmutableArray<Escape> escapes
    )
    {
        if (seen is not { Length: > 0 } weeds)
            return new Effect(null, []);
        decimal[] covers = Covers(weeds);
        decimal total = covers.Sum();
        // A weed that stands in several stages is one weed, with the cover of them all.
        ImmutableArray<EffectPart> parts =
        [
            .. weeds
                .Select((weed, i) => (weed.Weed, Cover: covers[i]))
                .GroupBy(one => one.Weed, one => one.Cover, StringComparer.Ordinal)
                .Select(weed =>
                    PartOf(action, knowledge.Weeds[weed.Key], (double)(weed.Sum() / total), knowledge, escapes)
                )
                .OrderBy(part => part.Weed, StringComparer.Ordinal),
        ];
        if (parts.All(part => part.LowPercent is null))
            return new Effect(null, parts);
        return new Effect(parts.Sum(part => part.Weight * MiddleOf(part)), parts);
    }

    private static double MiddleOf(EffectPart part) =>
        part is { LowPercent: { } low, HighPercent: { } high } ? (double)(low + high) / 200 : 0;

    // A cover that was not noted is taken to be the mean of those that were.
    private static decimal[] Covers(ImmutableArray<WeedSeen> weeds)
    {
        decimal[] known = [.. weeds.Select(weed => weed.CoverOfAreaPercent).OfType<decimal>()];
        decimal usual = known.Length > 0 ? known.Average() : LeastCoverPercent;
        return [.. weeds.Select(weed => Math.Max(LeastCoverPercent, weed.CoverOfAreaPercent ?? usual))];
    }

    private static EffectPart PartOf(
        CatalogueAction action,
        Weed weed,
        double weight,
        KnowledgeBase knowledge,
        ImmutableArray<Escape> escapes
    )
    {
        (IReadOnlyList<Span> ranges, IEnumerable<string> sources) = action switch
        {
            _ when weed.IsUnnamed => ([], []),
            Practice practice => Published(practice, weed),
            Treatment treatment => Rated(treatment, weed, knowledge, escapes),
            _ => ([], []),
        };
        if (ranges.Count == 0)
            return new EffectPart(weed.Id, weight, null, null, []);
        return new EffectPart(
            weed.Id,
            weight,
            ranges.Min(range => range.Low),
            ranges.Max(range => range.High),
            [.. sources.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)]
        );
    }

    private static (IReadOnlyList<Span> Ranges, IEnumerable<string> Sources) Published(Practice practice, Weed weed)
    {
        foreach (string name in (string[])[weed.Id, weed.Kind, "all"])
        {
            PublishedEffect[] found = [.. practice.Effects.Where(effect => effect.On == name)];
            if (found.Length > 0)
                return (
                    [.. found.Select(effect => effect.ReductionPercent)],
                    found.SelectMany(effect => effect.Sources)
                );
        }

        return ([], []);
    }

    private static (IReadOnlyList<Span> Ranges, IEnumerable<string> Sources) Rated(
        Treatment treatment,
        Weed weed,
        KnowledgeBase knowledge,
        ImmutableArray<Escape> escapes
    )
    {
        IReadOnlyList<Rating> ratings = WeedRatings.Of(treatment, weed);
        if (
            escapes.Any(escape =>
                escape.HasLapsed && escape.Weed == weed.Id && PastProduct.SitesOf(treatment).Contains(escape.Site!)
            )
        )
        {
            return TreatmentControl.PercentOf(treatment, weed, knowledge, escapes) is { } percent
                ? ([percent], ratings.SelectMany(rating => rating.Sources))
                : ([], []);
        }

        return (
            [.. ratings.Select(rating => knowledge.Scale[rating.Grade].ReductionPercent)],
            ratings.SelectMany(rating => rating.Sources)
        );
    }
}
