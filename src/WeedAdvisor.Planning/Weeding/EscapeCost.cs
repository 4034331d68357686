using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What one weed that has come up will cost by hand, with all that descends from it.</summary>
/// <param name="Hours">Hours of pulling, the walking left out: the round is walked in any case.</param>
/// <param name="Usd">The same at the wage, US dollars.</param>
/// <param name="Descendants">Plants that come up from its seed or its roots within the horizon.</param>
public sealed record EscapeCost(double Hours, double Usd, double Descendants)
{
    /// <summary>The weeks over which descendants are counted when nothing else is said.</summary>
    public const int UsualHorizon = 26;

    /// <summary>
    /// The expected cost of one plant of a weed that comes up in a week of the year. It is the mean over all weeks in
    /// which the next round can fall. The plant has room, meets no other weed, and may die, be missed or seed like any
    /// other; what still stands at the horizon is pulled then.
    /// </summary>
    /// <param name="traits">The weed in its place.</param>
    /// <param name="weekOfYear">Week in which it comes up, 0 to 51.</param>
    /// <param name="intervalWeeks">Weeks between rounds.</param>
    /// <param name="missed">Share that a round passes over, 0 to 1.</param>
    /// <param name="smallestPulledCm">Diameter from which weeds are pulled, centimetres.</param>
    /// <param name="wageUsdPerHour">Cost of an hour, US dollars, 0 or more.</param>
    /// <param name="numbers">The parameters.</param>
    /// <param name="control">Share of its seedlings that is stopped in the weeks to come, 0 to 1.</param>
    /// <param name="horizonWeeks">Weeks over which it is followed.</param>
    public static Outcome<EscapeCost, string> Of(
        WeedTraits traits,
        int weekOfYear,
        int intervalWeeks,
        double missed,
        double smallestPulledCm,
        double wageUsdPerHour,
        WeedingNumbers numbers,
        double control = 0,
        int horizonWeeks = UsualHorizon
    )
    {
        if (!Wage.IsInRange(wageUsdPerHour))
            return Outcome<EscapeCost, string>.Bad(Wage.OutOfRange(wageUsdPerHour));
        // One plant in 1000 pots, and nothing that arrives by itself.
        var alone = new PlannedWeed(
            traits with
            {
                SeedlingsPerYear = 0,
            },
            [.. Enumerable.Repeat(control, Math.Max(0, horizonWeeks))],
            [1]
        );
        var plan = new WeedingPlan
        {
            Weeds = [alone],
            FirstWeek = weekOfYear,
            Weeks = horizonWeeks,
            IntervalWeeks = intervalWeeks,
            Missed = missed,
            SmallestPulledCm = smallestPulledCm,
            Numbers = numbers,
        };
        if (plan.Refusals() is { IsEmpty: false } refusals)
            return Outcome<EscapeCost, string>.Bad(refusals);
        double hours = 0,
            descendants = 0;
        for (int first = 0; first < intervalWeeks; first++)
        {
            WeedingSeason season = WeedingRun.Of(plan with { FirstRound = first }).Value!;
            hours += season.PullingHours / intervalWeeks;
            descendants += season.Weeds[0].Emerged / intervalWeeks;
        }

        return Outcome<EscapeCost, string>.Good(new(hours, hours * wageUsdPerHour, descendants));
    }
}
