using System.Collections.Concurrent;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <content>With few hours a lump of weeds that stands is cleaned part by part.</content>
public sealed partial class PlanSearch
{
    /// <summary>
    /// The most weeks over which a first round is spread: weeds that stand longer than a season before anybody pulls
    /// them are no plan.
    /// </summary>
    internal const int MostSpread = 12;

    // The rounds of the first weeks and what is laid tell how long the first round takes.
    private readonly ConcurrentDictionary<(string Rounds, string Measures), int> _spread = [];

    private PricedChoice Bare(StandingChoice choice) =>
        _plan.Request.HoursPerWeek is { } hours && hours > 0
            ? Whole(choice with { SpreadWeeks = WeeksOf(choice, hours) })
            : Whole(choice);

    private int WeeksOf(StandingChoice choice, decimal hours)
    {
        YearRounds rounds = choice.Rounds;
        string first = string.Concat(
            Enumerable.Range(0, MostSpread).Select(week => $"{rounds.In(YearWeeding.PartOf(Year, week))} ")
        );
        return _spread.GetOrAdd((first, string.Join(' ', choice.Measures.Select(measure => measure.Id))), _ =>
            WeeksWithin(choice, hours)
        );
    }

    // Over as few weeks as the hours allow; where none do, over those that come nearest. What comes after those weeks
    // makes no difference to them.
    private int WeeksWithin(StandingChoice choice, decimal hours)
    {
        PricedChoice whole = Whole(choice);
        decimal least = Hours(whole, 1);
        if (least <= hours || whole.Bare.Season.Rounds is not [{ Week: 0 }, ..])
            return 1;
        int nearest = 1;
        for (int weeks = (int)Math.Clamp(Math.Ceiling(least / hours), 2, MostSpread); weeks <= MostSpread; weeks++)
        {
            decimal most = Hours(Whole(choice with { SpreadWeeks = weeks }), weeks);
            if (most < least)
                (nearest, least) = (weeks, most);
            if (most <= hours)
                break;
        }

        return nearest;
    }

    // The most hours of a week in which the first round is not over.
    private decimal Hours(PricedChoice choice, int weeks) =>
        choice.Bare.HoursByWeek().Take(weeks).Max() * Year.Pots / Thousand;
}
