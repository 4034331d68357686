using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Reports.Rates;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Interview.Desks.Rates;

/// <summary>A rate sum being entered: what is typed in each field, and what follows from it at once.</summary>
public sealed class RateDesk : IFormDesk
{
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _lookedFor = new(StringComparer.Ordinal);
    private RateSite _site;
    private Outcome<RateAnswer, RateProblem> _outcome;

    /// <summary>Begins with nothing entered.</summary>
    /// <param name="form">The form.</param>
    /// <param name="site">The knowledge and the area.</param>
    public RateDesk(RateForm form, RateSite site)
    {
        Form = form;
        _site = site;
        _outcome = form.Run(_typed, site);
    }

    /// <summary>The form.</summary>
    public RateForm Form { get; }

    /// <summary>The answer; null while something is missing or wrong.</summary>
    public RateAnswer? Answer => _outcome.Value;

    /// <summary>Whether anything is typed.</summary>
    public bool HasBegun => _typed.Values.Any(text => !string.IsNullOrWhiteSpace(text));

    /// <summary>What is typed in a field.</summary>
    public string TextOf(RateField field) => _typed.GetValueOrDefault(field.Id, "");

    /// <summary>Types in a field.</summary>
    public void Type(RateField field, string text)
    {
        if (TextOf(field) == text)
            return;
        _lookedFor.Remove(field.Id);
        Put(field, text);
    }

    /// <summary>Does the sum anew in another area, or on another day.</summary>
    public void MoveTo(RateSite site)
    {
        _site = site;
        Work();
    }

    /// <summary>Empties every field.</summary>
    public void Clear()
    {
        _typed.Clear();
        _lookedFor.Clear();
        Work();
    }

    /// <summary>Enters the example of the form.</summary>
    public void FillIn()
    {
        _typed.Clear();
        _lookedFor.Clear();
        foreach (KeyValuePair<string, string> entry in Form.Example)
            _typed[entry.Key] = entry.Value;
        Work();
    }

    /// <summary>
    /// What is wrong with what is typed in a field; null when nothing is, or when nothing is typed yet.
    /// </summary>
    public string? ProblemOf(RateField field) =>
        IsMissing(field) ? null : _outcome.Refusals.FirstOrDefault(problem => problem.Field == field.Id)?.Text;

