using System.Collections.Immutable;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Interview;

/// <summary>
/// The season plan of the area that the interview is at, while wishes are tried: weeks closed, products dropped, rotation
/// loosened. Every change is planned anew at once and compared with the first plan.
/// </summary>
public sealed class SeasonDesk
{
    private const int MostApplications = 12;

    private readonly InterviewSession _session;
    private readonly YearPlan? _first;
    private SeasonSearch? _search;

    /// <summary>Asks the rules for every week and makes the first plan.</summary>
    public SeasonDesk(InterviewSession session)
    {
        _session = session;
        AreaName = session.Area.Name;
        WeedingOutcome<SeasonCase> season = SeasonCase.Of(
            session.Knowledge, session.AdviceOn, session.Visit.Date, session.Area, new SeasonRequest());
        Refusals = season.Refusals;
        if (season.IsGood)
            Plan = _first = Planned(season.Value);
    }

    /// <summary>The name of the area.</summary>
    public string AreaName { get; }

    /// <summary>The plan under the present wishes; null when the area can't be planned.</summary>
    public YearPlan? Plan { get; private set; }

    /// <summary>Why the area can't be planned; empty when it can.</summary>
    public ImmutableArray<string> Refusals { get; }

    /// <summary>The week under the cursor.</summary>
    public int Week { get; private set; }

    /// <summary>The strip; null when the area can't be planned.</summary>
    public Strip? Strip => Plan is { } plan ? Reports.Season.Strip.Of(plan) : null;

    private SeasonRequest Request => Plan!.Case.Request;

    /// <summary>Moves the cursor by weeks.</summary>
    public void Move(int weeks) => Week = Math.Clamp(Week + weeks, 0, SeasonYear.Weeks - 1);

    /// <summary>Closes the week under the cursor, or opens it again.</summary>
    public void ToggleWeek() => Toggle([Week]);

    /// <summary>Closes the month under the cursor, or opens it again.</summary>
    public void ToggleMonth()
    {
        DateOnly day = DayUnderCursor;
        Toggle([.. Enumerable.Range(0, SeasonYear.Weeks).Where(week => Plan!.Case.Year.DayOf(week) is var one && one.Month == day.Month && one.Year == day.Year)]);
    }

    /// <summary>Drops the product that goes on in the week under the cursor; where nothing does, takes back the last one dropped.</summary>
    public void DropOrTakeBack()
    {
        if (Plan?.Plan?.Applications.FirstOrDefault(one => one.Week == Week) is { } one)
            Change(Request with { Dropped = Request.Dropped.Add(one.Name) });
        else if (Plan is not null && !Request.Dropped.IsEmpty)
            Change(Request with { Dropped = Request.Dropped.RemoveAt(Request.Dropped.Length - 1) });
    }

    /// <summary>Goes on to the next rotation: once, twice, any number running.</summary>
    public void NextRotation() => Change(Request with
    {
        RunOfSite = Request.RunOfSite switch
        {
            1 => 2,
            2 => null,
            _ => 1,
        },
    });

    /// <summary>Allows more applications, or fewer.</summary>
    public void AllowMore(int more)
    {
        if (Plan is not { } plan)
            return;
        int most = plan.Case.Problem.Wishes.AtMost ?? MostApplications;
        Change(Request with { AtMost = Math.Clamp(most + more, 0, MostApplications) });
    }

    /// <summary>Takes all wishes back.</summary>
    public void Reset() => Change(new SeasonRequest());

    /// <summary>What can be said of the week under the cursor.</summary>
    public AdviceLine AboutWeek()
    {
        if (Plan is not { } plan)
            return new AdviceLine("", LineTone.Plain);
        string week = $"Week of {Answering.Date(DayUnderCursor)}";
        if (plan.Plan?.Applications.FirstOrDefault(one => one.Week == Week) is { } one)
            return new AdviceLine($"{week}: to put on: {_session.Knowledge.Treatments[one.Name].Name}.", LineTone.Heading);
        if (plan.Closed.FirstOrDefault(span => Week >= span.FromWeek && Week <= span.ToWeek) is { } closed)
            return new AdviceLine($"{week}: nothing may go on, {closed.Because}", LineTone.Warning);
        string open = string.Join(", ", plan.Escapes
            .Where(span => Week >= span.FromWeek && Week <= span.ToWeek)
            .Select(span => _session.Knowledge.Weeds[span.Weed].Name));
        return new AdviceLine(open.Length > 0 ? $"{week}: gets through: {open}." : $"{week}: what comes up is held.", LineTone.Plain);
    }

    /// <summary>The plan in lines that fit: wishes, what goes on, what it costs.</summary>
    public ImmutableArray<AdviceLine> Lines(int width) =>
        Fitted(Plan is { } plan ? SeasonLines.Of(plan, _first!, _session.Knowledge) : Refusals.Select(line => new AdviceLine(line, LineTone.Warning)), width);

    /// <summary>All work by day, all that gets through, what was assumed, in lines that fit.</summary>
    public ImmutableArray<AdviceLine> Details(int width) =>
        Plan is { } plan ? Fitted(SeasonLines.Details(plan, _session.Knowledge), width) : [];

    private DateOnly DayUnderCursor => Plan!.Case.Year.DayOf(Week);

    private static ImmutableArray<AdviceLine> Fitted(IEnumerable<AdviceLine> lines, int width) =>
    [
        .. lines.SelectMany(line => line.Text.Length <= width
            ? [line]
            : Wrapping.Lines(line.Text, width, "", "  ").Select(part => line with { Text = part })),
    ];

    private void Toggle(ImmutableArray<int> weeks)
    {
        if (Plan is null)
            return;
        ImmutableSortedSet<int> closed = Request.Closed;
        Change(Request with { Closed = weeks.All(closed.Contains) ? closed.Except(weeks) : closed.Union(weeks) });
    }

    private void Change(SeasonRequest request)
    {
        if (Plan is { } plan)
            Plan = Planned(plan.Case.With(request, _session.Knowledge));
    }

    private YearPlan Planned(SeasonCase season)
    {
        _search = SeasonSearch.Prepare(season.Problem, _search);
        return SeasonPlanner.Quick(season, _session.Knowledge, _search);
    }
}
