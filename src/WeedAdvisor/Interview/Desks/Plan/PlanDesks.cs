using WeedAdvisor.Interview.Session;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <summary>The plans of an interview, one an area. Wishes stay until the program is left.</summary>
/// <param name="session">The interview.</param>
public sealed class PlanDesks(InterviewSession session)
{
    private readonly Dictionary<string, PlanDesk> _desks = new(StringComparer.Ordinal);

    /// <summary>
    /// The desk of the area that the interview is at. When an answer has changed since, it is read anew; the wishes
    /// stay unless the day has changed, because they count weeks from it.
    /// </summary>
    public PlanDesk Here()
    {
        PlanDesk? old = _desks.GetValueOrDefault(session.Area.Id);
        if (old is not null && old.IsOf(session))
            return old;
        PlanWishes? wishes = old?.Day == session.Visit.Date ? old.Wishes : null;
        return _desks[session.Area.Id] = new PlanDesk(session, wishes);
    }
}
