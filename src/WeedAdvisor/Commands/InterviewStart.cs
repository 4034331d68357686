using WeedAdvisor.Inference;
using WeedAdvisor.Interview;
using WeedAdvisor.Interview.Labels;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Commands;

/// <summary>What an interview needs, on screens or line by line.</summary>
/// <param name="Session">The interview.</param>
/// <param name="Store">Where visits are read and saved.</param>
/// <param name="Labels">The label book.</param>
/// <param name="Recovery">Where the draft is kept; null when there is no place for it.</param>
internal sealed record InterviewStart(
    InterviewSession Session, IVisitStore Store, LabelShelf Labels, RecoveryFile? Recovery)
{
    /// <summary>Begins an interview of a visit, or of a new one of today.</summary>
    /// <param name="knowledge">The knowledge, without labels.</param>
    /// <param name="labels">The label book that the command line names; null when it names none.</param>
    /// <param name="visit">The visit; null for a new one.</param>
    /// <param name="path">Its file.</param>
    /// <param name="surroundings">The surroundings.</param>
    /// <exception cref="RefusalException">The label book is not there, or something in it is wrong.</exception>
    public static InterviewStart Of(
        KnowledgeBase knowledge, string? labels, Visit? visit, string? path, Surroundings surroundings)
    {
        string home = surroundings.Environment(OperatingSystem.IsWindows() ? "USERPROFILE" : "HOME") ?? "";
        RecoveryFile? recovery = StateFolder.Of(surroundings.Environment, home) is { } folder
            ? new RecoveryFile(folder, knowledge)
            : null;
        var today = DateOnly.FromDateTime(surroundings.Time.GetLocalNow().DateTime);
        KnowledgeBase over = LabelsOption.Over(knowledge, labels, path, surroundings);
        var session = new InterviewSession(
            over, new LiveAdviceSource(Advisor.Of(over)), visit ?? VisitEdits.Begin(today), recovery);
        if (visit is not null)
            session.Open(visit, path);
        var shelf = new LabelShelf(
            session, knowledge, file => LabelsOption.PathOf(labels, file, surroundings), surroundings.FullPath, path);
        return new InterviewStart(session, new VisitStore(knowledge, surroundings.FullPath), shelf, recovery);
    }
}
