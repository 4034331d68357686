using System.Collections.Immutable;
using WeedAdvisor.Interview.Earlier;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Desks;

/// <summary>An earlier use being told field by field.</summary>
public sealed class PastDesk : IFormDesk
{
    private readonly Telling _telling;
    private readonly PastApplication _before;
    private readonly ImmutableArray<PastField> _fields;
    private readonly string[] _typed;

    /// <summary>Begins with what was told before.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="before">The application as told before; a blank one when it is new.</param>
    /// <param name="fields">The fields to tell; what the others tell stays.</param>
    public PastDesk(InterviewSession session, PastApplication before, ImmutableArray<PastField> fields)
    {
        _telling = new Telling(session.Knowledge, session.Visit.Date);
        _before = before;
        _fields = fields;
        _typed = [.. fields.Select(field => field.Text(_telling, before))];
        Fields = [.. fields.Select(field => field.Label)];
    }

    /// <inheritdoc/>
    public string Title => _fields.Contains(PastFields.Product) ? "An earlier application" : "More of this application";

    /// <inheritdoc/>
    public string Purpose =>
        "Whatever you know helps; what you leave out counts as not known, and then the careful side counts.";

    /// <inheritdoc/>
    public ImmutableArray<string> Fields { get; }

    /// <summary>The application as typed so far; what is wrong counts as not told.</summary>
    public PastApplication Past
    {
        get
        {
            PastApplication past = Emptied();
            for (int at = 0; at < _fields.Length; at++)
                past = ReadAt(at, past).Value ?? past;
            return past;
        }
    }

    /// <summary>The first thing that is wrong, as a sentence; null when nothing is.</summary>
    public string? Trouble =>
        Enumerable.Range(0, _fields.Length).Select(ProblemOf).FirstOrDefault(problem => problem is not null);

    /// <summary>Whether a product that is not in the list is told.</summary>
    public bool IsOutside => PastProductField.IsOutside(Past);

    /// <summary>Forgets a product that is not in the list: one of the list was picked.</summary>
    public void ForgetProduct()
    {
        for (int at = 0; at < _fields.Length; at++)
        {
            if (_fields[at] is PastProductField)
                _typed[at] = "";
        }
    }

    /// <inheritdoc/>
    public string TextOf(int field) => _typed[field];

    /// <inheritdoc/>
    public void Type(int field, string text) => _typed[field] = text;

    /// <inheritdoc/>
    public string? ProblemOf(int field) => _typed[field].Trim().Length == 0 ? null : ReadAt(field, Emptied()).Error;

    /// <inheritdoc/>
    public string Hint(int field) => $"{_fields[field].Expected}; empty: not known";

    /// <inheritdoc/>
    public AdviceLine Beside(int field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine(problem, LineTone.Warning)
            : new AdviceLine(_fields[field].Expected, LineTone.Quiet);

    /// <inheritdoc/>
    public AdviceLine About(int field) =>
        ProblemOf(field) is { } problem
            ? new AdviceLine(problem, LineTone.Warning)
            : new AdviceLine(_fields[field].Help, LineTone.Quiet);

    /// <inheritdoc/>
    public bool TakesWord(int field) => !_fields[field].Choices.IsEmpty;

    /// <inheritdoc/>
    public void NextWord(int field)
    {
        string[] words = [.. _fields[field].Choices.Select(choice => choice.Text), ""];
        _typed[field] = words[(Array.IndexOf(words, _typed[field]) + 1) % words.Length];
    }

    /// <inheritdoc/>
    public ImmutableArray<AdviceLine> Lines(int width)
    {
        AdviceLine[] wrong =
        [
            .. Enumerable
                .Range(0, _fields.Length)
                .Select(ProblemOf)
                .OfType<string>()
                .Select(problem => new AdviceLine(problem, LineTone.Warning)),
        ];
        PastApplication past = Past;
        AdviceLine[] told =
        [
            .. _fields
                .Where(field => field.IsTold(past))
                .Select(field => new AdviceLine($"{field.Label}: {field.Text(_telling, past)}")),
        ];
        AdviceLine[] lines =
            wrong.Length > 0 ? wrong
            : told.Length > 0 ? told
            : [new AdviceLine("Nothing is told here yet.", LineTone.Quiet)];
        return
        [
            .. lines.SelectMany(line => Wrapping.Lines(line.Text, width).Select(part => line with { Text = part })),
        ];
    }

    private Typed<PastApplication> ReadAt(int field, PastApplication past) =>
        _typed[field].Trim() is { Length: > 0 } text
            ? TypedAnswer.IsNotKnown(text)
                ? Typed<PastApplication>.As(past)
                : _fields[field].Read(_telling, past, text)
            : Typed<PastApplication>.As(past);

    // What the fields tell is taken out first: what is no longer typed is no longer told.
    private PastApplication Emptied() => _fields.Aggregate(_before, (past, field) => field.Without(past));
}
