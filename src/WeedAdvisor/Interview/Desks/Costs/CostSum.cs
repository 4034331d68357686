using System.Collections.Immutable;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Interview.Desks.Costs;

/// <summary>
/// What an area costs under given numbers: rounds of weeding compared, and ways through the year compared.
/// </summary>
/// <param name="Intervals">The rounds; null when they cannot be reckoned.</param>
/// <param name="Ways">The ways; null when they cannot be reckoned.</param>
/// <param name="Refusals">Why something cannot be reckoned, as sentences; empty when everything can.</param>
internal sealed record CostSum(IntervalComparison? Intervals, WaysCompared? Ways, ImmutableArray<string> Refusals)
{
    /// <summary>Reckons the area that an interview is at.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="terms">What the grower has set.</param>
    public static CostSum Of(InterviewSession session, PriceBook prices, MoneyTerms terms)
    {
        Outcome<MoneyCase, string> money = MoneyCase.Of(
            session.Advice,
            session.Visit.Date,
            session.Knowledge,
            prices,
            terms
        );
        if (!money.IsGood)
            return new CostSum(null, null, money.Refusals);
        Outcome<WaysCompared, string> ways = WaysCompared.Of(money.Value);
        Outcome<IntervalComparison, string> intervals = Rounds(session, money.Value);
        return new CostSum(intervals.Value, ways.Value, [.. intervals.Refusals, .. ways.Refusals]);
    }

    private static Outcome<IntervalComparison, string> Rounds(InterviewSession session, MoneyCase money)
    {
        var wishes = new WeedingWishes
        {
            WageUsdPerHour = money.WageUsd,
            Control = money.TodayControl ?? 0,
            Weeds = [.. money.Weeds.Select(weed => weed.Weed)],
        };
        Outcome<AreaWeeding, string> weeding = AreaWeeding.Of(
            session.Advice.Reading,
            session.Visit.Date,
            session.Knowledge,
            wishes
        );
        if (!weeding.IsGood)
            return Outcome<IntervalComparison, string>.Bad(weeding.Refusals);

        // What the grower knows of the applications counts in place of their records, as it does in today's way.
        WeedingSetup setup = money.TodayControl is null
            ? weeding.Value.Setup
            : weeding.Value.Setup with
            {
                Weeds = [.. weeding.Value.Setup.Weeds.Select(weed => weed with { Control = [] })],
            };
        Outcome<WeedingPlan, string> plan = setup.Plan(money.Numbers, money.IntervalWeeks);
        return plan.IsGood
            ? IntervalComparison.Of(
                plan.Value,
                [.. IntervalComparison.UsualIntervals, money.IntervalWeeks],
                (double)money.WageUsd
            )
            : Outcome<IntervalComparison, string>.Bad(plan.Refusals);
    }
}
