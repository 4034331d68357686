using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Robust;

/// <summary>
/// A year in which figures stand elsewhere in their ranges. What is moved are the records that everything is reckoned
/// from, so that the price of a way in it comes from the one function that prices every way.
/// </summary>
internal sealed class MovedYear(YearCase year)
{
    private readonly Dictionary<string, Price> _prices = new(StringComparer.Ordinal);
    private readonly Dictionary<string, decimal> _firstSeed = new(StringComparer.Ordinal);
    private WeedingNumbers _numbers = year.UsualSize;
    private decimal _wage = year.WageUsd;
    private int _weeksLate;
    private KnowledgeBase _knowledge = year.Knowledge;

    /// <summary>The knowledge with what was moved so far.</summary>
    public KnowledgeBase Knowledge => _knowledge;

    public void Wage(decimal usd) => _wage = usd;

    public void WeeksLate(decimal weeks) => _weeksLate = (int)Math.Round(weeks, MidpointRounding.AwayFromZero);

    public void Number(string id, decimal value) => _numbers = _numbers.With(id, (double)value);

    public void FirstSeed(string weed, decimal weeks) => _firstSeed[weed] = weeks;

    public void Price(Price price, decimal value) => _prices[price.Id] = price with { Value = value };

    public void Usual(string id, decimal value) =>
        _knowledge = _knowledge with
        {
            Usual = new UsualNumbers(
                _knowledge.Usual.Records.SetItem(id, _knowledge.Usual.Records[id] with { Value = value })
            ),
        };

    public void Weed(string id, Func<Weed, Weed> moved) =>
        _knowledge = _knowledge with { Weeds = _knowledge.Weeds.SetItem(id, moved(_knowledge.Weeds[id])) };

    public void Practice(string id, Func<Practice, Practice> moved) =>
        _knowledge = _knowledge with { Practices = _knowledge.Practices.SetItem(id, moved(_knowledge.Practices[id])) };

    public void Treatment(string id, Func<Treatment, Treatment> moved) =>
        _knowledge = _knowledge with
        {
            Treatments = _knowledge.Treatments.SetItem(id, moved(_knowledge.Treatments[id])),
        };

    public void WorkingTime(string id, Func<WorkingTime, WorkingTime> moved) =>
        _knowledge = _knowledge with
        {
            WorkingTimes = _knowledge.WorkingTimes.SetItem(id, moved(_knowledge.WorkingTimes[id])),
        };

    public void Step(ScaleStep step) =>
        _knowledge = _knowledge with { Scale = _knowledge.Scale.SetItem(step.Id, step) };

    /// <summary>The year.</summary>
    public YearCase Year()
    {
        YearCase moved = year with
        {
            Knowledge = _knowledge,
            // As if they were the grower's: records that follow a price reckon their amount by the shipped one.
            Prices = PriceBook.Of(
                _knowledge,
                [.. year.Prices.Own.Where(price => !_prices.ContainsKey(price.Id)), .. _prices.Values]
            ),
            Wage = year.Wage with { Value = _wage },
            Acting = [.. year.Acting.Select(one => (_knowledge.Treatments[one.Treatment.Id], one.WeeksAgo))],
        };
        moved = moved.With(_numbers, weed =>
            _firstSeed.TryGetValue(weed.Id, out decimal weeks) ? weeks : weed.WeeksToFirstSeed?.Middle
        );
        return _weeksLate == 0 ? moved : moved with { Weeds = Late(moved.Weeds) };
    }

    /// <summary>A way of the year with the records as they are moved.</summary>
    public WayPlan Of(WayPlan way) =>
        way with
        {
            Parts = [.. way.Parts.Select(part => part with { Action = _knowledge.ActionOf(part.Action.Id)! })],
        };

    /// <summary>What a way costs with what was moved, US dollars for 1000 pots.</summary>
    public static ImmutableArray<decimal> Usd(
        YearCase year,
        ImmutableArray<WayPlan> ways,
        IEnumerable<(MovedFigure Figure, decimal Value)> figures
    )
    {
        var moved = new MovedYear(year);
        foreach ((MovedFigure figure, decimal value) in figures)
        {
            if (value != figure.Usual)
                figure.Put(moved, value);
        }

        YearCase with = moved.Year();
        return [.. ways.Select(way => WayCosting.Of(with, moved.Of(way)).Value!.Usd)];
    }

    private YearWeeds Late(YearWeeds weeds) =>
        weeds with
        {
            Counted = [.. weeds.Counted.Select(weed => weed with { Traits = Late(weed.Traits) })],
        };

    private WeedTraits Late(WeedTraits traits)
    {
        const int weeks = WeedTraits.WeeksInYear;
        return traits with
        {
            WeekShare =
            [
                .. Enumerable
                    .Range(0, weeks)
                    .Select(week => traits.WeekShare[(week - _weeksLate + (2 * weeks)) % weeks]),
            ],
        };
    }
}
