using System.Text;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Desks.Labels;

/// <summary>
/// The label book of an interview: which file it is, what it says, and how a label gets into it. Whatever changes it
/// changes the advice at once.
/// </summary>
public sealed class LabelShelf
{
    private static readonly LabelBook s_empty = new([], "");

    private readonly InterviewSession _session;
    private readonly Func<string?, string?> _find;
    private readonly Func<string, string> _fullPath;
    private readonly FileSaver _saver;
    private readonly Dictionary<string, LabelDesk> _begun = new(StringComparer.Ordinal);

    /// <summary>Begins with the book that the interview goes by already.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="records">The knowledge without any label.</param>
    /// <param name="find">The book that belongs to a visit file, or to a new visit; null when there is none.</param>
    /// <param name="fullPath">Makes a path absolute.</param>
    /// <param name="today">Today.</param>
    /// <param name="visit">The visit file; null for a new visit.</param>
    /// <param name="saver">Writes the book; null for one that remembers nothing of earlier starts.</param>
    public LabelShelf(
        InterviewSession session,
        KnowledgeBase records,
        Func<string?, string?> find,
        Func<string, string> fullPath,
        DateOnly today,
        string? visit = null,
        FileSaver? saver = null
    )
    {
        _session = session;
        _saver = saver ?? new FileSaver(new BackupLedger());
        Records = records;
        Today = today;
        _find = find;
        _fullPath = fullPath;
        Book = Read(find(visit)).Book ?? s_empty;
    }

    /// <summary>The labels, as last read.</summary>
    public LabelBook Book { get; private set; }

    /// <summary>The knowledge without any label.</summary>
    public KnowledgeBase Records { get; }

    /// <summary>The file that is read, or that a first label will make: <c>labels.yaml</c> beside the visit.</summary>
    public string FilePath =>
        _find(_session.FilePath) ?? Path.Combine(Path.GetDirectoryName(_session.FilePath) ?? "", BesideVisit);

    /// <summary>The name of a book that belongs to the visits of its folder.</summary>
    public const string BesideVisit = "labels.yaml";

    /// <summary>Today: no label was read later.</summary>
    public DateOnly Today { get; }

    /// <summary>The day of the interview's visit.</summary>
    public DateOnly Visit => _session.Visit.Date;

    /// <summary>Turns to the book that belongs to a visit file; the interview then goes by it.</summary>
    /// <param name="visit">The visit file; null for a new visit.</param>
    /// <returns>What is wrong with the book, a line each, or null. Then nothing has changed.</returns>
    public string? Turn(string? visit)
    {
        (string _, LabelBook? book, string? trouble) = Read(_find(visit));
        if (book is null)
            return trouble;
        Go(book);
        return null;
    }

    /// <summary>The label of a treatment; null when the book has none.</summary>
    public ProductLabel? Of(string treatment) => Book.Labels.FirstOrDefault(label => label.Treatment == treatment);

    /// <summary>The desk of a treatment. What was typed on it stays until it is kept, or the program is left.</summary>
    public LabelDesk At(string treatment)
    {
        if (!_begun.TryGetValue(treatment, out LabelDesk? desk))
            _begun.Add(treatment, desk = new LabelDesk(this, treatment));
        return desk;
    }

    /// <summary>Whether something is typed for a treatment that is not kept yet.</summary>
    public bool IsBegun(string treatment) => _begun.TryGetValue(treatment, out LabelDesk? desk) && desk.IsChanged;

    /// <summary>
    /// The treatments of the interview's area that wait for what only a label can tell, in the order of the advice.
    /// </summary>
    public IEnumerable<Treatment> Wanted() =>
        _session
            .Advice.Waiting.Where(wait => wait.Needs.Any(need => need.Kind == Knowledge.Readings.NeedKind.Record))
            .Select(wait => Records.Treatments.GetValueOrDefault(wait.Action))
            .OfType<Treatment>();

    /// <summary>The treatments that are clear in the interview's area, best first.</summary>
    public IEnumerable<Treatment> Advised() =>
        _session.Advice.Clear.Select(clear => Records.Treatments.GetValueOrDefault(clear.Action)).OfType<Treatment>();

    /// <summary>Writes a label into the book, and goes by it. Whatever else the file holds stays as it is.</summary>
    /// <returns>Why it could not be written, or null when it was.</returns>
    public string? Put(LabelDraft draft)
    {
        string path = FilePath;
        (string text, LabelBook? book, string? trouble) = Read(_find(_session.FilePath));
        if (book is null)
            return trouble;
        string written = Written(text, book, draft);
        Outcome<LabelBook, Problem> after = LabelFile.Parse(written, path, Records, Today);
        if (!after.IsGood || after.Value.Labels.Length != book.Labels.Length + (book.Labels.Any(Same(draft)) ? 0 : 1))
            return $"'{path}' is laid out in a way that cannot be changed from here. Write the label into it by hand.";
        try
        {
            _saver.Write(_fullPath(path), Encoding.UTF8.GetBytes(written));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return $"'{path}' cannot be written: {e.Message.ReplaceLineEndings(" ")}";
        }

        Go(after.Value);
        _begun.Remove(draft.Treatment);
        return null;
    }

    private static Func<ProductLabel, bool> Same(LabelDraft draft) => label => label.Treatment == draft.Treatment;

    private string Written(string text, LabelBook book, LabelDraft draft)
    {
        if (book.Labels.FirstOrDefault(Same(draft)) is { } old)
        {
            var before = LabelDraft.Of(old);
            return LabelBookText.With(
                text,
                old.Where,
                LabelField
                    .All.Where(field => draft[field] != before[field])
                    .Select(field => new LabelEdit(field.Key, draft.Yaml(field, Today)))
            );
        }

        return LabelBookText.Appended(text, FreeId(book, draft), draft.Values(Today));
    }

    private static string FreeId(LabelBook book, LabelDraft draft)
    {
        string wanted =
            NearWords.Fold(draft[LabelField.Name]) is { Length: > 0 } name
            && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-')
                ? name
                : draft.Treatment;
        return Enumerable
            .Range(1, book.Labels.Length + 1)
            .Select(number => number == 1 ? wanted : $"{wanted}-{number}")
            .First(id => book.Labels.All(label => label.Id != id));
    }

    // Read anew every time: another window, or an editor, may have written to it.
    private (string Text, LabelBook? Book, string? Trouble) Read(string? path)
    {
        if (path is null || !File.Exists(_fullPath(path)))
            return ("", s_empty, null);
        string text;
        try
        {
            text = File.ReadAllText(_fullPath(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return ("", null, $"'{path}' cannot be read: {e.Message.ReplaceLineEndings(" ")}");
        }

        Outcome<LabelBook, Problem> read = LabelFile.Parse(text, path, Records, Today);
        return (text, read.Value, read.IsGood ? null : string.Join("\n", read.Refusals));
    }

    private void Go(LabelBook book)
    {
        if (book.Hash == Book.Hash)
            return;
        Book = book;
        KnowledgeBase knowledge = book.Labels.IsEmpty ? Records : LabelOverlay.Of(Records, book);
        _session.GoBy(knowledge, new LiveAdviceSource(Advisor.Of(knowledge)));
    }
}
