using WeedAdvisor.Interview.Session;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Unlock;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>
/// What would have to change before an action stands otherwise, as a page: the same as <c>unlock</c> writes.
/// </summary>
public static class UnlockPage
{
    /// <summary>The page; empty of an action that the knowledge does not hold.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="action">The action's id.</param>
    public static IEnumerable<Block> Of(InterviewSession session, string action) =>
        session.Engine is not { } engine || session.Knowledge.ActionOf(action) is not { } record
            ? []
            :
            [
                In(0, $"What would change it: {record.Name}", Tone.Strong),
                .. new UnlockArea(engine).Of(session.Advice, session.Looked, record),
            ];
}
