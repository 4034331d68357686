using System.Collections.Immutable;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What the grower has set for the figures; null and empty leave it to the visit and the knowledge.</summary>
public sealed record WeedingWishes
{
    /// <summary>Cost of an hour, US dollars; null for the visit's answer, else the price list.</summary>
    public double? WageUsdPerHour { get; init; }

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
/// <param name="PresentIntervalWeeks">Whole weeks between rounds at present; null when not known, or when there are none.</param>
/// <param name="Assumptions">What the figures rest on, as sentences.</param>
public sealed record AreaWeeding(
    WeedingSetup Setup, double WageUsdPerHour, int? PresentIntervalWeeks, ImmutableArray<string> Assumptions)
{
    private static readonly ImmutableArray<string> s_placesWithPots =
        ["propagation-house", "growing-house", "overwintering-house", "liner-bed", "container-yard"];

    /// <summary>Whether pots stand in the area, as far as the answers say. Without an answer they are taken to.</summary>
    public static bool HasPots(VisitArea area) =>
        (WordOf(area, "place") is not { } place || s_placesWithPots.Contains(place))
        && WordOf(area, "stock") != "none-present";

    /// <summary>Reads an area; refused, with what to do, when there are no pots, no weeds, no region or no wage.</summary>
    public static WeedingOutcome<AreaWeeding> Of(
        VisitArea area, DateOnly visit, KnowledgeBase knowledge, WeedingWishes wishes)
    {
        if (!HasPots(area))
            return Refused("No pots stand here. The figures are for weeds in pots, so there are none for this area.");
        WeedingOutcome<WeedingNumbers> numbers = WeedingNumbers.Of(knowledge);
        if (!numbers.IsGood)
            return WeedingOutcome<AreaWeeding>.Bad(numbers.Refusals);
        ImmutableArray<SetupWeed> named = Named(area, knowledge, wishes);
        ImmutableArray<(Treatment Treatment, int WeeksAgo)> acting = PastControl.Acting(area, visit, knowledge);
        ImmutableArray<Escape> escapes = EscapesOfArea.Of(area.Past, knowledge);
        ImmutableArray<SetupWeed> weeds =
        [
            .. named
                .Where(weed => weed.Weed.Kind != "alga")
                .Select(weed => weed with { Control = PastControl.Of(weed.Weed, acting, escapes, wishes.Weeks, knowledge) }),
        ];
        if (weeds.IsEmpty)
            return Refused(named.IsEmpty
                ? "No weed is noted here. Note those seen, or those you expect (stage 'expected'), or name them with --weeds."
                : "Only films are noted here, and they cannot be pulled. Name weeds with --weeds.");
        if (Zone(area, knowledge) is not { } zone)
            return Refused("The region is not known, so neither is when weeds come up. Answer the question 'region'.");
        WeedingOutcome<Wage> wage = Wage.Of(area, knowledge, wishes.WageUsdPerHour);
        if (!wage.IsGood)
            return WeedingOutcome<AreaWeeding>.Bad(wage.Refusals);
        var setup = new WeedingSetup
        {
            Weeds = weeds,
            Site = new WeedSite(zone, WordOf(area, "surface-moisture"), WordOf(area, "surroundings")),
            Mulch = MulchOf(area),
            Control = wishes.Control,
            Start = visit,
            Weeks = wishes.Weeks,
            Missed = wishes.Missed,
        };
        int? present = Present(area);
        WeedingOutcome<WeedingPlan> plan = setup.Plan(numbers.Value, present ?? 1);
        return plan.IsGood
            ? WeedingOutcome<AreaWeeding>.Good(new(
                setup,
                wage.Value.UsdPerHour,
                present,
                [.. WeedingAssumptions.Of(setup, plan.Value, wage.Value, named, NumberOf(area, "weeding-interval"), acting)]))
            : WeedingOutcome<AreaWeeding>.Bad(plan.Refusals);
    }

    private static WeedingOutcome<AreaWeeding> Refused(string why) => WeedingOutcome<AreaWeeding>.Bad(why);

    // A weed noted twice, as seedlings and in flower, counts by the note with more cover.
    private static ImmutableArray<SetupWeed> Named(VisitArea area, KnowledgeBase knowledge, WeedingWishes wishes)
    {
        SetupWeed[] seen =
        [
            .. (area.Weeds ?? [])
                .GroupBy(weed => weed.Weed, StringComparer.Ordinal)
                .Select(group => group.OrderByDescending(weed => weed.CoverPercent ?? 0).First())
                .Select(weed => new SetupWeed(knowledge.Weeds[weed.Weed], weed.Stage, weed.CoverPercent, [])),
        ];
        return wishes.Weeds.IsDefaultOrEmpty
            ? [.. seen]
            :
            [
                .. wishes.Weeds
                    .Distinct(StringComparer.Ordinal)
                    .Select(id => seen.FirstOrDefault(weed => weed.Weed.Id == id)
                        ?? new SetupWeed(knowledge.Weeds[id], null, null, [])),
            ];
    }

    private static string? Zone(VisitArea area, KnowledgeBase knowledge)
    {
        if (WordOf(area, "heated") == "yes" && WordOf(area, "cover") is ("film-on" or "glass-or-rigid"))
            return "heated-house";
        return WordOf(area, "region") is { } region ? knowledge.Regions.GetValueOrDefault(region)?.EmergenceZone : null;
    }

    private static PotMulch? MulchOf(VisitArea area) =>
        WordOf(area, "mulch") is { } kind and not "none" ? new PotMulch(kind, NumberOf(area, "mulch-depth")) : null;

    private static int? Present(VisitArea area) => NumberOf(area, "weeding-interval") is { } weeks and > 0
        ? (int)Math.Clamp(Math.Round(weeks, MidpointRounding.AwayFromZero), 1, WeedingPlan.LongestInterval)
        : null;

    private static string? WordOf(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words { Value.Count: 1 } words ? words.Value.Single() : null;

    private static decimal? NumberOf(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Number number ? number.Value : null;
}
