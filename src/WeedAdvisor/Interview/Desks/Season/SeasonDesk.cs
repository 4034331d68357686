using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Interview.Desks.Season;

/// <summary>
/// The season plan of the area that the interview is at, while wishes are tried: weeks closed, products dropped or
/// kept, rotation loosened. Every change is planned anew at once and compared with the first plan.
/// </summary>
public sealed partial class SeasonDesk
{
    /// <summary>
    /// The most products with a wish of their own. What clashes is found by trying sets of wishes: many more would be
    /// felt.
    /// </summary>
    internal const int MostProducts = 12;

    private readonly InterviewSession _session;
    private readonly SeasonRequest _wanted;
    private readonly Visit _visit;
    private readonly KnowledgeBase _knowledge;
    private readonly Stack<SeasonRequest> _before = new();
    private SeasonCase? _case;
    private YearPlan? _first;

    /// <summary>Begins with a year that is not read yet.</summary>
    /// <param name="session">The interview; the plan is for its area and day.</param>
    /// <param name="wanted">Wishes to begin with; null for none.</param>
    public SeasonDesk(InterviewSession session, SeasonRequest? wanted = null)
    {
        _session = session;
        _wanted = wanted ?? new SeasonRequest();
        Area = session.Area;
        Day = session.Visit.Date;
        _visit = session.Visit;
        _knowledge = session.Knowledge;
    }

    /// <summary>The area as it was when the desk was opened.</summary>
    public VisitArea Area { get; }

    /// <summary>The day of the visit.</summary>
    public DateOnly Day { get; }

    /// <summary>The name of the area.</summary>
    public string AreaName => Area.Name;

    /// <summary>
    /// Whether it still goes by what the interview now holds: no answer has changed, in this area or in one that may
    /// share its house, and no label was read since.
    /// </summary>
    public bool IsOf(InterviewSession session) =>
        ReferenceEquals(_visit, session.Visit)
        && ReferenceEquals(Area, session.Area)
        && ReferenceEquals(_knowledge, session.Knowledge);

    /// <summary>Whether the year is read; until then there is neither a plan nor a refusal.</summary>
    public bool IsRead { get; private set; }

    /// <summary>The plan under the present wishes; null when it is not read or the area can't be planned.</summary>
    public YearPlan? Plan { get; private set; }

    /// <summary>Why the area can't be planned; empty when it can.</summary>
    public ImmutableArray<string> Refusals { get; private set; } = [];

    /// <summary>The wishes as they now stand.</summary>
    public SeasonRequest Wishes => Plan?.Case.Request ?? _wanted;

    /// <summary>
    /// By how much the plan is dearer than the first, US dollars for 1000 pots; null when one of them does not exist.
    /// </summary>
    public decimal? DearerUsd => Plan?.Way?.Usd - _first?.Way?.Usd;

    /// <summary>The week under the cursor, 0 to 51.</summary>
    public int Week { get; private set; }

    /// <summary>The strip; null when the area can't be planned.</summary>
    public Strip? Strip { get; private set; }

    /// <summary>
    /// Asks the rules for every week and makes the first plan. Takes up to half a second; once read it stays.
    /// </summary>
    public void Read()
    {
        if (IsRead)
            return;
        IsRead = true;
        Outcome<SeasonCase, string> season = SeasonCase.Of(
            _session.Knowledge,
            _session.AdviceOn,
            AreaCase.Of(_session.Visit, _session.AreaIndex),
            new SeasonRequest()
        );
        Refusals = season.Refusals;
        if (!season.IsGood)
            return;
        _case = season.Value;
        _first = Planned(_case);
        Show(_first);
        Week = _first.Plan?.Applications.FirstOrDefault()?.Week ?? 0;

        // What an answer has barred since cannot be asked for any more.
        HashSet<string> can = [.. season.Value.Treatments.Select(treatment => treatment.Id)];
        Ask(_wanted with { MustUse = [.. _wanted.MustUse.Where(can.Contains)] });
    }

    /// <summary>Whether a week is closed by a wish.</summary>
    public bool IsClosed(int week) => Wishes.Closed.Contains(week);

    /// <summary>Moves the cursor by weeks.</summary>
    public void Move(int weeks)
    {
        Week = Math.Clamp(Week + weeks, 0, SeasonYear.Weeks - 1);
        ForgetTrouble();
    }

    /// <summary>Moves the cursor to the next application, or to the one before; it stays where there is none.</summary>
    /// <param name="direction">1 for the next, -1 for the one before.</param>
    public void MoveToApplication(int direction)
    {
        IEnumerable<int> weeks = (Plan?.Plan?.Applications ?? []).Select(one => one.Week);
        Week =
            direction > 0
                ? weeks.Where(week => week > Week).DefaultIfEmpty(Week).First()
                : weeks.Where(week => week < Week).DefaultIfEmpty(Week).Last();
        ForgetTrouble();
    }

    private DateOnly DayUnderCursor => Plan!.Case.Year.DayOf(Week);

    private SeasonApplication? Use => Plan?.Plan?.Applications.FirstOrDefault(one => one.Week == Week);

    private void Ask(SeasonRequest wishes) =>
        Show(IsFree(wishes) ? _first! : Planned(_case!.With(wishes, _session.Knowledge)));

    private void Show(YearPlan plan)
    {
        Plan = plan;
        Strip = Strip.Of(plan);
    }

    // Always from the year as it was read, and never near an earlier search: the same wishes give the same plan. Where
    // the first plan still serves and is no dearer, it stays.
    private YearPlan Planned(SeasonCase season)
    {
        YearPlan plan = SeasonPlanner.Quick(season, _session.Knowledge, SeasonSearch.Prepare(season.Problem));
        if (
            _first is not { Plan: { } first, Way: { } way }
            || way.Usd >= plan.Way?.Usd
            || !SeasonSearch.Allows(season.Problem, first)
        )
            return plan;
        return plan with
        {
            Plan = first,
            Way = way,
            Uses = _first.Uses,
            Work = _first.Work,
            Escapes = _first.Escapes,
            ClashingWishes = [],
        };
    }
}
