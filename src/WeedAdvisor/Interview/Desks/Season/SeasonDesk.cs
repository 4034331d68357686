using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
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
    public bool IsOf(InterviewSession session) => ReferenceEquals(_visit, session.Visit)
        && ReferenceEquals(Area, session.Area) && ReferenceEquals(_knowledge, session.Knowledge);

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
    public decimal? DearerUsd => Plan?.Plan?.Total - _first?.Plan?.Total;

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
        Week = direction > 0
            ? weeks.Where(week => week > Week).DefaultIfEmpty(Week).First()
            : weeks.Where(week => week < Week).DefaultIfEmpty(Week).Last();
        ForgetTrouble();
    }

    /// <summary>Closes the week under the cursor, or opens it again.</summary>
    public void ToggleWeek()
    {
        if (Plan is not null)
            Toggle([Week], $"Week of {Answering.Date(DayUnderCursor)}");
    }

    /// <summary>Closes the month under the cursor; opens it when all of it is closed.</summary>
    public void ToggleMonth()
    {
        if (Plan is not { } plan)
            return;
        DateOnly day = DayUnderCursor;
        Toggle(
            [
                .. Enumerable.Range(0, SeasonYear.Weeks)
                    .Where(week =>
                        plan.Case.Year.DayOf(week) is var one && one.Month == day.Month && one.Year == day.Year
                    ),
            ],
            day.ToString("MMMM yyyy", CultureInfo.InvariantCulture));
    }

    /// <summary>
    /// Drops the product that goes on in the week under the cursor; where nothing does, takes back the last one
    /// dropped.
    /// </summary>
    public void DropOrTakeBack()
    {
        SeasonRequest wishes = Wishes;
        if (Use is { } use)
        {
            Product(
                wishes with { Dropped = wishes.Dropped.Add(use.Name), MustUse = wishes.MustUse.Remove(use.Name) },
                $"{Name(use.Name)} dropped");
        }
        else if (wishes.Dropped is [.., var last])
        {
            Change(wishes with { Dropped = wishes.Dropped.Remove(last) }, $"{Name(last)} may go on again");
        }
        else
        {
            Refuse("Nothing goes on in this week: go to an application with Up or Down.");
        }
    }

    /// <summary>
    /// Asks that the product of the week under the cursor goes on some time, or lets it go; where nothing goes on, lets
    /// go the last one asked for.
    /// </summary>
    public void KeepOrLetGo()
    {
        SeasonRequest wishes = Wishes;
        if (Use is { } use && !wishes.MustUse.Contains(use.Name))
            Product(wishes with { MustUse = wishes.MustUse.Add(use.Name) }, $"{Name(use.Name)} must go on");
        else if ((Use?.Name ?? wishes.MustUse.LastOrDefault()) is { } kept)
            Change(wishes with { MustUse = wishes.MustUse.Remove(kept) }, $"{Name(kept)} need not go on");
        else
            Refuse("Nothing goes on in this week: go to an application with Up or Down.");
    }

    /// <summary>Goes on to the next rotation: once, twice, any number running.</summary>
    public void NextRotation() => Change(
        Wishes with
        {
            RunOfSite = Wishes.RunOfSite switch
            {
                1 => 2,
                2 => null,
                _ => 1,
            },
        },
        "Rotation changed");

    /// <summary>Allows one application more, or one fewer than the plan now has.</summary>
    /// <param name="more">1 for more, -1 for fewer.</param>
    public void AllowMore(int more)
    {
        if (Plan is not { } plan)
            return;
        int most = plan.Case.Problem.Wishes.AtMost ?? SeasonYear.Weeks;

        // A limit above what the plan has changes nothing: fewer is counted from the plan.
        int from = more < 0 ? Math.Min(most, plan.Plan?.Applications.Length ?? most) : most;
        int now = Math.Clamp(from + more, 0, SeasonYear.Weeks);
        if (now != most)
            Change(Wishes with { AtMost = now }, $"At most {SeasonLines.Applications(now)}");
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo()
    {
        if (_before.TryPop(out SeasonRequest? before))
        {
            Ask(before);
            Tell("Last change taken back");
        }
        else
        {
            Refuse("There is no change to take back.");
        }
    }

    /// <summary>Takes all wishes back.</summary>
    public void Reset()
    {
        if (!IsFree(Wishes))
            Change(new SeasonRequest(), "All wishes taken back");
    }

    private DateOnly DayUnderCursor => Plan!.Case.Year.DayOf(Week);

    private SeasonApplication? Use => Plan?.Plan?.Applications.FirstOrDefault(one => one.Week == Week);

    private static bool IsFree(SeasonRequest wishes) =>
        wishes.Closed.IsEmpty
        && wishes.Dropped.IsEmpty
        && wishes.MustUse.IsEmpty
        && wishes.AtMost is null
        && wishes.RunOfSite == 1;

    private void Toggle(ImmutableArray<int> weeks, string what)
    {
        ImmutableSortedSet<int> closed = Wishes.Closed;
        bool opens = weeks.All(closed.Contains);
        Change(
            Wishes with { Closed = opens ? closed.Except(weeks) : closed.Union(weeks) },
            $"{what} {(opens ? "open again" : "closed")}");
    }

    private void Product(SeasonRequest wishes, string told)
    {
        if (wishes.Dropped.Length + wishes.MustUse.Length > MostProducts)
            Refuse(
                FormattableString.Invariant($"No more than {MostProducts} products can be dropped or kept at once.")
            );
        else
            Change(wishes, told);
    }

    private void Change(SeasonRequest wishes, string told)
    {
        if (Plan is null)
            return;
        _before.Push(Wishes);
        Ask(wishes);
        Tell(told);
    }

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
            _first is not { Plan: { } first }
            || first.Total >= plan.Plan?.Total
            || !SeasonSearch.Allows(season.Problem, first)
        )
            return plan;
        return plan with
        {
            Plan = first,
            MoreToSaveUsd = plan.Plan is { } other
                ? Math.Max(0, plan.MoreToSaveUsd - (other.Total - first.Total))
                : _first.MoreToSaveUsd,
            Uses = _first.Uses,
            Work = _first.Work,
            Escapes = _first.Escapes,
            ClashingWishes = [],
        };
    }
}
