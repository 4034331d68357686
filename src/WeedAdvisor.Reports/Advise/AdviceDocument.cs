using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The advice on a visit. It reads from what is needed first to what explains it: the next question, what to do, then
/// why, what waits and what must not be done.
/// </summary>
public static class AdviceDocument
{
    /// <summary>The document.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="knowledge">The knowledge, for the names of things.</param>
    /// <param name="full">Whether everything is told, or what a grower needs first.</param>
    /// <param name="withSources">Whether the sources are named, and cited in full at the end.</param>
    public static Document Of(VisitAdvice advice, KnowledgeBase knowledge, bool full = false, bool withSources = false)
    {
        var parts = new AdviceParts(advice.Visit, advice.Knowledge, knowledge, full, withSources);
        Block[][] areas = parts.Of(advice.Areas, blocks => blocks.ToArray());
        return new Document(parts.Title, [.. parts.Before(), .. areas.SelectMany(area => area), .. parts.After()]);
    }
}
