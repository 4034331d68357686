using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview.Desks.Costs;

/// <summary>
/// What an area costs, as numbers are typed or moved. A wrong number is told beside its field, and the last good result
/// stays.
/// </summary>
public sealed class CostDesk : IFieldDesk
{
    /// <summary>The one line that says what the prices are.</summary>
    public const string Invented = "Every price here is invented. For your own: weedadvisor money --prices FILE";

    private readonly InterviewSession _session;
    private readonly PriceBook _prices;
    private readonly Dictionary<CostField, string> _typed = [];
    private Lazy<CostSum> _sum = null!;

    /// <summary>Begins with the numbers of the visit.</summary>
    /// <param name="session">The interview; its area is reckoned.</param>
    public CostDesk(InterviewSession session)
    {
        _session = session;
        _prices = PriceBook.Of(session.Knowledge);
        Renew();
    }

    /// <summary>Whether a number that is typed is wrong, so that the result is that of the last good ones.</summary>
    public bool IsStale => CostField.All.Any(one => ProblemOf(one) is not null);

    /// <summary>The ways, cheapest first; null when they cannot be reckoned.</summary>
    public WaysCompared? Ways => _sum.Value.Ways;

    /// <summary>The rounds of weeding; null when they cannot be reckoned.</summary>
    public IntervalComparison? Intervals => _sum.Value.Intervals;

    /// <summary>What is typed in a field.</summary>
    public string TextOf(CostField field) => _typed.GetValueOrDefault(field, "");

    /// <summary>Types in a field.</summary>
    public void Type(CostField field, string text)
    {
        if (TextOf(field) == text)
            return;
        _typed[field] = text;
        Renew();
    }

    /// <summary>
    /// Moves a field to its next stop; from the number of the visit when nothing, or nothing good, is typed.
    /// </summary>
    /// <param name="field">The field.</param>
    /// <param name="direction">1 for more, -1 for less.</param>
    public void Move(CostField field, int direction)
    {
        // Nobody has said what is stopped: the first step says that nothing is.
        decimal? from = Given(field) ?? Usual(field).Value;
        Type(field, CostField.Write(from is { } value ? field.Next(value, direction) : field.Low));
    }

    /// <summary>
    /// Reckons anew, when the result is next looked at, the area as it is now: the interview may have gone on. Nothing
    /// happens while a number is wrong.
    /// </summary>
    public void Renew()
    {
        if (_sum is not null && IsStale)
            return;
        (AreaAdvice advice, DateOnly day, YearTerms terms) = (_session.Advice, _session.Visit.Date, Terms());
        _sum = new Lazy<CostSum>(() => CostSum.Of(advice, day, _session.Knowledge, _prices, terms));
    }

    /// <summary>What is wrong with what is typed in a field; null when nothing is.</summary>
    public string? ProblemOf(CostField field) =>
        IsEmpty(field) || Given(field) is not null ? null : $"{field.Expected}, not '{TextOf(field).Trim()}'";

    /// <summary>
    /// What stands beside a field: what is wrong with it; else its bar, and the number counted with when none is typed.
    /// Where there is no room for both, the number stays.
    /// </summary>
    public AdviceLine Beside(CostField field, int columns = int.MaxValue)
    {
        if (ProblemOf(field) is { } problem)
            return new AdviceLine(problem, LineTone.Warning);
        (decimal? value, string from) = Usual(field);
        string counted =
            !IsEmpty(field) ? ""
            : value is { } number ? $"{Figures.Plain(number)}, {from}"
            : from;
        string both = $"{field.Bar(Given(field) ?? value)} {counted}".TrimEnd();
        return new AdviceLine(both.Length <= columns ? both : counted, LineTone.Quiet);
    }

    /// <summary>What is told of the field that the keys are in.</summary>
    public AdviceLine About(CostField field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine(
                $"{field.Label}: {problem}. Below stands the result of the last good numbers.",
                LineTone.Warning
            )
            : new AdviceLine($"{field.Help}", LineTone.Quiet);

    /// <summary>The result as a page; a line of a way names it as its action.</summary>
    public IEnumerable<Block> Page() => _session.InUnits(CostPage.Of(_sum.Value));

    /// <summary>A way held against today's, with the working and what moves it, as a page.</summary>
    /// <param name="way">Id of a way of <see cref="Ways"/>.</param>
    /// <exception cref="ArgumentException">There is no such way.</exception>
    public IEnumerable<Block> Against(string way)
    {
        Way? held = Ways?.Ways.FirstOrDefault(one => one.Plan.Id == way);
        if (held is null)
            throw new ArgumentException($"there is no way '{way}'", nameof(way));
        if (held == Ways!.Today)
            return _session.InUnits(CostPage.Items(held));
        return _session.InUnits(AgainstBlocks.Of(Ways, WayAgainst.Of(Ways, held)));
    }

    ImmutableArray<string> IFieldDesk.Fields => [.. CostField.All.Select(one => one.Label)];

    string IFieldDesk.TextOf(int field) => TextOf(CostField.All[field]);

    void IFieldDesk.Type(int field, string text) => Type(CostField.All[field], text);

    string? IFieldDesk.ProblemOf(int field) => ProblemOf(CostField.All[field]);

    AdviceLine IFieldDesk.Beside(int field) => Beside(CostField.All[field]);

    AdviceLine IFieldDesk.Beside(int field, int columns) => Beside(CostField.All[field], columns);

    AdviceLine IFieldDesk.About(int field) => About(CostField.All[field]);

    private bool IsEmpty(CostField field) => string.IsNullOrWhiteSpace(TextOf(field));

    private decimal? Given(CostField field) => field.Read(TextOf(field));

    private YearTerms Terms() =>
        new(Given(CostField.Wage), (int?)Given(CostField.Pots))
        {
            IntervalWeeks = (int?)Given(CostField.Interval),
            Missed = (double?)Given(CostField.Missed) / 100,
            TodayControl = (double?)Given(CostField.Control) / 100,
        };

    /// <summary>What counts when nothing is typed, and where it comes from.</summary>
    private (decimal? Value, string From) Usual(CostField field) =>
        field == CostField.Pots ? Said(Reading.Pots(null))
        : field == CostField.Wage ? Said(Reading.Wage(null, _prices.Find))
        : field == CostField.Interval ? Said(Reading.Rounds(null))
        : field == CostField.Missed
            ? WeedingNumbers.Of(_session.Knowledge).Value is { } numbers ? ((decimal)(numbers.Missed * 100), "usual")
                : (null, "not known")
        : (null, "as recorded");

    private AreaReading Reading => _session.Advice.Reading;

    private static (decimal? Value, string From) Said(Told<decimal>? told) =>
        told is null ? (null, "not known") : (told.Value, Words(told.From));

    private static (decimal? Value, string From) Said(Told<int>? told) =>
        told is null ? (null, "not known") : (told.Value, Words(told.From));

    private static string Words(Origin from) =>
        from switch
        {
            Origin.Answer => "your answer",
            Origin.PriceList => "price list",
            Origin.Set => "as you set it",
            _ => "assumed",
        };
}
