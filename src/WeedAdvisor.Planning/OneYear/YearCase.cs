using System.Collections.Concurrent;
using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Blocks;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// An area with everything that a year of it is reckoned from. Whoever prices a year prices it from this: the rounds,
/// the ways, the preventives and the plan.
/// </summary>
public sealed record YearCase
{
    /// <summary>The most pots.</summary>
    public const int MostPots = 100_000_000;

    private const int DaysInYear = 365;

    // By weed; asked with every way that is priced, and begun anew where weeds or numbers change.
    private ConcurrentDictionary<string, double> NextYear { get; init; } = new(StringComparer.Ordinal);

    /// <summary>The area as read.</summary>
    public required AreaReading Reading { get; init; }

    /// <summary>The first day of the year.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>How many weeks are reckoned.</summary>
    public required int Weeks { get; init; }

    /// <summary>The knowledge.</summary>
    public required KnowledgeBase Knowledge { get; init; }

    /// <summary>The prices.</summary>
    public required PriceBook Prices { get; init; }

    /// <summary>The parameters of the weeding model, for pots of this size.</summary>
    public required WeedingNumbers Numbers
    {
        get;
        init => (field, NextYear) = (value, new(StringComparer.Ordinal));
    }

    /// <summary>The same for pots of the usual size.</summary>
    public required WeedingNumbers UsualSize { get; init; }

    /// <summary>Cost of an hour, US dollars.</summary>
    public required Told<decimal> Wage { get; init; }

    /// <summary>The pots.</summary>
    public required PotBlock Block { get; init; }

    /// <summary>Whole weeks between rounds today.</summary>
    public required Told<int> Interval { get; init; }

    /// <summary>
    /// Share of all seedlings that today's applications stop, 0 to 1; null for what their records say.
    /// </summary>
    public double? TodayControl { get; init; }

    /// <summary>The weeds.</summary>
    public required YearWeeds Weeds
    {
        get;
        init => (field, NextYear) = (value, new(StringComparer.Ordinal));
    }

    /// <summary>Ids of the weeds that were set; empty for those of the area.</summary>
    public required ImmutableArray<string> OnlyWeeds { get; init; }

    /// <summary>The place, as the weeding model needs it.</summary>
    public required WeedSite Site { get; init; }

    /// <summary>What came through earlier applications here.</summary>
    public required ImmutableArray<Escape> Escapes { get; init; }

    /// <summary>Treatments that still act on the first day, each with the weeks since it went on.</summary>
    public required ImmutableArray<(Treatment Treatment, int WeeksAgo)> Acting { get; init; }

    /// <summary>What one use of an action is reckoned for: all these pots.</summary>
    public CostSite Costed => new(Block, Reading.Ground) { IsTold = Reading.IsSizeTold };

    /// <summary>What is taken where nobody says it.</summary>
    public UsualNumbers Usual => Knowledge.Usual;

    /// <summary>The area.</summary>
    public VisitArea Area => Reading.Area;

    /// <summary>Cost of an hour, US dollars.</summary>
    public decimal WageUsd => Wage.Value;

    /// <summary>Pots of the area.</summary>
    public int Pots => Block.Pots.Value;

    /// <summary>Applications of records with a date in the year before, oldest first.</summary>
    public ImmutableArray<PastApplication> PastYear =>
        [
            .. (Area.Past ?? [])
                .Where(past => past.Date is { } date && date <= Day && date > Day.AddDays(-DaysInYear))
                .Where(past => Knowledge.RecordOf(past) is not null)
                .OrderBy(past => past.Date)
                .ThenBy(past => past.Treatment, StringComparer.Ordinal),
        ];

