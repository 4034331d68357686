using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;

namespace WeedAdvisor.Interview.Desks.Costs;

/// <summary>
/// What an area costs under given numbers: rounds of weeding compared, and ways through the year compared.
/// </summary>
/// <param name="Intervals">The rounds; null when they cannot be reckoned.</param>
/// <param name="Ways">The ways; null when they cannot be reckoned.</param>
/// <param name="Refusals">Why something cannot be reckoned, as sentences; empty when everything can.</param>
internal sealed record CostSum(IntervalComparison? Intervals, WaysCompared? Ways, ImmutableArray<string> Refusals)
{
    /// <summary>Reckons an area.</summary>
    /// <param name="advice">The advice on it.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="terms">What the grower has set.</param>
    public static CostSum Of(
        AreaAdvice advice,
        DateOnly day,
        KnowledgeBase knowledge,
        PriceBook prices,
        YearTerms terms
    )
    {
        Outcome<MoneyCase, string> money = MoneyCase.Of(advice, day, knowledge, prices, terms);
        if (!money.IsGood)
            return new CostSum(null, null, money.Refusals);
        Outcome<WaysCompared, string> ways = WaysCompared.Of(money.Value);
        Outcome<IntervalComparison, string> intervals = Rounds(money.Value);
        return new CostSum(intervals.Value, ways.Value, [.. intervals.Refusals, .. ways.Refusals]);
    }

    private static Outcome<IntervalComparison, string> Rounds(MoneyCase money) =>
        IntervalComparison.Of(money.Year, [.. IntervalComparison.UsualIntervals, money.IntervalWeeks]);
}
