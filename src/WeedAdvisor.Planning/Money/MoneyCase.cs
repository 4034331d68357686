using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Money;

/// <summary>What the grower sets for the money sums.</summary>
/// <param name="WageUsd">Cost of an hour, US dollars; null for the area's answer or the price
/// <c>labour-rate</c>.</param>
/// <param name="Pots">How many pots the area holds; null for the usual ones.</param>
public sealed record MoneyTerms(decimal? WageUsd, int? Pots)
{
    /// <summary>Whole weeks between rounds today, 1 to 52; null for the area's answer or the usual ones.</summary>
    public int? IntervalWeeks { get; init; }

    /// <summary>Share of the weeds that a round passes over, 0 to 1; null for the usual one.</summary>
    public double? Missed { get; init; }

    /// <summary>
    /// Share of all seedlings that the applications of today's way stop the year round, 0 to 1, as the grower knows it;
    /// null for what the records say of them.
    /// </summary>
    public double? TodayControl { get; init; }
}

/// <summary>An area with everything that the ways through its year are reckoned from.</summary>
public sealed record MoneyCase
{
    /// <summary>The most pots.</summary>
    public const int MostPots = 100_000_000;

    private const int DaysInYear = 365;

    /// <summary>The advice on the area.</summary>
    public required AreaAdvice Advice { get; init; }

    /// <summary>The day of the visit; the year starts with it.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>The knowledge.</summary>
    public required KnowledgeBase Knowledge { get; init; }

    /// <summary>The prices.</summary>
    public required PriceBook Prices { get; init; }

    /// <summary>The parameters of the weeding model.</summary>
    public required WeedingNumbers Numbers { get; init; }

    /// <summary>What is taken where nobody says it.</summary>
    public required UsualNumbers Usual { get; init; }

    /// <summary>Cost of an hour, US dollars.</summary>
    public required decimal WageUsd { get; init; }

    /// <summary>Pots of the area.</summary>
    public required int Pots { get; init; }

    /// <summary>Whether somebody said how many pots there are.</summary>
    public required bool IsPotsGiven { get; init; }

    /// <summary>Weeks between rounds today.</summary>
    public required int IntervalWeeks { get; init; }

    /// <summary>Whether the visit says how many weeks that are.</summary>
    public required bool IsIntervalGiven { get; init; }

    /// <summary>
    /// Share of all seedlings that today's applications stop, 0 to 1; null for what their records say.
    /// </summary>
    public double? TodayControl { get; init; }

    /// <summary>Weeds that count.</summary>
    public required ImmutableArray<WeedSeen> Weeds { get; init; }

    /// <summary>Why other weeds do not count, as sentences.</summary>
    public required ImmutableArray<string> LeftOut { get; init; }

    /// <summary>The place, as the weeding model needs it.</summary>
    public required WeedSite Site { get; init; }

    /// <summary>The area.</summary>
    public VisitArea Area => Advice.Area;

    /// <summary>The area as read.</summary>
    public AreaReading Reading => Advice.Reading;

    /// <summary>Tools that are there.</summary>
    public WordSet Equipment => Reading.Equipment;

    /// <summary>Whether the pots touch; not when that is not known.</summary>
    public bool IsTight => Reading.IsTight;

    /// <summary>The mulch on the pots today: an answer of <c>mulch</c>; null when bare or not known.</summary>
    public string? Mulch => Reading.Mulch;

    /// <summary>Applications of records with a date in the year before the visit, oldest first.</summary>
    public ImmutableArray<PastApplication> PastYear =>
        [
            .. (Area.Past ?? [])
                .Where(past => past.Date is { } date && date <= Day && date > Day.AddDays(-DaysInYear))
                .Where(past => Knowledge.RecordOf(past) is not null)
                .OrderBy(past => past.Date)
                .ThenBy(past => past.Treatment, StringComparer.Ordinal),
        ];

