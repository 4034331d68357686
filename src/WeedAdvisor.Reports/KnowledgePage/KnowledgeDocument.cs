using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Catalogue;
using WeedAdvisor.Reports.Worked;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>
/// The page that says what the knowledge holds and what it lacks. It depends on the knowledge alone: no clock, no order
/// of files, no culture.
/// </summary>
public static class KnowledgeDocument
{
    /// <summary>The page as Markdown.</summary>
    /// <param name="knowledge">The knowledge described.</param>
    /// <param name="coverage">What its worked visits show.</param>
    public static string Of(KnowledgeBase knowledge, Coverage coverage)
    {
        var page = new Markdown();
        page.Heading(1, "What the knowledge holds, and what it lacks");
        page.Paragraph(
            "Written by `weedadvisor knowledge doc`; a test fails when it is out of date. Do not edit it by hand."
        );
        Counts(page, knowledge);
        CoverageSection.Write(page, knowledge, coverage);
        LawSection.Write(page, knowledge);
        WeedGaps.Write(page, knowledge);
        TreatmentGaps.Write(page, knowledge);
        FieldSources.Write(page, knowledge);
        MemorySection.Write(page, knowledge);
        DateSection.Write(page, knowledge);
        CitationSection.Write(page, knowledge);
        return page.ToString();
    }

    /// <summary>A number as text.</summary>
    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Counts(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(2, "Counts");
        page.Table(
            "Nothing.",
            ["catalogue", "records"],
            [
                .. KnowledgeCatalogue.Kinds.Select(kind =>
                    new[] { kind, Number(KnowledgeCatalogue.Of(knowledge, kind, default).Length) }
                ),
                ["worked visits", Number(knowledge.WorkedVisits.Length)],
                ["published ratings", Number(knowledge.Treatments.Values.Sum(one => one.Ratings.Length))],
                ["published effects of practices", Number(knowledge.Practices.Values.Sum(one => one.Effects.Length))],
            ]
        );
        page.Paragraph($"Version {knowledge.Stamp.Version} of the knowledge.");
    }
}