    /// <summary>
    /// The case of an area; refused, with what to do, when no pots stand there, no weed can be reckoned, or region or
    /// wage are not known.
    /// </summary>
    /// <param name="area">The area as read.</param>
    /// <param name="day">The first day of the year.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="prices">The prices.</param>
    /// <param name="terms">What the grower sets.</param>
    public static Outcome<YearCase, string> Of(
        AreaReading area,
        DateOnly day,
        KnowledgeBase knowledge,
        PriceBook prices,
        YearTerms terms
    )
    {
        if (Wrong(terms) is { } wrong)
            return Refused(wrong);
        if (!area.HasPots)
            return Refused("No pots stand here. The sums are about weeds in pots, so there are none for this area.");
        Outcome<WeedingNumbers, string> numbers = WeedingNumbers.Of(knowledge);
        if (!numbers.IsGood)
            return Outcome<YearCase, string>.Bad(numbers.Refusals);
        if (area.EmergenceZone is not { } zone)
            return Refused("The region is not known, so neither is when weeds come up. Answer the question 'region'.");
        Outcome<Told<decimal>, string> wage = Weeding.Wage.Of(area, prices.Find, terms.WageUsd);
        if (!wage.IsGood)
            return Outcome<YearCase, string>.Bad(wage.Refusals);
        var block = PotBlock.Of(area, knowledge.Usual, terms.Pots);
        WeedingNumbers usualSize = terms.Missed is { } missed
            ? numbers.Value.With("missed-percent", missed * 100)
            : numbers.Value;
        WeedingNumbers used = usualSize.For(block, knowledge.Usual);
        var site = new WeedSite(zone, area.Region.HemisphereOrNorth(), area.Moisture, area.Surroundings);
        var weeds = YearWeeds.Of(
            area,
            site,
            used,
            knowledge,
            terms.Weeds,
            MiddleOfFirstSeed,
            FrostWeeks.Of(area, day, terms.Weeks)
        );
        if (weeds.Counted.IsEmpty)
            return Refused(NoWeed(weeds));
        return Outcome<YearCase, string>.Good(
            new YearCase
            {
                Reading = area,
                Day = day,
                Weeks = terms.Weeks,
                Knowledge = knowledge,
                Prices = prices,
                Numbers = used,
                UsualSize = usualSize,
                Wage = wage.Value,
                Block = block,
                Interval = area.Rounds(terms.IntervalWeeks),
                TodayControl = terms.TodayControl,
                Weeds = weeds,
                OnlyWeeds = terms.Weeds,
                Site = site,
                Escapes = EscapesOfArea.Of(area.Area.Past, knowledge),
                Acting = PastControl.Acting(area.Area, day, knowledge),
            }
        );
    }

    /// <summary>The same year with other numbers in the weeding model: its weeds follow them.</summary>
    /// <param name="usualSize">The numbers, for pots of the usual size.</param>
    /// <param name="firstSeed">Weeks to the first seed of each weed.</param>
    internal YearCase With(WeedingNumbers usualSize, Func<Weed, decimal?> firstSeed)
    {
        WeedingNumbers numbers = usualSize.For(Block, Usual);
        return this with
        {
            UsualSize = usualSize,
            Numbers = numbers,
            Weeds = YearWeeds.Of(
                Reading,
                Site,
                numbers,
                Knowledge,
                OnlyWeeds,
                firstSeed,
                FrostWeeks.Of(Reading, Day, Weeks)
            ),
        };
    }

    /// <summary>Hours of pulling that one seedling of a weed makes in the year after.</summary>
    /// <param name="numbers">The numbers it is reckoned with; only under those of this year it is kept.</param>
    /// <param name="traits">A weed of this year, at any pressure: how many come up does not matter to one.</param>
    internal double NextYearHours(WeedingNumbers numbers, WeedTraits traits) =>
        ReferenceEquals(numbers, Numbers)
            ? NextYear.GetOrAdd(traits.Weed, _ => SeedLeft.HoursOfOne(numbers, traits))
            : SeedLeft.HoursOfOne(numbers, traits);

    private static decimal? MiddleOfFirstSeed(Weed weed) => weed.WeeksToFirstSeed?.Middle;

    internal static string? Wrong(YearTerms terms) =>
        terms switch
        {
            { Pots: < 1 or > MostPots } => $"An area has 1 to {MostPots} pots, not {terms.Pots}.",
            { IntervalWeeks: < 1 or > WeedingPlan.LongestInterval } =>
                $"There are 1 to {WeedingPlan.LongestInterval} whole weeks between two rounds, not "
                    + $"{terms.IntervalWeeks}.",
            { Missed: not (null or (>= 0 and <= 1)) } => "The share of weeds missed lies between 0 and 100 percent.",
            { TodayControl: not (null or (>= 0 and <= 1)) } =>
                "The share that is stopped lies between 0 and 100 percent.",
            { Weeks: < 1 or > WeedingPlan.MostWeeks } => $"A plan lasts 1 to {WeedingPlan.MostWeeks} weeks.",
            _ => null,
        };

    private static string NoWeed(YearWeeds weeds) =>
        weeds.LeftOut.IsEmpty
            ? "No weed is noted here. Note those seen, or those you expect (stage 'expected')."
            : $"None of the weeds noted here can be reckoned with: {string.Join(' ', weeds.LeftOut)}";

    private static Outcome<YearCase, string> Refused(string why) => Outcome<YearCase, string>.Bad(why);
}
