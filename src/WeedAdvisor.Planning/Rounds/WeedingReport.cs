using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Rounds;

/// <summary>The weeding figures of one area, or why there are none.</summary>
/// <param name="Area">The area.</param>
/// <param name="HasPots">Whether pots stand there.</param>
/// <param name="Refusals">Why there are no figures; empty when there are.</param>
/// <param name="Weeding">What went in; null when refused.</param>
/// <param name="Compared">The intervals, the present one among them; null when refused.</param>
/// <param name="Bands">The bands under uncertainty; empty when not asked for.</param>
public sealed record AreaWeedingReport(
    VisitArea Area,
    bool HasPots,
    ImmutableArray<string> Refusals,
    AreaWeeding? Weeding,
    IntervalComparison? Compared,
    ImmutableArray<UncertainInterval> Bands
)
{
    /// <summary>The season at the present interval; null when that is not known.</summary>
    public IntervalCost? Present =>
        Compared?.Intervals.FirstOrDefault(one => one.Season.IntervalWeeks == Weeding?.PresentIntervalWeeks);

    /// <summary>What figures for 1000 pots are multiplied with for all pots of the area.</summary>
    public double Scale => (Weeding?.Year.Pots ?? 0) / 1000.0;
}

/// <summary>The weeding figures of a visit.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Areas">One for each area, in the order of the visit; the figures inside are for 1000 pots.</param>
public sealed record WeedingReport(Visit Visit, ImmutableArray<AreaWeedingReport> Areas)
{
    /// <summary>Works out every area.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="terms">What the grower sets.</param>
    /// <param name="intervals">Intervals to compare, whole weeks; the present interval of an area is added.</param>
    /// <param name="seed">Seed of the draws; null for no bands.</param>
    public static WeedingReport Of(
        Visit visit,
        KnowledgeBase knowledge,
        YearTerms terms,
        IReadOnlyCollection<int> intervals,
        ulong? seed
    ) => new(visit, [.. visit.Areas.Select(area => Report(area, visit.Date, knowledge, terms, intervals, seed))]);

    private static AreaWeedingReport Report(
        VisitArea area,
        DateOnly day,
        KnowledgeBase knowledge,
        YearTerms terms,
        IReadOnlyCollection<int> intervals,
        ulong? seed
    )
    {
        var reading = AreaReading.Of(area, day, knowledge);
        Outcome<AreaWeeding, string> weeding = AreaWeeding.Of(reading, day, knowledge, terms);
        if (!weeding.IsGood)
            return Refused(weeding.Refusals);
        int[] all = weeding.Value.PresentIntervalWeeks is { } present ? [.. intervals, present] : [.. intervals];
        Outcome<IntervalComparison, string> compared = IntervalComparison.Of(weeding.Value.Year, all);
        if (!compared.IsGood)
            return Refused(compared.Refusals);
        ImmutableArray<UncertainInterval> bands = seed is { } start
            ? [.. UncertainComparison.Of(weeding.Value.Year, all, start).Value ?? []]
            : [];
        return new AreaWeedingReport(area, reading.HasPots, [], weeding.Value, compared.Value, bands);

        AreaWeedingReport Refused(ImmutableArray<string> why) => new(area, reading.HasPots, why, null, null, []);
    }
}
