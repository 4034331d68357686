using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview;

/// <summary>
/// What weeds cost in the area that the interview is at, and what each way out costs, by numbers that the grower moves. Every
/// change is reckoned at once; while something is wrong with a number the last good figures stay.
/// </summary>
public sealed class CostDesk
{
    private const string Interval = "weeding-interval", LabourRate = "labour-rate";
    private const decimal DefaultWage = 18;

    private readonly InterviewSession _session;
    private WaysCompared? _ways;
    private IntervalComparison? _intervals;

    /// <summary>Begins with the numbers of the visit.</summary>
    public CostDesk(InterviewSession session)
    {
        _session = session;
        AreaName = session.Area.Name;
        decimal missed = session.Knowledge.Weeding.GetValueOrDefault("missed-percent")?.Value ?? 0;
        Pots = new CostField("Pots", "", 1, 100_000_000, 1000, 50_000, isWhole: true, MoneyCase.UsualPots);
        Wage = new CostField("An hour costs", "USD", 0, 10_000, 1, 40, isWhole: false, WageOf(session));
        Rounds = new CostField("Weeks between rounds", "weeks", 1, 52, 1, 12, isWhole: true, IntervalOf(session.Area));
        Missed = new CostField("A round misses", "%", 0, 100, 5, 50, isWhole: false, missed);
        Stopped = new CostField("Your programme stops", "%", 0, 100, 10, 100, isWhole: false, 0);
        Fields = [Pots, Wage, Rounds, Missed, Stopped];
        Work();
    }

    /// <summary>The name of the area.</summary>
    public string AreaName { get; }

    /// <summary>How many pots stand in the area.</summary>
    public CostField Pots { get; }

    /// <summary>What an hour costs.</summary>
    public CostField Wage { get; }

    /// <summary>Weeks between weeding rounds at present.</summary>
    public CostField Rounds { get; }

    /// <summary>Share of the weeds that a round passes over.</summary>
    public CostField Missed { get; }

    /// <summary>Share of the seedlings that today's programme stops, for the rounds compared.</summary>
    public CostField Stopped { get; }

    /// <summary>All fields, in order.</summary>
    public ImmutableArray<CostField> Fields { get; }

    /// <summary>Why nothing can be reckoned; empty when it can.</summary>
    public ImmutableArray<string> Refusals { get; private set; } = [];

    /// <summary>The ways, cheapest first; empty when they can't be compared.</summary>
    public ImmutableArray<Way> Ways => _ways?.Ways ?? [];

    /// <summary>Types a number.</summary>
    public void Type(CostField field, string text)
    {
        if (field.Text != text && field.Type(text))
            Work();
    }

    /// <summary>Steps a number.</summary>
    public void Step(CostField field, int steps)
    {
        if (field.Step(steps))
            Work();
    }

    /// <summary>Rounds and ways in lines that fit; a line of a way carries its id.</summary>
    public ImmutableArray<AdviceLine> Lines(int width) =>
    [
        .. Content().SelectMany(line => line.Text.Length <= width
            ? [line]
            : Wrapping.Lines(line.Text, width, "", "    ").Select(part => line with { Text = part })),
    ];

    /// <summary>One way against today's, line by line.</summary>
    public ImmutableArray<AdviceLine> Against(string id, int width)
    {
        if (_ways is not { } ways || ways.Find(id) is not { IsGood: true, Value: { } way })
            return [];
        string text = MoneyText.Against(ways, WayAgainst.Of(ways, way), Math.Clamp(width, Page.Narrowest, Page.Widest));
        return
        [
            .. text.TrimEnd('\n').Split('\n').Select(line => new AdviceLine(
                line, line.Length > 0 && char.IsLetter(line[0]) && !line.Any(char.IsLower) ? LineTone.Heading : LineTone.Plain)),
        ];
    }

    private IEnumerable<AdviceLine> Content()
    {
        foreach (string refusal in Refusals)
            yield return new AdviceLine(refusal, LineTone.Warning);
        if (_intervals is { } intervals)
        {
            foreach (AdviceLine line in CostLines.Rounds(intervals, Pots.Value, Rounds.Value))
                yield return line;
        }

        if (_ways is { } ways)
        {
            foreach (AdviceLine line in CostLines.Ways(ways))
                yield return line;
        }

        yield return new AdviceLine("Prices are invented until you give your own (money --prices FILE). The label is the law.", LineTone.Quiet);
    }

    private void Work()
    {
        WeedingOutcome<AreaWeeding> weeding = AreaWeeding.Of(
            _session.Area, _session.Visit.Date, _session.Knowledge, new WeedingWishes
            {
                WageUsdPerHour = (double)Wage.Value,
                Missed = (double)Missed.Value / 100,
                Control = (double)Stopped.Value / 100,
            });
        (_intervals, _ways, Refusals) = (null, null, weeding.Refusals);
        if (!weeding.IsGood || WeedingNumbers.Of(_session.Knowledge) is not { IsGood: true, Value: { } numbers })
            return;
        int now = (int)Rounds.Value;
        WeedingOutcome<WeedingPlan> plan = weeding.Value.Setup.Plan(numbers, now);
        WeedingOutcome<IntervalComparison> compared = plan.IsGood
            ? IntervalComparison.Of(plan.Value, IntervalComparison.UsualIntervals.Append(now), (double)Wage.Value)
            : WeedingOutcome<IntervalComparison>.Bad(plan.Refusals);
        _intervals = compared.Value;
        Refusals = compared.Refusals;
        CompareWays(numbers.With("missed-percent", (double)Missed.Value));
    }

    private void CompareWays(WeedingNumbers numbers)
    {
        VisitArea area = _session.Area with { Answers = _session.Area.Answers.SetItem(Interval, new Answer.Number(Rounds.Value)) };
        AreaAdvice advice = _session.Advice with { Area = area };
        WeedingOutcome<MoneyCase> money = MoneyCase.Of(
            advice, _session.Visit.Date, _session.Knowledge, PriceBook.Of(_session.Knowledge), new MoneyTerms(Wage.Value, (int)Pots.Value));
        WeedingOutcome<WaysCompared> ways = money.IsGood
            ? WaysCompared.Of(money.Value with { Numbers = numbers, WageUsd = Wage.Value })
            : WeedingOutcome<WaysCompared>.Bad(money.Refusals);
        _ways = ways.Value;
        Refusals = [.. Refusals, .. ways.Refusals];
    }

    private static decimal WageOf(InterviewSession session) =>
        session.Area.Answers.GetValueOrDefault(LabourRate) is Answer.Number rate
            ? rate.Value
            : session.Knowledge.Prices.GetValueOrDefault(LabourRate)?.Value ?? DefaultWage;

    private static decimal IntervalOf(VisitArea area) => area.Answers.GetValueOrDefault(Interval) is Answer.Number { Value: > 0 and var weeks }
        ? Math.Clamp(Math.Round(weeks, MidpointRounding.AwayFromZero), 1, 52)
        : MoneyCase.UsualInterval;
}
