using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Money;

/// <summary>The year of an area with the advice on it: what the ways through the year are chosen from.</summary>
/// <param name="Year">What they are reckoned from.</param>
/// <param name="Advice">The advice on the area on the first day.</param>
public sealed record MoneyCase(YearCase Year, AreaAdvice Advice)
{
    /// <summary>The day of the visit; the year starts with it.</summary>
    public DateOnly Day => Year.Day;

    /// <summary>The knowledge.</summary>
    public KnowledgeBase Knowledge => Year.Knowledge;

    /// <summary>The prices.</summary>
    public PriceBook Prices => Year.Prices;

    /// <summary>Cost of an hour, US dollars.</summary>
    public decimal WageUsd => Year.WageUsd;

    /// <summary>Pots of the area.</summary>
    public int Pots => Year.Pots;

    /// <summary>Whether somebody said how many pots there are.</summary>
    public bool IsPotsGiven => Year.Block.Pots.From != Origin.Assumed;

    /// <summary>Weeks between rounds today.</summary>
    public int IntervalWeeks => Year.Interval.Value;

    /// <summary>Whether the visit says how many weeks that are.</summary>
    public bool IsIntervalGiven => Year.Interval.From != Origin.Assumed;

    /// <summary>Why other weeds do not count, as sentences.</summary>
    public ImmutableArray<string> LeftOut => Year.Weeds.LeftOut;

    /// <summary>The area.</summary>
    public VisitArea Area => Advice.Area;

    /// <summary>Tools that are there.</summary>
    public WordSet Equipment => Year.Reading.Equipment;

    /// <summary>What one use of a part of a way costs the whole area; refused with what is missing.</summary>
    /// <param name="part">The part.</param>
    public Outcome<ActionCost, string> CostOf(WayPart part) => WayCosting.CostOf(Year, part);

    /// <summary>
    /// The case of an area; refused when no pots stand there, no weed can be reckoned or a price is missing.
    /// </summary>
    /// <param name="advice">The advice on the area.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="knowledge">The knowledge that the advice came from.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="terms">What the grower sets.</param>
    public static Outcome<MoneyCase, string> Of(
        AreaAdvice advice,
        DateOnly day,
        KnowledgeBase knowledge,
        PriceBook prices,
        YearTerms terms
    )
    {
        if (YearCase.Wrong(terms) is { } wrong)
            return Outcome<MoneyCase, string>.Bad(wrong);
        Outcome<YearCase, string> year = YearCase.Of(advice.Reading, day, knowledge, prices, terms);
        return year.IsGood
            ? Outcome<MoneyCase, string>.Good(new MoneyCase(year.Value, advice))
            : Outcome<MoneyCase, string>.Bad(year.Refusals.Select(why => $"{advice.Area.Name}: {why}"));
    }
}
