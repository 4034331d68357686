using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Robust;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <summary>
/// The plan of the year of the area that the interview is at, row by row under a cursor. What is asked is priced at
/// once; a search that can run beside it then looks for the best with that wish, and takes its place. Every price is
/// that of the commands.
/// </summary>
public sealed partial class PlanDesk
{
    private readonly InterviewSession _session;
    private readonly Visit _visit;
    private readonly KnowledgeBase _knowledge;
    private readonly AreaCase _found;
    private readonly Dictionary<int, YearCase> _years = [];
    private readonly Stack<(PlanWishes Wishes, Way Shown)> _before = new();
    private readonly Dictionary<string, AreaPlan> _plans = new(StringComparer.Ordinal);
    private readonly Dictionary<int, PlanCase> _open = [];
    private PlanRobustness? _robust;
    private Way? _asked;

    /// <summary>Begins with today's way, before anything is searched.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="wishes">Wishes to begin with; null for none.</param>
    public PlanDesk(InterviewSession session, PlanWishes? wishes = null)
    {
        _session = session;
        _visit = session.Visit;
        _knowledge = session.Knowledge;
        _found = session.Looked;
        Area = session.Area;
        Day = session.Visit.Date;
        Wishes = wishes ?? new PlanWishes();
        Begin();
    }

    /// <summary>The area as it was when the desk was opened.</summary>
    public VisitArea Area { get; }

    /// <summary>The day of the visit.</summary>
    public DateOnly Day { get; }

    /// <summary>The wishes.</summary>
    public PlanWishes Wishes { get; private set; }

    /// <summary>The way on the page, priced; null when the area cannot be planned.</summary>
    public Way? Shown { get; private set; }

    /// <summary>
    /// The plan that the search found under these wishes; null while it is not found, or where there is none.
    /// </summary>
    public AreaPlan? Plan { get; private set; }

    /// <summary>Why the area or the wishes cannot be planned; empty when they can.</summary>
    public ImmutableArray<string> Refusals { get; private set; } = [];

    /// <summary>The search that is still to be made for these wishes; null when none is.</summary>
    public PlanJob? Job { get; private set; }

    /// <summary>The year that the page is reckoned from; null when the area cannot be planned.</summary>
    public YearCase? Year { get; private set; }

    /// <summary>The row under the cursor, from 0.</summary>
    public int At { get; private set; }

    /// <summary>
    /// Whether it still goes by what the interview now holds: no answer has changed, and no label was read since.
    /// </summary>
    public bool IsOf(InterviewSession session) =>
        ReferenceEquals(_visit, session.Visit)
        && ReferenceEquals(Area, session.Area)
        && ReferenceEquals(_knowledge, session.Knowledge);

    /// <summary>The rows of the page; none when the area cannot be planned.</summary>
    public ImmutableArray<PlanRow> Rows { get; private set; } = [];

    /// <summary>Puts the cursor on a row. A number that was being typed there counts.</summary>
    public void PointAt(int row)
    {
        int to = Math.Clamp(row, 0, Math.Max(0, Rows.Length - 1));
        if (to == At)
            return;
        EndTyping();
        At = to;
        ForgetTrouble();
    }

    /// <summary>Takes what a search came to; it is kept for later where the wishes have changed since.</summary>
    public void Take(PlanJob job, PlanAnswer answer)
    {
        if (answer.Open is { } open)
            _open[job.Wishes.Pots ?? 0] = open;
        if (answer.Plan is { } plan)
            _plans[job.Wishes.Key] = plan;
        if (!ReferenceEquals(job, Job))
            return;
        Job = null;
        Refusals = answer.Refusals;
        if (answer.Plan is not null)
            Show(answer.Plan);
    }

    /// <summary>
    /// Whether the plan on the page stands when its figures move: a search to be run on any thread; null while there is
    /// no plan. Its answer goes to <see cref="Take(PlanRobustness)"/>.
    /// </summary>
    public Func<CancellationToken, PlanRobustness>? RobustJob =>
        Plan is { Best: not null } plan && _robust?.Plan != plan
            ? stop => RobustSearch.Of(plan, RobustSearch.UsualSeed, stop: stop)
            : null;

    /// <summary>Takes the answer of <see cref="RobustJob"/>.</summary>
    public void Take(PlanRobustness robust) => _robust = robust;

    private PlanRow? Row => At < Rows.Length ? Rows[At] : null;

    // The case with no wishes but the pots, as far as a search has read it.
    private PlanCase? Open => _open.GetValueOrDefault(Wishes.Pots ?? 0);

    private AreaPlan? First => _plans.GetValueOrDefault(new PlanWishes { Pots = Wishes.Pots }.Key);

    private void Begin()
    {
        Outcome<YearCase, string> year = Read(Wishes.Pots);
        if (!year.IsGood)
        {
            Refusals = year.Refusals;
            return;
        }

        Year = year.Value;
        Outcome<Way, string> today = WayCosting.Of(Year, WaysOfYear.Today(Year));
        Refusals = today.Refusals;
        if (today.IsGood)
            Ask(today.Value);
    }

    private Outcome<YearCase, string> Read(int? pots)
    {
        if (_years.TryGetValue(pots ?? 0, out YearCase? known))
            return Outcome<YearCase, string>.Good(known);
        Outcome<YearCase, string> year = YearCase.Of(
            _session.Advice.Reading,
            Day,
            _knowledge,
            PriceBook.Of(_knowledge),
            new YearTerms(null, pots)
        );
        if (year.IsGood)
            _years[pots ?? 0] = year.Value;
        return year;
    }

    // What was searched before stands at once; else the way that is asked for, until the search comes back.
    private void Ask(Way way)
    {
        Refusals = [];
        _asked = null;
        if (_plans.TryGetValue(Wishes.Key, out AreaPlan? known))
        {
            Job = null;
            Show(known);
            return;
        }

        Plan = null;
        _asked = way;
        Put(way);
        Job = _session.Engine is { } engine ? new PlanJob(engine, _found, Wishes, Open) : null;
    }

    private void Show(AreaPlan plan)
    {
        Plan = plan;
        Put(plan.Best?.Way ?? Shown!);
    }

    private void Put(Way way)
    {
        PlanRow? row = Row;
        Shown = way;
        Rows = [.. RowsOf(way)];
        // The cursor stays on what it was on, where that is still there.
        int same = row is null ? -1 : Rows.IndexOf(row);
        At = Math.Clamp(same >= 0 ? same : At, 0, Rows.Length - 1);
    }

    private IEnumerable<PlanRow> RowsOf(Way way) =>
        [
            new PlanRow(PlanRowKind.Rounds, PartOfYear.Spring),
            new PlanRow(PlanRowKind.Rounds, PartOfYear.Summer),
            new PlanRow(PlanRowKind.Rounds, PartOfYear.AutumnAndWinter),
            new PlanRow(PlanRowKind.Measure),
            .. way
                .Plan.Parts.Where(part => part.Action is Treatment)
                .SelectMany(part =>
                    part.Weeks.Select(week => new PlanRow(PlanRowKind.Use, Product: part.Action.Id, Week: week))
                )
                .OrderBy(row => row.Week)
                .ThenBy(row => row.Product, StringComparer.Ordinal),
            .. Wishes.Closed.Select(week => new PlanRow(PlanRowKind.Closed, Week: week)),
            .. Wishes.Dropped.Select(id => new PlanRow(PlanRowKind.Dropped, Product: id)),
            new PlanRow(PlanRowKind.Hours),
            new PlanRow(PlanRowKind.Budget),
            new PlanRow(PlanRowKind.Pots),
        ];
}
