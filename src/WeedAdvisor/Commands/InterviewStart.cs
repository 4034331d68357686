using WeedAdvisor.Inference;
using WeedAdvisor.Interview;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Commands;

/// <summary>What an interview needs, on screens or line by line.</summary>
/// <param name="Session">The interview.</param>
/// <param name="Store">Where visits are read and saved.</param>
/// <param name="Recovery">Where the draft is kept; null when there is no place for it.</param>
internal sealed record InterviewStart(InterviewSession Session, IVisitStore Store, RecoveryFile? Recovery)
{
    /// <summary>Begins an interview of a visit, or of a new one of today.</summary>
    public static InterviewStart Of(KnowledgeBase knowledge, Visit? visit, string? path, Surroundings surroundings)
    {
        string home = surroundings.Environment(OperatingSystem.IsWindows() ? "USERPROFILE" : "HOME") ?? "";
        RecoveryFile? recovery = StateFolder.Of(surroundings.Environment, home) is { } folder
            ? new RecoveryFile(folder, knowledge)
            : null;
        var today = DateOnly.FromDateTime(surroundings.Time.GetLocalNow().DateTime);
        var session = new InterviewSession(
            knowledge, new LiveAdviceSource(Advisor.Of(knowledge)), visit ?? VisitEdits.Begin(today), recovery);
        if (visit is not null)
            session.Open(visit, path);
        return new InterviewStart(session, new VisitStore(knowledge, surroundings.FullPath), recovery);
    }
}
