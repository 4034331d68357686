using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>
/// Visit files on the disk. Of every file it reads or writes it keeps the text, so that saving changes no more than was
/// edited, and what tells whether others have changed the file since.
/// </summary>
/// <param name="knowledge">The knowledge whose words the visits use.</param>
/// <param name="fullPath">Makes a path absolute.</param>
/// <param name="saver">Writes the files; null for one that remembers nothing of earlier starts.</param>
public sealed class VisitStore(KnowledgeBase knowledge, Func<string, string> fullPath, FileSaver? saver = null)
    : IVisitStore
{
    private static readonly FileStamp s_unknown = new(-1, "");

    private readonly FileSaver _saver = saver ?? new FileSaver(new BackupLedger());
    private readonly Dictionary<string, Held> _held = new(StringComparer.Ordinal);
    private VisitDocument? _piped;

    /// <inheritdoc/>
    public (Visit? Visit, IReadOnlyList<string> Problems) Load(string path)
    {
        if (!File.Exists(fullPath(path)))
            return (null, [$"There is no file '{path}'."]);
        Outcome<VisitDocument, Problem> outcome = VisitDocument.Read(fullPath(path), knowledge);
        if (!outcome.IsGood)
            return (
                null,
                [.. outcome.Refusals.Select(p => (p with { Where = p.Where with { File = path } }).ToString())]
            );
        Hold(path, outcome.Value);
        return (outcome.Value.Visit, []);
    }

    /// <summary>Takes over a visit that was read already.</summary>
    /// <param name="path">The file; null when it came through a pipe and stands in no file.</param>
    /// <param name="document">What was read.</param>
    public void Hold(string? path, VisitDocument document)
    {
        if (path is null)
            _piped = document;
        else
            _held[fullPath(path)] = new Held(document.Stamp, document);
    }

    /// <inheritdoc/>
    public bool Exists(string path) => File.Exists(fullPath(path));

    /// <inheritdoc/>
    public FileStamp? StampOf(string path) => _held.GetValueOrDefault(fullPath(path))?.Stamp;

    /// <inheritdoc/>
    public void Resume(string path, FileStamp? stamp)
    {
        _piped = null;
        VisitDocument? document = OnDisk(fullPath(path));
        _held[fullPath(path)] = new Held(stamp ?? s_unknown, document?.Stamp == stamp ? document : null);
    }

    /// <inheritdoc/>
    public Outcome<Saved, NotSaved> Save(string path, Visit visit, string? basis = null, bool over = false)
    {
        try
        {
            string full = fullPath(path);
            FileKind kind = FileKinds.Of(full);
            if (kind is not (FileKind.Missing or FileKind.Regular))
                return new NotSaved($"'{path}' is {kind.Name()}, not a file; nothing was written to it.");
            FileStamp? now = kind == FileKind.Regular ? FileStamp.OfFile(full) : null;
            Held? held = _held.GetValueOrDefault(full);
            if (held is not null && now is not null && now != held.Stamp && !over)
                return NotSaved.Changed(path);
            bool isTheirs = held is not null && now != held.Stamp;
            return Write(path, visit, basis, isGone: isTheirs && now is null, isTheirs);
        }
        catch (Exception e)
            when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new NotSaved($"'{path}' cannot be written: {e.Message.ReplaceLineEndings(" ")}");
        }
    }

    private Outcome<Saved, NotSaved> Write(string path, Visit visit, string? basis, bool isGone, bool isTheirs)
    {
        string full = fullPath(path);
        string? source = basis is null ? null : fullPath(basis);
        VisitDocument? document = source is null ? _piped : _held.GetValueOrDefault(source)?.Document;

        // Saved over what others wrote, their comments stay rather than those of a text that is there no more.
        if (source is not null && !isGone && (document is null || (isTheirs && source == full)))
            document = OnDisk(source) ?? document;
        VisitWriting writing = document?.With(visit) ?? VisitDocument.Begin(visit);
        string? copy = _saver.Write(full, writing.Bytes.AsSpan());
        Outcome<VisitDocument, Problem> written = VisitDocument.Of([.. writing.Bytes], path, knowledge);
        _held[full] = new Held(FileStamp.Of(writing.Bytes.AsSpan()), written.Value);
        string? original =
            writing.KeepsLines ? null
            : source == full ? _saver.CopyOf(full)
            : basis;
        string? wrong = written.IsGood ? null : written.Refusals[0].ToString();
        return new Saved(copy is null ? null : Shown(path, copy), [.. Notes(path, copy, isGone, original, wrong)]);
    }

    private IEnumerable<string> Notes(string path, string? copy, bool isGone, string? original, string? wrong)
    {
        if (isGone)
            yield return "The file had been deleted since it was read here; it is written anew.";
        if (copy is not null && copy != AtomicFile.Target(fullPath(path)) + ".bak")
            yield return $"{path}.bak was left alone: it is not a copy that this program made, or one that is still "
                + $"needed.";
        if (original is not null)
        {
            yield return "The file could not be changed line by line and was written anew; its layout and comments are "
                + "in "
                + $"{Shown(path, original)}.";
        }

        if (wrong is not null)
            yield return $"It cannot be opened again before this is put right: {wrong}";
    }

    // The copy lies beside the file, or beside what a link leads to; then only its whole path tells where.
    private string Shown(string path, string copy) =>
        copy.StartsWith(fullPath(path), StringComparison.Ordinal) ? path + copy[fullPath(path).Length..] : copy;

    private VisitDocument? OnDisk(string full) =>
        FileKinds.Of(full) == FileKind.Regular && VisitDocument.Read(full, knowledge) is { IsGood: true } read
            ? read.Value
            : null;

    /// <summary>A file as it was last read or written.</summary>
    /// <param name="Stamp">What it held.</param>
    /// <param name="Document">Its text; null when it could not be had.</param>
    private sealed record Held(FileStamp Stamp, VisitDocument? Document);
}
