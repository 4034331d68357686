using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Commands;

/// <summary>What an interview needs, on screens or line by line.</summary>
/// <param name="Session">The interview.</param>
/// <param name="Store">Where visits are read and saved.</param>
/// <param name="Labels">The label book.</param>
/// <param name="Recovery">Where the draft is kept; null when there is no place for it.</param>
/// <param name="Copies">Which copies of files are the program's own.</param>
/// <param name="WorkingFolder">The folder that relative paths start from.</param>
internal sealed record InterviewStart(
    InterviewSession Session,
    IVisitStore Store,
    LabelShelf Labels,
    RecoveryFile? Recovery,
    BackupLedger Copies,
    string WorkingFolder
) : IDisposable
{
    /// <summary>Begins an interview of a visit, or of a new one of today.</summary>
    /// <param name="knowledge">The knowledge, without labels.</param>
    /// <param name="labels">The label book that the command line names; null when it names none.</param>
    /// <param name="document">The visit as it was read; null for a new one.</param>
    /// <param name="path">Its file.</param>
    /// <param name="surroundings">The surroundings.</param>
    /// <exception cref="RefusalException">The label book is not there, or something in it is wrong.</exception>
    public static InterviewStart Of(
        KnowledgeBase knowledge,
        string? labels,
        VisitDocument? document,
        string? path,
        Surroundings surroundings
    )
    {
        string home = surroundings.Environment(OperatingSystem.IsWindows() ? "USERPROFILE" : "HOME") ?? "";
        string? folder = StateFolder.Of(surroundings.Environment, home);
        var copies = new BackupLedger(folder);
        var saver = new FileSaver(copies);
        var store = new VisitStore(knowledge, surroundings.FullPath, saver);
        RecoveryFile? recovery = folder is null
            ? null
            : new RecoveryFile(folder, knowledge, surroundings.FullPath, store.StampOf);
        DateOnly today = surroundings.Today;
        KnowledgeBase over = LabelsOption.Over(knowledge, labels, path, surroundings);
        var session = new InterviewSession(
            over,
            new LiveAdviceSource(surroundings.Compile(over)),
            document?.Visit ?? VisitEdits.Begin(today),
            recovery
        );
        if (document is not null)
            Open(session, store, document, surroundings.FullPath(path!), path!);
        var shelf = new LabelShelf(
            session,
            knowledge,
            file => LabelsOption.PathOf(labels, file, surroundings),
            surroundings.FullPath,
            today,
            path,
            saver
        );
        return new InterviewStart(session, store, shelf, recovery, copies, surroundings.WorkingFolder);
    }

    /// <summary>The interviews that were broken off, and a line for each that cannot be read.</summary>
    public (IReadOnlyList<RecoveryOffer> Offers, IReadOnlyList<string> Troubles) Offers()
    {
        if (Recovery is null)
            return ([], []);
        (IReadOnlyList<BrokenOff> found, IReadOnlyList<string> troubles) = Recovery.Offers();
        return ([.. found.Select(one => new RecoveryOffer(one.Told, () => GoOn(one), one.Decline))], troubles);
    }

    /// <summary>Lets the draft and the copies of this window go, so that the next start finds them.</summary>
    public void Dispose()
    {
        Recovery?.Dispose();
        Copies.Dispose();
    }

    // What came through a pipe stands in no file that it could be saved to.
    private static void Open(
        InterviewSession session,
        VisitStore store,
        VisitDocument document,
        string full,
        string path
    )
    {
        bool isFile = FileKinds.Of(full) == FileKind.Regular;
        store.Hold(isFile ? path : null, document);
        if (isFile)
            session.Open(document.Visit, path);
    }

    private string? GoOn(BrokenOff found)
    {
        string? path = found.Draft.File is { } file ? Near(file) : null;
        Recovery!.Adopt(found);
        if (path is not null)
            Store.Resume(path, found.Draft.Stamp);
        string? note = Labels.Turn(path);
        Session.Resume(found.Draft.Visit, path);
        return note;
    }

    private string Near(string file)
    {
        string near = Path.GetRelativePath(WorkingFolder, file);
        return near.StartsWith("..", StringComparison.Ordinal) ? file : near;
    }
}
