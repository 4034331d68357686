using WeedAdvisor.Interview.Session;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Interview.Desks.Season;

/// <summary>The season plans of an interview, one an area. Wishes stay until the program is left.</summary>
/// <param name="session">The interview; its area and day are those of the plan.</param>
public sealed class SeasonDesks(InterviewSession session)
{
    private readonly Dictionary<string, SeasonDesk> _desks = new(StringComparer.Ordinal);

    /// <summary>
    /// The desk of the area that the interview is at. When an answer has changed since, the year is to be read anew;
    /// the wishes stay unless the day has changed, because they count weeks from it.
    /// </summary>
    public SeasonDesk Here()
    {
        SeasonDesk? old = _desks.GetValueOrDefault(session.Area.Id);
        if (old is not null && old.IsOf(session))
            return old;
        SeasonRequest? wishes = old?.Day == session.Visit.Date ? old.Wishes : null;
        return _desks[session.Area.Id] = new SeasonDesk(session, wishes);
    }
}
