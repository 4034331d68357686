using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Why;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>Why an action is advised, waits or is barred, as a page: the same as <c>why</c> writes.</summary>
public static class ReasonPage
{
    /// <summary>The page; empty of an action that the knowledge does not hold.</summary>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="advice">The advice.</param>
    /// <param name="looked">The area as it was looked at.</param>
    /// <param name="action">The action's id.</param>
    /// <param name="full">Whether to show every condition with what it asked and what it found.</param>
    public static IEnumerable<Block> Of(
        KnowledgeBase knowledge,
        AreaAdvice advice,
        AreaCase looked,
        string action,
        bool full
    ) =>
        knowledge.ActionOf(action) is not { } record
            ? []
            : [In(0, record.Name, Tone.Strong), .. new WhyArea(knowledge, "Space").Of(advice, looked, record, full)];
}
