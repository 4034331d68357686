using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Commands;

/// <summary>The option that chooses units: the same words on every command that writes a document.</summary>
internal static class UnitsOption
{
    /// <summary>The option; null when the visit, or else its region, is to say.</summary>
    public static Option<string?> Of() =>
        LayoutOptions.OneOfOrNone(
            "--units",
            "Units of what is measured, before those that the visit names (JSON keeps its own).",
            [.. UnitsWords.All]
        );

    /// <summary>A document about a visit in the units asked for, else in those of the visit.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">The word given with the option; null when none was.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="knowledge">The knowledge, which has the regions.</param>
    public static Document Applied(Document document, string? asked, Visit visit, KnowledgeBase knowledge) =>
        DocumentUnits.In(
            document,
            UnitsWords.Find(asked) ?? VisitUnits.Of(visit, knowledge),
            DocumentUnits.NamesIn(visit)
        );

    /// <summary>A document of a rate sum in the units asked for, else in those of the visit it was done for.</summary>
    /// <param name="document">The document.</param>
    /// <param name="asked">The word given with the option; null when none was.</param>
    /// <param name="visit">The units of the visit; null when there is none.</param>
    public static Document Applied(Document document, string? asked, UnitsWanted? visit) =>
        DocumentUnits.In(document, UnitsWords.Find(asked) ?? visit, ImmutableArray<string>.Empty);
}
