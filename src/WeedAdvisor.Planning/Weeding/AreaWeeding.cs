using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What the grower has set for the figures; null and empty leave it to the visit and the knowledge.</summary>
public sealed record WeedingWishes
{
    /// <summary>Cost of an hour, US dollars; null for the visit's answer, else the price list.</summary>
    public decimal? WageUsdPerHour { get; init; }

    /// <summary>Share that a round passes over, 0 to 1; null for the usual one.</summary>
    public double? Missed { get; init; }

    /// <summary>Share of all seedlings that the grower's programme stops, 0 to 1.</summary>
    public double Control { get; init; }

    /// <summary>Weeks looked at.</summary>
    public int Weeks { get; init; } = WeedTraits.WeeksInYear;

    /// <summary>Ids of the weeds to count with; empty for those of the visit.</summary>
    public ImmutableArray<string> Weeds { get; init; } = [];
}

/// <summary>Hand weeding in one area of a visit.</summary>
/// <param name="Setup">What goes into the model.</param>
/// <param name="WageUsdPerHour">Cost of an hour, US dollars.</param>
/// <param name="PresentIntervalWeeks">Whole weeks between rounds at present; null when not known, or when there are
/// none.</param>
/// <param name="Assumptions">What the figures rest on, as sentences.</param>
public sealed record AreaWeeding(
    WeedingSetup Setup,
    double WageUsdPerHour,
    int? PresentIntervalWeeks,
    ImmutableArray<string> Assumptions
)
{
    /// <summary>
    /// Reads an area; refused, with what to do, when there are no pots, no weeds, no region or no wage.
    /// </summary>
    public static Outcome<AreaWeeding, string> Of(
        AreaReading reading,
        DateOnly visit,
        KnowledgeBase knowledge,
        WeedingWishes wishes
    )
    {
        VisitArea area = reading.Area;
        if (!reading.HasPots)
            return Refused("No pots stand here. The figures are for weeds in pots, so there are none for this area.");
        Outcome<WeedingNumbers, string> numbers = WeedingNumbers.Of(knowledge);
        if (!numbers.IsGood)
            return Outcome<AreaWeeding, string>.Bad(numbers.Refusals);
        ImmutableArray<SetupWeed> named = Named(area, knowledge, wishes);
        ImmutableArray<(Treatment Treatment, int WeeksAgo)> acting = PastControl.Acting(area, visit, knowledge);
        ImmutableArray<Escape> escapes = EscapesOfArea.Of(area.Past, knowledge);
        ImmutableArray<SetupWeed> weeds =
        [
            .. named
                .Where(weed => weed.Weed.Kind != "alga")
                .Select(weed =>
                    weed with
                    {
                        Control = PastControl.Of(weed.Weed, acting, escapes, wishes.Weeks, knowledge),
                    }
                ),
        ];
        if (weeds.IsEmpty)
            return Refused(
                named.IsEmpty
                    ? "No weed is noted here. Note those seen, or those you expect (stage 'expected'), or name them "
                        + "with --weeds."
                    : "Only films are noted here, and they cannot be pulled. Name weeds with --weeds."
            );
        if (reading.EmergenceZone is not { } zone)
            return Refused("The region is not known, so neither is when weeds come up. Answer the question 'region'.");
        Func<string, Price?> prices = id => knowledge.Prices.GetValueOrDefault(id);
        Outcome<Told<decimal>, string> wage = Wage.Of(reading, prices, wishes.WageUsdPerHour);
        if (!wage.IsGood)
            return Outcome<AreaWeeding, string>.Bad(wage.Refusals);
        var setup = new WeedingSetup
        {
            Weeds = weeds,
            Site = new WeedSite(zone, reading.Region.HemisphereOrNorth(), reading.Moisture, reading.Surroundings),
            Mulch = PotMulch.Of(reading),
            Control = wishes.Control,
            Start = visit,
            Weeks = wishes.Weeks,
            Missed = wishes.Missed,
        };
        string hour = FormattableString.Invariant($"${wage.Value.Value:0.##} ({Wage.Says(wage.Value.From, prices)})");
        // The comparison runs the plan at each interval; the one it has here is only checked with the rest.
        int? present = reading.RoundsWeeks;
        Outcome<WeedingPlan, string> plan = setup.Plan(numbers.Value, present ?? 1);
        return plan.IsGood
            ? Outcome<AreaWeeding, string>.Good(
                new(
                    setup,
                    (double)wage.Value.Value,
                    present,
                    [.. WeedingAssumptions.Of(setup, plan.Value, hour, named, reading.RoundsAnswered, acting)]
                )
            )
            : Outcome<AreaWeeding, string>.Bad(plan.Refusals);
    }

    private static Outcome<AreaWeeding, string> Refused(string why) => Outcome<AreaWeeding, string>.Bad(why);

    // A weed noted twice, as seedlings and in flower, counts by the note with more cover.
    private static ImmutableArray<SetupWeed> Named(VisitArea area, KnowledgeBase knowledge, WeedingWishes wishes)
    {
        SetupWeed[] seen =
        [
            .. (area.Weeds ?? [])
                .GroupBy(weed => weed.Weed, StringComparer.Ordinal)
                .Select(group => group.OrderByDescending(weed => weed.CoverOfAreaPercent ?? 0).First())
                .Select(weed => new SetupWeed(knowledge.Weeds[weed.Weed], weed.Stage, weed.CoverOfAreaPercent, [])),
        ];
        return wishes.Weeds.IsDefaultOrEmpty
            ? [.. seen]
            :
            [
                .. wishes
                    .Weeds.Distinct(StringComparer.Ordinal)
                    .Select(id =>
                        seen.FirstOrDefault(weed => weed.Weed.Id == id)
                        ?? new SetupWeed(knowledge.Weeds[id], null, null, [])
                    ),
            ];
    }
}