    /// <summary>What one use of a part of a way costs the whole area; refused with what is missing.</summary>
    /// <param name="part">The part.</param>
    public Outcome<ActionCost, string> CostOf(WayPart part) =>
        ActionCost.Of(
            part.Action,
            CostSite.Of(Reading, Usual, Pots),
            Prices,
            Equipment,
            part.IsByBoom ? ApplicationTools.Boom : null
        );

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
        MoneyTerms terms
    )
    {
        VisitArea area = advice.Area;
        AreaReading reading = advice.Reading;
        if (terms.Pots is < 1 or > MostPots)
            return Refused($"An area has 1 to {MostPots} pots, not {terms.Pots}.");
        if (terms.IntervalWeeks is < 1 or > WeedingPlan.LongestInterval)
            return Refused(
                $"There are 1 to {WeedingPlan.LongestInterval} whole weeks between two rounds, not "
                    + $"{terms.IntervalWeeks}."
            );
        if (terms.Missed is { } missed && missed is not (>= 0 and <= 1))
            return Refused("The share of weeds missed lies between 0 and 100 percent.");
        if (terms.TodayControl is { } stopped && stopped is not (>= 0 and <= 1))
            return Refused("The share that is stopped lies between 0 and 100 percent.");
        if (!reading.HasPots)
            return Refused($"{area.Name}: no pots stand here, so there is no weeding of pots to compare ways by.");
        if (area.Weeds is not { Length: > 0 } seen)
            return Refused(
                $"{area.Name}: no weed is named, so there is no weeding to reckon. Add the weeds seen or expected."
            );
        Outcome<WeedingNumbers, string> numbers = WeedingNumbers.Of(knowledge);
        if (!numbers.IsGood)
            return Outcome<MoneyCase, string>.Bad(numbers.Refusals);
        WeedingNumbers used = terms.Missed is { } share
            ? numbers.Value.With("missed-percent", share * 100)
            : numbers.Value;
        if (reading.EmergenceZone is not { } zone)
            return Refused(
                $"{area.Name}: the region is not known, so nobody can say when weeds come up. Answer 'region'."
            );
        var site = new WeedSite(zone, reading.Region.HemisphereOrNorth(), reading.Moisture, reading.Surroundings);
        Outcome<Told<decimal>, string> wage = Wage.Of(reading, prices.Find, terms.WageUsd);
        if (!wage.IsGood)
            return Outcome<MoneyCase, string>.Bad(wage.Refusals.Select(why => $"{area.Name}: {why}"));
        var traits = seen.DistinctBy(weed => weed.Weed, StringComparer.Ordinal)
            .Select(weed => (Seen: weed, Traits: WeedTraits.Of(knowledge.Weeds[weed.Weed], site, used)))
            .ToArray();
        ImmutableArray<WeedSeen> counted = [.. traits.Where(weed => weed.Traits.IsGood).Select(weed => weed.Seen)];
        ImmutableArray<string> leftOut = [.. traits.SelectMany(weed => weed.Traits.Refusals)];
        if (counted.IsEmpty)
            return Outcome<MoneyCase, string>.Bad([
                $"{area.Name}: none of its weeds can be reckoned with.",
                .. leftOut,
            ]);
        Told<int> pots = reading.Pots(terms.Pots);
        Told<int> interval = reading.Rounds(terms.IntervalWeeks);
        return Outcome<MoneyCase, string>.Good(
            new MoneyCase
            {
                Advice = advice,
                Day = day,
                Knowledge = knowledge,
                Prices = prices,
                Numbers = used,
                Usual = knowledge.Usual,
                WageUsd = wage.Value.Value,
                Pots = pots.Value,
                IsPotsGiven = pots.From != Origin.Assumed,
                IntervalWeeks = interval.Value,
                IsIntervalGiven = interval.From != Origin.Assumed,
                TodayControl = terms.TodayControl,
                Weeds = counted,
                LeftOut = leftOut,
                Site = site,
            }
        );
    }

    private static Outcome<MoneyCase, string> Refused(string why) => Outcome<MoneyCase, string>.Bad(why);
}
