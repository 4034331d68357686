using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>Figures of chemicals that only a label can tell.</summary>
internal static class TreatmentGaps
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(2, "Chemicals with missing label figures");
        page.Paragraph(
            "A figure that is not published is left open. Where a rule compares it the chemical waits for the label; "
                + "elsewhere the report says *see the label*."
        );
        page.Table(
            "None.",
            ["chemical", "not known"],
            knowledge
                .Treatments.Values.Select(one => (one.Id, Missing: MissingOf(one).ToArray()))
                .Where(one => one.Missing.Length > 0)
                .Select(one => new[] { one.Id, string.Join(", ", one.Missing) })
        );
        page.Heading(3, "Chemicals without any rating");
        page.Table(
            "None.",
            ["chemical", "status"],
            knowledge.Treatments.Values.Where(one => one.Ratings.IsEmpty).Select(one => new[] { one.Id, one.Status })
        );
    }

    private static IEnumerable<string> MissingOf(Treatment treatment)
    {
        bool isFromSeed = treatment.ActsOn.Contains("germinating");
        (string Name, bool IsMissing)[] figures =
        [
            ("wait after potting", treatment.WaitAfterPottingDays is null),
            ("wait for bare-root stock", isFromSeed && treatment.WaitBareRootDays is null),
            ("days before covering", treatment.DaysBeforeCovering is null),
            ("repeat after", treatment.RepeatAfterDays is null),
            ("uses a year", treatment.UsesPerYear is null),
            ("yearly limit", treatment.YearlyLimitKgAiHa is null),
            ("water to start it", isFromSeed && treatment.WaterInMm is null),
            ("weeks of control", isFromSeed && treatment.ResidualWeeks is null),
            ("rates", treatment.Rates.IsEmpty),
            ("strength", treatment.Strength is null),
            ("restricted-entry interval", treatment.ReiHours is null),
            ("signal word", treatment.SignalWord is null),
            ("protective equipment", treatment.ProtectiveEquipment is null),
        ];
        return figures.Where(figure => figure.IsMissing).Select(figure => figure.Name);
    }
}
