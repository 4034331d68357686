using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The advice on a visit as text, written while the areas come in: the same letters as <see cref="AdviceDocument"/>
/// gives, but of a thousand areas no more than their finished pages are kept.
/// </summary>
public static class AdviceInTurn
{
    /// <summary>Writes the text.</summary>
    /// <param name="to">Where it goes.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="areas">The advice on its areas in their order, some at a time.</param>
    /// <param name="knowledge">The knowledge that it came from.</param>
    /// <param name="full">Whether everything is told, or what a grower needs first.</param>
    /// <param name="withSources">Whether the sources are named, and cited in full at the end.</param>
    /// <param name="width">Columns of the page.</param>
    /// <param name="units">The units wanted; null to leave quantities as they are.</param>
    public static void Write(
        TextWriter to,
        Visit visit,
        IEnumerable<ImmutableArray<AreaAdvice>> areas,
        KnowledgeBase knowledge,
        bool full,
        bool withSources,
        int width,
        UnitsWanted? units = null
    )
    {
        ImmutableArray<string> names = DocumentUnits.NamesIn(visit);
        var parts = new AdviceParts(visit, knowledge.Stamp, knowledge, full, withSources);
        List<string> pages = [];
        foreach (ImmutableArray<AreaAdvice> some in areas)
            pages.AddRange(parts.Of(some, blocks => DocumentText.Of(DocumentUnits.In(blocks, units, names), width)));
        to.Write(
            DocumentText.Of(DocumentUnits.In(new Document(parts.Title, [.. parts.Before()]), units, names), width)
        );
        foreach (string page in pages)
            to.Write(page);
        to.Write(DocumentText.Of(DocumentUnits.In(parts.After(), units, names), width));
    }
}
