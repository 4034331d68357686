using System.Text;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>Draws a label book: what labels of some treatments might say, milder or sterner than the record.</summary>
internal static class LabelsDrawn
{
    private const int MostLabels = 40;
    private static readonly DateOnly s_first = new(2025, 1, 1);
    private static readonly (string Key, int Most)[] s_numbers =
    [
        ("entry-hours", 48),
        ("wait-after-potting-days", 28),
        ("wait-bare-root-days", 42),
        ("days-before-covering", 40),
        ("repeat-after-days", 90),
        ("uses-per-year", 4),
        ("yearly-limit-kg-ai-ha", 9),
        ("water-in-within-days", 10),
    ];

    /// <summary>The file.</summary>
    public static string Book(KnowledgeBase knowledge, Tape tape)
    {
        var text = new StringBuilder();
        string[] places = [.. knowledge.QuestionOf("place")!.Choices.Select(choice => choice.Id)];
        string[] crops = [.. knowledge.Crops.Keys];
        foreach (string treatment in tape.Some([.. knowledge.Treatments.Keys], MostLabels))
            Label(text, knowledge.Treatments[treatment], places, crops, tape);
        return text.Length == 0 ? "[]\n" : text.ToString();
    }

    private static void Label(StringBuilder text, Treatment record, string[] places, string[] crops, Tape tape)
    {
        // The last day is before the one on which all commands are asked.
        string read = AnswersDrawn.Day(s_first.AddDays(tape.Below(500)));
        text.Append($"- id: own-{record.Id}\n  name: Own {record.Id}\n  treatment: {record.Id}\n  read: {read}\n");
        if (tape.OnceIn(2))
            text.Append($"  actives: [{string.Join(", ", record.Actives.Select(active => $"'{active.Name}'"))}]\n");
        if (tape.OnceIn(3))
            text.Append("  registration-number: '12-34'\n");
        if (!tape.OnceIn(3))
            text.Append($"  sites: [{string.Join(", ", tape.Some(places, 5))}]\n");
        if (!tape.OnceIn(3))
            text.Append($"  crops: [{string.Join(", ", tape.Some(crops, 20))}]\n");
        foreach ((string key, int most) in s_numbers.Where(_ => tape.OnceIn(2)))
            text.Append($"  {key}: {UsesDrawn.Number(1 + tape.Below(most))}\n");
        if (record.Rates.FirstOrDefault(rate => rate.Product is not null) is { } rate && tape.OnceIn(3))
        {
            string low = UsesDrawn.Number(rate.Product!.Value.Low);
            string high = UsesDrawn.Number(UsesDrawn.Between(rate.Product.Value.Low, rate.Product.Value.High, tape));
            text.Append($"  rates:\n    - {{ product-per-area: [{low}, {high}], unit: {rate.Unit} }}\n");
        }
    }
}
