using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Weeding;

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
    public WeedingSeason? Present =>
        Compared?.Seasons.FirstOrDefault(season => season.IntervalWeeks == Weeding?.PresentIntervalWeeks);
}

/// <summary>The weeding figures of a visit.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Pots">Pots in each area for which figures are told; the figures inside are for 1000.</param>
/// <param name="Areas">One for each area, in the order of the visit.</param>
public sealed record WeedingReport(Visit Visit, int Pots, ImmutableArray<AreaWeedingReport> Areas)
{
    /// <summary>What figures for 1000 pots are multiplied with.</summary>
    public double Scale => Pots / 1000.0;

    /// <summary>Works out every area.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="wishes">What the grower has set.</param>
    /// <param name="intervals">Intervals to compare, whole weeks; the present interval of an area is added.</param>
    /// <param name="pots">Pots, 1 or more.</param>
    /// <param name="seed">Seed of the draws; null for no bands.</param>
    public static Outcome<WeedingReport, string> Of(
        Visit visit,
        KnowledgeBase knowledge,
        WeedingWishes wishes,
        IReadOnlyCollection<int> intervals,
        int pots,
        ulong? seed
    )
    {
        if (pots < 1)
            return Outcome<WeedingReport, string>.Bad("The number of pots is 1 or more.");
        return Outcome<WeedingReport, string>.Good(
            new(
                visit,
                pots,
                [.. visit.Areas.Select(area => Report(area, visit.Date, knowledge, wishes, intervals, seed))]
            )
        );
    }

    private static AreaWeedingReport Report(
        VisitArea area,
        DateOnly day,
        KnowledgeBase knowledge,
        WeedingWishes wishes,
        IReadOnlyCollection<int> intervals,
        ulong? seed
    )
    {
        var reading = AreaReading.Of(area, day, knowledge);
        Outcome<AreaWeeding, string> weeding = AreaWeeding.Of(reading, day, knowledge, wishes);
        if (!weeding.IsGood)
            return Refused(weeding.Refusals);
        WeedingNumbers numbers = WeedingNumbers.Of(knowledge).Value!;
        int[] all = weeding.Value.PresentIntervalWeeks is { } present ? [.. intervals, present] : [.. intervals];
        double wage = weeding.Value.WageUsdPerHour;
        Outcome<IntervalComparison, string> compared = IntervalComparison.Of(
            weeding.Value.Setup.Plan(numbers, 1).Value!,
            all,
            wage
        );
        if (!compared.IsGood)
            return Refused(compared.Refusals);
        ImmutableArray<UncertainInterval> bands = seed is { } start
            ? [.. UncertainComparison.Of(weeding.Value.Setup, numbers, knowledge, all, wage, start).Value ?? []]
            : [];
        return new AreaWeedingReport(area, reading.HasPots, [], weeding.Value, compared.Value, bands);

        AreaWeedingReport Refused(ImmutableArray<string> why) => new(area, reading.HasPots, why, null, null, []);
    }
}
