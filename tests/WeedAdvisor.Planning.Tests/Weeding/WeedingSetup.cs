using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>A weed of a setup, as the visit and the knowledge have it.</summary>
/// <param name="Weed">Its record.</param>
/// <param name="Stage">Word of list <c>stage</c> when it stands in the pots now; null or <c>expected</c> when it does
/// not.</param>
/// <param name="CoverPercent">Share of the pot surface it covers now, 0 to 100 percent; null when not known.</param>
/// <param name="Control">Share of its seedlings that treatments stop, for each week of the setup; empty when none
/// do.</param>
internal sealed record SetupWeed(Weed Weed, string? Stage, decimal? CoverPercent, ImmutableArray<double> Control);

/// <summary>
/// Everything that hand weeding in one area depends on, before the parameters come in. The same setup gives a plan for
/// each set of parameters, the usual or drawn ones.
/// </summary>
internal sealed record WeedingSetup
{
    /// <summary>The weeds.</summary>
    public required ImmutableArray<SetupWeed> Weeds { get; init; }

    /// <summary>The place.</summary>
    public required WeedSite Site { get; init; }

    /// <summary>The mulch; null when the pots are bare or it is not known.</summary>
    public PotMulch? Mulch { get; init; }

    /// <summary>Share of the seedlings of every weed that the grower's programme stops in every week, 0 to 1.</summary>
    public double Control { get; init; }

    /// <summary>The day of the first round.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>How many weeks are looked at.</summary>
    public required int Weeks { get; init; }

    /// <summary>Share missed, 0 to 1; null for the usual one.</summary>
    public double? Missed { get; init; }

    /// <summary>Diameter from which weeds are pulled, centimetres; null for the usual one.</summary>
    public double? SmallestPulledCm { get; init; }

    /// <summary>The plan under the parameters; refused when a weed or a number does not serve.</summary>
    /// <param name="numbers">The parameters.</param>
    /// <param name="intervalWeeks">Weeks between rounds.</param>
    public Outcome<WeedingPlan, string> Plan(WeedingNumbers numbers, int intervalWeeks)
    {
        if (Control is not (>= 0 and <= 1))
            return Outcome<WeedingPlan, string>.Bad("The share that is stopped lies between 0 and 100 percent.");
        if (Weeks is < 1 or > WeedingPlan.MostWeeks)
            return Outcome<WeedingPlan, string>.Bad($"A plan lasts 1 to {WeedingPlan.MostWeeks} weeks.");
        Outcome<WeedTraits, string>[] traits = [.. Weeds.Select(weed => WeedTraits.Of(weed.Weed, Site, numbers))];
        if (traits.Any(one => !one.IsGood))
            return Outcome<WeedingPlan, string>.Bad(traits.SelectMany(one => one.Refusals));
        var plan = new WeedingPlan
        {
            Weeds = [.. Weeds.Select((weed, i) => Planned(weed, traits[i].Value!, numbers))],
            FirstWeek = WeedTraits.WeekOf(Start),
            Weeks = Weeks,
            IntervalWeeks = intervalWeeks,
            Missed = Missed ?? numbers.Missed,
            SmallestPulledCm = SmallestPulledCm ?? numbers.SmallestPulledCm,
            Numbers = numbers,
        };
        return plan.Refusals() is { IsEmpty: false } refusals
            ? Outcome<WeedingPlan, string>.Bad(refusals)
            : Outcome<WeedingPlan, string>.Good(plan);
    }

    private PlannedWeed Planned(SetupWeed weed, WeedTraits traits, WeedingNumbers numbers)
    {
        double through = (1 - Control) * (1 - MulchControl.Of(weed.Weed, Mulch, numbers));
        return new PlannedWeed(
            traits,
            [.. Enumerable.Range(0, Weeks).Select(week => 1 - (through * (1 - Treated(weed, week))))],
            StandingNow.Of([new WeedSeen(weed.Weed.Id, weed.Stage, weed.CoverPercent)], traits, numbers)
        );
    }

    private static double Treated(SetupWeed weed, int week) => week < weed.Control.Length ? weed.Control[week] : 0;
}
