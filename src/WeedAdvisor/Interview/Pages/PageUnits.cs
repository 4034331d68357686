using WeedAdvisor.Interview.Session;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Interview.Pages;

/// <summary>Pages on the screen in the units of the visit.</summary>
public static class PageUnits
{
    /// <summary>A page in the units of the visit as it now stands.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="page">What the page says.</param>
    public static IEnumerable<Block> InUnits(this InterviewSession session, IEnumerable<Block> page) =>
        DocumentUnits.In(page, session.Units, DocumentUnits.NamesIn(session.Visit));
}