    /// <summary>What stands beside a field: what is wrong with it, else what may be written.</summary>
    public AdviceLine Beside(RateField field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine(problem, LineTone.Warning)
            : new AdviceLine(
                FieldText.LeftOut(field) is { } leftOut
                    ? $"{leftOut}; {FieldText.Expected(field)}"
                    : FieldText.Expected(field),
                LineTone.Quiet
            );

    /// <summary>What is told of the field that is being filled in.</summary>
    public AdviceLine About(RateField field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine($"{problem}.", LineTone.Warning)
            : new AdviceLine($"{field.Help} ({FieldText.Hint(field)})", LineTone.Quiet);

    /// <summary>
    /// Puts the next of the words that fit into a field that takes a word: a choice, or a treatment by what was typed
    /// of its name. Nothing happens in another field.
    /// </summary>
    public void NextWord(RateField field)
    {
        ImmutableArray<string> words = Words(field);
        if (words.IsEmpty)
            return;
        string looked = _lookedFor.GetValueOrDefault(field.Id, TextOf(field));
        int at = words.IndexOf(TextOf(field));
        Put(field, words[(at + 1) % words.Length]);
        _lookedFor[field.Id] = looked;
    }

    /// <summary>Whether a field takes a word, so that a blank in it can stand for the next one.</summary>
    public static bool TakesWord(RateField field) => field.Kind is RateFieldKind.Choice or RateFieldKind.TreatmentId;

    /// <summary>The answer with its working, or what stands in its way, in lines that fit.</summary>
    /// <param name="width">Columns.</param>
    public ImmutableArray<AdviceLine> Lines(int width) =>
        Answer is { } answer
            ? [.. AnswerLines(answer, width)]
            :
            [
                .. Waiting()
                    .SelectMany(line => Wrapping.Lines(line.Text, width).Select(part => line with { Text = part })),
            ];

    /// <inheritdoc/>
    string IFormDesk.Title => $"Rates: {Form.Title}";

    /// <inheritdoc/>
    string IFormDesk.Purpose => Form.About;

    /// <inheritdoc/>
    ImmutableArray<string> IFieldDesk.Fields => [.. Form.Fields.Select(one => one.Label)];

    /// <inheritdoc/>
    string IFieldDesk.TextOf(int field) => TextOf(Form.Fields[field]);

    /// <inheritdoc/>
    void IFieldDesk.Type(int field, string text) => Type(Form.Fields[field], text);

    /// <inheritdoc/>
    string? IFieldDesk.ProblemOf(int field) => ProblemOf(Form.Fields[field]);

    /// <inheritdoc/>
    string IFormDesk.Hint(int field) => FieldText.Hint(Form.Fields[field]);

    /// <inheritdoc/>
    AdviceLine IFieldDesk.Beside(int field) => Beside(Form.Fields[field]);

    /// <inheritdoc/>
    AdviceLine IFieldDesk.About(int field) => About(Form.Fields[field]);

    /// <inheritdoc/>
    bool IFormDesk.TakesWord(int field) => TakesWord(Form.Fields[field]);

    /// <inheritdoc/>
    void IFormDesk.NextWord(int field) => NextWord(Form.Fields[field]);

    private ImmutableArray<AdviceLine> AnswerLines(RateAnswer answer, int width)
    {
        var report = new RateReport(Form, RateEntry.AllOf(Form, _typed, _site), answer, _site.Knowledge.Sources);
        return PageLines.Of(DocumentUnits.In(RateDocument.Of(report), _site.Units, []).Blocks, width);
    }

    /// <summary>What is wrong, then what is missing: an entry not made yet is no mistake.</summary>
    private IEnumerable<AdviceLine> Waiting()
    {
        (RateField Field, string Text)[] problems =
        [
            .. _outcome.Refusals.Select(problem =>
                (Form.Fields.Single(field => field.Id == problem.Field), problem.Text)
            ),
        ];
        foreach ((RateField field, string text) in problems.Where(problem => !IsMissing(problem.Field)))
            yield return new AdviceLine($"{field.Label}: {text}.", LineTone.Warning);
        string[] missing =
        [
            .. problems
                .Where(problem => problem.Field.IsRequired && IsMissing(problem.Field))
                .Select(problem => problem.Field.Label),
        ];
        if (missing.Length > 0)
            yield return new AdviceLine($"Still to enter: {string.Join("; ", missing)}.", LineTone.Quiet);

        // A field that only some sums need says itself what needs it.
        foreach (
            (RateField field, string text) in problems.Where(problem =>
                !problem.Field.IsRequired && IsMissing(problem.Field)
            )
        )
            yield return new AdviceLine($"{field.Label}: {text}.", LineTone.Quiet);
    }

    private bool IsMissing(RateField field) => field.Default is null && string.IsNullOrWhiteSpace(TextOf(field));

    private ImmutableArray<string> Words(RateField field) =>
        field.Kind switch
        {
            RateFieldKind.Choice choice => [.. choice.Words.Select(word => word.Key)],
            RateFieldKind.TreatmentId =>
            [
                .. NameSearch
                    .Treatments(_site.Knowledge, _lookedFor.GetValueOrDefault(field.Id, TextOf(field)))
                    .Select(hit => hit.Id),
            ],
            _ => [],
        };

    private void Put(RateField field, string text)
    {
        _typed[field.Id] = text;
        Work();
    }

    private void Work() => _outcome = Form.Run(_typed, _site);
}
