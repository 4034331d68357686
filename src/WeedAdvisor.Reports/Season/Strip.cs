using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Reports.Season;

/// <summary>How well a week is covered against a weed.</summary>
public enum Cover
{
    /// <summary>The weed does not come up that week.</summary>
    NotUp,

    /// <summary>It comes up and less than half of it is held.</summary>
    Open,

    /// <summary>Half or more is held, but not four fifths.</summary>
    Partly,

    /// <summary>Four fifths or more are held.</summary>
    Held,
}

/// <summary>The year as a strip: weeks across, weeds down. Text, pictures and JSON are all drawn from it.</summary>
/// <param name="Months">Where each month begins: the week and the month's short name.</param>
/// <param name="Marks">By week, the letter of the application that goes on in it; null for the others.</param>
/// <param name="Letters">The letter of each application, in the order of the plan.</param>
/// <param name="Shut">By week, whether no preventive may go on.</param>
/// <param name="Rows">The weeds.</param>
public sealed record Strip(
    ImmutableArray<(int Week, string Name)> Months,
    ImmutableArray<char?> Marks,
    ImmutableArray<char> Letters,
    ImmutableArray<bool> Shut,
    ImmutableArray<StripRow> Rows
)
{
    /// <summary>By week, whether a weeding round is walked; empty where the strip does not show them.</summary>
    public ImmutableArray<bool> Rounds { get; init; } = [];

    private const double Half = 0.5,
        FourFifths = 0.8;

    /// <summary>The strip of a plan; without applications when no plan was found.</summary>
    public static Strip Of(YearPlan plan)
    {
        return Of(
            plan.Case.Year,
            [.. (plan.Plan?.Applications ?? []).Select(use => use.Week)],
            plan.Closed,
            plan.Case.Weeds.Select((weed, i) => Row(weed.Weed, weed.Emergence, plan.Plan?.Control[i]))
        );
    }

    /// <summary>The strip of a whole year's plan: what covers stop is held too, and the rounds are shown.</summary>
    public static Strip Of(AreaPlan plan, PlannedWay best)
    {
        bool[] rounds = new bool[SeasonYear.Weeks];
        foreach (WeedingRound round in best.Way.Season.Rounds)
            rounds[round.Week] = true;
        return Of(
            new SeasonYear(plan.Case.Year.Day),
            [.. best.Uses.Select(use => use.Week)],
            best.Closed,
            WeedWeeks.Of(plan.Case.Year, best.Way.Plan).Select(weed => Row(weed.Weed, weed.Emergence, weed.Held))
        ) with
        {
            Rounds = [.. rounds],
        };
    }

    private static Strip Of(
        SeasonYear year,
        ImmutableArray<int> weeks,
        IEnumerable<ClosedSpan> closed,
        IEnumerable<StripRow> rows
    )
    {
        ImmutableArray<char> letters = [.. weeks.Select((_, i) => (char)('A' + i))];
        char?[] marks = new char?[SeasonYear.Weeks];
        for (int i = 0; i < letters.Length; i++)
            marks[weeks[i]] = letters[i];
        bool[] shut = new bool[SeasonYear.Weeks];
        foreach (ClosedSpan span in closed)
            Array.Fill(shut, true, span.FromWeek, span.ToWeek - span.FromWeek + 1);
        return new Strip([.. MonthStarts(year)], [.. marks], letters, [.. shut], [.. rows]);
    }

    private static StripRow Row(Weed weed, ImmutableArray<double> emergence, ImmutableArray<double>? control) =>
        new(
            weed.Id,
            weed.Name,
            [
                .. Enumerable
                    .Range(0, SeasonYear.Weeks)
                    .Select(week => emergence[week] == 0 ? Cover.NotUp : Grade(control is { } held ? held[week] : 0)),
            ]
        );

    private static Cover Grade(double control) =>
        control switch
        {
            >= FourFifths => Cover.Held,
            >= Half => Cover.Partly,
            _ => Cover.Open,
        };

    private static IEnumerable<(int Week, string Name)> MonthStarts(SeasonYear year)
    {
        int month = 0;
        for (int week = 0; week < SeasonYear.Weeks; week++)
        {
            DateOnly day = year.DayOf(week);
            if (day.Month == month)
                continue;
            month = day.Month;
            yield return (week, CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month));
        }
    }
}

/// <summary>One weed of the strip.</summary>
/// <param name="Weed">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Weeks">How well each week is covered.</param>
public sealed record StripRow(string Weed, string Name, ImmutableArray<Cover> Weeks);
