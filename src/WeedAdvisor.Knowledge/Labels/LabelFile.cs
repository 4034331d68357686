using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Labels;

/// <summary>
/// Reads a label book, <c>labels.yaml</c>: a list with one entry for each label that the grower has read.
/// </summary>
public static class LabelFile
{
    private const decimal MostDays = 3650;
    private const decimal MostHours = 24 * 60;

    /// <summary>Reads the file.</summary>
    /// <param name="path">The file; at most 4 MB.</param>
    /// <param name="knowledge">The knowledge whose treatments the labels belong to.</param>
    /// <param name="today">Today: no label was read later.</param>
    /// <returns>
    /// The book; or problems: bad YAML, an unknown word, other actives, two labels of one treatment, a day still to
    /// come.
    /// </returns>
    public static Outcome<LabelBook, Problem> Read(string path, KnowledgeBase knowledge, DateOnly today)
    {
        string name = path.Replace('\\', '/');
        byte[]? bytes = FileBytes.Read(path, name, SourceText.VisitFileLimit, out Problem? problem);
        string? text = bytes is null ? null : SourceText.Decode(name, bytes, out problem);
        return text is null ? Outcome<LabelBook, Problem>.Bad([problem!]) : Build(text, name, knowledge, today);
    }

    /// <summary>Reads a label book from text, under the same rules.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="knowledge">The knowledge whose treatments the labels belong to.</param>
    /// <param name="today">Today: no label was read later.</param>
    public static Outcome<LabelBook, Problem> Parse(string text, string name, KnowledgeBase knowledge, DateOnly today)
    {
        string? accepted = SourceText.Accept(name, text, SourceText.VisitFileLimit, out Problem? problem);
        return accepted is null ? Outcome<LabelBook, Problem>.Bad([problem!]) : Build(accepted, name, knowledge, today);
    }

    private static Outcome<LabelBook, Problem> Build(string text, string name, KnowledgeBase knowledge, DateOnly today)
    {
        ParsedFile parsed = TreeBuilder.Build(name, text);
        var context = new ReadContext(name, LexiconOfKnowledge.Of(knowledge));
        ImmutableArray<ProductLabel> labels = parsed.Root is null
            ? []
            : MappingReader.Each(parsed.Root, context, "a label", map => Label(map, knowledge, today));
        Problem[] problems = [.. parsed.Problems, .. context.Problems, .. Twice(labels)];
        return problems.Length > 0
            ? Outcome<LabelBook, Problem>.Bad(Problem.InOrder(problems))
            : Outcome<LabelBook, Problem>.Good(
                new LabelBook(labels, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))))
            );
    }

    private static ProductLabel Label(MappingReader map, KnowledgeBase knowledge, DateOnly today)
    {
        var label = new ProductLabel
        {
            Id = map.Id(),
            Name = ActionParts.Name(map),
            Treatment = Treatment(map, knowledge),
            RegistrationNumber = map.OptionalText("registration-number"),
            Read = map.Date("read"),
            Sites = map.OptionalWordSet("sites", "answers:place"),
            Crops = map.OptionalWordSet("crops", "crops"),
            EntryHours = map.OptionalNumber("entry-hours", 0, MostHours),
            WaitAfterPottingDays = map.OptionalNumber("wait-after-potting-days", 0, MostDays),
            WaitBareRootDays = map.OptionalNumber("wait-bare-root-days", 0, MostDays),
            DaysBeforeCovering = map.OptionalNumber("days-before-covering", 0, MostDays),
            RepeatAfterDays = map.OptionalNumber("repeat-after-days", 0, MostDays),
            UsesPerYear = map.OptionalNumber("uses-per-year", 0, 366),
            YearlyLimitKgAiHa = map.OptionalNumber("yearly-limit-kg-ai-ha", 0, 10_000),
            WaterInWithinDays = map.OptionalNumber("water-in-within-days", 0, MostDays),
            SignalWord = map.OptionalWord("signal-word", "list:signal-word"),
            Rates = map.Each("rates", "a rate", Rate),
            Where = map.Where,
        };
        if (label.Read > today)
            map.Context.Report(
                map.Optional("read")!,
                ScalarGrammar.Write(label.Read),
                $"a day not after today, {ScalarGrammar.Write(today)}"
            );
        CheckActives(map, label, knowledge);
        map.Finish();
        return label;
    }

    // Whoever finds an old bag learns what becomes of it, instead of a list of other treatments.
    private static string Treatment(MappingReader map, KnowledgeBase knowledge)
    {
        if (
            map.Optional("treatment") is not ScalarNode { Text: var named } node
            || knowledge.GoneAs(named) is not { } gone
        )
            return map.Word("treatment", "treatments");
        map.Context.Report(node, $"'{named}'", $"no label of it: {knowledge.WithdrawnText(gone).TrimEnd('.')}");
        return "";
    }

    private static Rate Rate(MappingReader map)
    {
        var rate = new Rate(
            map.Range("product-per-area", 0, 1_000_000),
            map.Word("unit", "rate-units"),
            map.OptionalRange("ai-lb-per-acre", 0, 1000),
            [SourceReader.LabelBook],
            map.OptionalText("note")
        );
        map.Finish();
        return rate;
    }

    // The label in the grower's hand must be of what the record speaks of.
    private static void CheckActives(MappingReader map, ProductLabel label, KnowledgeBase knowledge)
    {
        WordSet named = map.OptionalWordSet("actives", "actives");
        if (
            map.Optional("actives") is not { } node
            || !knowledge.Treatments.TryGetValue(label.Treatment, out Treatment? record)
        )
            return;
        WordSet held = PastProduct.ActivesOf(record);
        if (!named.Equals(held))
            map.Context.Report(node, $"the actives {named}", $"those of '{record.Id}', {held}; or another treatment");
    }

    private static IEnumerable<Problem> Twice(IEnumerable<ProductLabel> labels) =>
        labels
            .Where(label => label.Treatment.Length > 0)
            .GroupBy(label => label.Treatment, StringComparer.Ordinal)
            .SelectMany(same => same.Skip(1))
            .Select(label => new Problem(
                label.Where,
                $"a second label of '{label.Treatment}'",
                "one label for a treatment: the one that will be used"
            ));
}
