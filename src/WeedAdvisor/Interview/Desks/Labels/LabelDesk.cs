using System.Collections.Immutable;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Desks.Labels;

/// <summary>A label being copied, field by field; the reader of the label book judges every one at once.</summary>
public sealed class LabelDesk : IFormDesk
{
    private readonly LabelShelf _shelf;
    private readonly Treatment _record;
    private LabelDraft _draft;
    private LabelDraft _kept;
    private (ProductLabel? Label, ImmutableArray<(LabelField Field, string Text)> Problems) _read;

    /// <summary>Begins with what the book says of the treatment, or with nothing.</summary>
    /// <param name="shelf">The label book.</param>
    /// <param name="treatment">The treatment that the product is.</param>
    public LabelDesk(LabelShelf shelf, string treatment)
    {
        _shelf = shelf;
        _record = shelf.Records.Treatments[treatment];
        _kept = shelf.Of(treatment) is { } label ? LabelDraft.Of(label) : LabelDraft.Begin(treatment);
        _draft = _kept;
        _read = Read();
    }

    /// <inheritdoc/>
    public string Title => $"Your label: {_record.Name}";

    /// <inheritdoc/>
    public string Purpose =>
        "Copy what stands on the label of your own bag or bottle. What you leave out, the record says as before.";

    /// <inheritdoc/>
    public ImmutableArray<string> Fields { get; } = [.. LabelField.All.Select(field => field.Label)];

    /// <summary>Whether something is typed that the book does not hold.</summary>
    public bool IsChanged => !_draft.Typed.SequenceEqual(_kept.Typed);

    /// <summary>
    /// What is wrong, in the order of the fields; empty when it can be kept. Blank needed fields count.
    /// </summary>
    public ImmutableArray<(LabelField Field, string Text)> Problems => _read.Problems;

    /// <inheritdoc/>
    public string TextOf(int field) => _draft[LabelField.All[field]];

    /// <inheritdoc/>
    public void Type(int field, string text)
    {
        _draft = _draft.With(LabelField.All[field], text);
        _read = Read();
    }

    /// <inheritdoc/>
    public string Hint(int field) => LabelField.All[field].Hint;

    /// <inheritdoc/>
    public string? ProblemOf(int field) =>
        TextOf(field).Length == 0
            ? null
            : Problems.FirstOrDefault(problem => problem.Field == LabelField.All[field]).Text;

    /// <inheritdoc/>
    public AdviceLine Beside(int field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine(problem, LineTone.Warning)
            : new AdviceLine(LabelField.All[field].Hint, LineTone.Quiet);

    /// <inheritdoc/>
    public AdviceLine About(int field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine(Sentence(problem), LineTone.Warning)
            : new AdviceLine(LabelField.All[field].Help, LineTone.Quiet);

    /// <inheritdoc/>
    public bool TakesWord(int field) => false;

    /// <inheritdoc/>
    public void NextWord(int field) { }

    /// <inheritdoc/>
    public ImmutableArray<AdviceLine> Lines(int width) =>
        [.. Told().SelectMany(line => Wrapping.Lines(line.Text, width).Select(part => line with { Text = part }))];

    /// <summary>Writes it into the book.</summary>
    /// <returns>Why it could not be written, or null when it was.</returns>
    public string? Keep()
    {
        string? trouble = Problems is [(var field, var text), ..]
            ? Sentence($"{field.Label}: {text}")
            : _shelf.Put(_draft);
        if (trouble is null)
            _kept = _draft;
        return trouble;
    }

    /// <summary>
    /// What the label says otherwise than the record, in one line; null when it cannot be kept as it is.
    /// </summary>
    public string? Difference => _read.Label is { } label ? Says(label) : null;

    /// <summary>A problem as a sentence.</summary>
    public static string Sentence(string problem) => problem.EndsWith('?') ? problem : problem + ".";

    private string Says(ProductLabel label) =>
        LabelOverlay
            .Of(_shelf.Records, new LabelBook([label], ""))
            .Treatments[label.Treatment]
            .Label!.Line(_shelf.Visit);

    private IEnumerable<AdviceLine> Told()
    {
        (ProductLabel? label, ImmutableArray<(LabelField Field, string Text)> problems) = _read;
        foreach ((LabelField field, string text) in problems.Where(problem => _draft[problem.Field].Length > 0))
            yield return new AdviceLine(Sentence($"{field.Label}: {text}"), LineTone.Warning);
        string[] missing =
        [
            .. problems.Where(problem => _draft[problem.Field].Length == 0).Select(problem => problem.Field.Label),
        ];
        if (missing.Length > 0)
            yield return new AdviceLine($"Still to enter: {string.Join("; ", missing)}.", LineTone.Quiet);
        if (label is null)
            yield break;
        yield return new AdviceLine(Says(label));
        yield return new AdviceLine(
            $"Keep writes it to {_shelf.FilePath}; it is read with every visit in that folder.",
            LineTone.Quiet
        );
    }

    // The draft as a book of one label, each field on a line of its own, so that a problem's line tells the field.
    private (ProductLabel? Label, ImmutableArray<(LabelField Field, string Text)> Problems) Read()
    {
        LabelEdit[] values = [.. _draft.Values(_shelf.Today)];
        Outcome<LabelBook, Problem> book = LabelFile.Parse(
            LabelBookText.Appended("", _draft.Treatment, values),
            LabelShelf.BesideVisit,
            _shelf.Records,
            _shelf.Today
        );
        return book.IsGood
            ? (book.Value.Labels[0], [])
            : (
                null,
                [
                    .. book
                        .Refusals.Select(problem => (FieldAt(values, problem.Where.Line), Text(problem)))
                        .OrderBy(problem => LabelField.All.IndexOf(problem.Item1)),
                ]
            );
    }

    private static LabelField FieldAt(LabelEdit[] values, int line) =>
        values.ElementAtOrDefault(line - 2) is { } value
        && LabelField.All.FirstOrDefault(field => field.Key == value.Key) is { } field
            ? field
            : LabelField.Name;

    private static string Text(Problem problem) =>
        $"{problem.Found}; expected {problem.Expected}{(problem.Nearest is { } near ? $"; did you mean {near}?" : "")}";
}
