using WeedAdvisor.Interview.Session;

namespace WeedAdvisor.Interview.Desks.Costs;

/// <summary>
/// The costs of the areas of an interview. What was entered for each area stays until the program is left.
/// </summary>
/// <param name="session">The interview.</param>
public sealed class CostDesks(InterviewSession session)
{
    private readonly Dictionary<(string Visit, string Area), CostDesk> _desks = [];

    /// <summary>The desk of the area that the interview is at, reckoned anew.</summary>
    public CostDesk Here()
    {
        (string, string) here = (session.Visit.Id, session.Area.Id);
        if (_desks.TryGetValue(here, out CostDesk? desk))
            desk.Renew();
        else
            _desks.Add(here, desk = new CostDesk(session));
        return desk;
    }
}
