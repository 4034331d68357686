using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>Records that were last checked long before the newest ones.</summary>
internal static class DateSection
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        CheckedRecord[] all = [.. Checks.All(knowledge)];
        CheckedRecord[] dated = [.. all.Where(one => one.Checked is not null)];
        page.Heading(2, "Dates");
        if (dated.Length == 0)
        {
            page.Paragraph("No record carries a date.");
            return;
        }

        DateOnly newest = dated.Max(one => one.Checked!.Value);
        page.Paragraph(
            $"The newest record was checked on {Figures.Day(newest)}; the age of the others is counted from that day, "
                + $"not from today. {Figures.Count(dated.Length, "record carries", "records carry")} a date. Older "
                + $"than a year:"
        );
        page.Table(
            "None.",
            ["record", "checked"],
            dated
                .Where(one => Checks.IsStale(one.Checked, newest))
                .Select(one => new[] { one.Id, Figures.Day(one.Checked!.Value) })
        );
        page.Paragraph("Never held against a source, because none is named that could be read:");
        page.Table(
            "None.",
            ["kind", "records"],
            all.Where(one => one.Checked is null)
                .GroupBy(one => one.Kind, StringComparer.Ordinal)
                .Select(kind => new[] { kind.Key, string.Join(", ", kind.Select(one => one.Id)) })
        );
    }
}
