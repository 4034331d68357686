using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// Reads a visit. A key that is left out, or says <c>not-known</c>, is not known; an empty list says that there is
/// none.
/// </summary>
/// <param name="questions">The questions, by id.</param>
internal sealed class VisitReader(IReadOnlyDictionary<string, Question> questions)
{
    /// <summary>The word for an answer that the grower does not have.</summary>
    public const string NotKnown = "not-known";

    /// <summary>The format that is written now. Files of earlier formats are read for ever.</summary>
    public const int Format = 2;

    /// <summary>The visit. The map is finished by the caller, who may read more keys of it.</summary>
    public Visit Read(MappingReader map)
    {
        string id = map.Id("visit");
        string? title = map.OptionalText("title");
        DateOnly date = map.Date("date");
        string? nursery = map.OptionalText("nursery");
        UnitsWanted? units = UnitsWords.Find(map.OptionalWord("units", UnitsWords.Notation));
        ReadFormat(map);
        ImmutableSortedDictionary<string, Answer> head = Answers(map, date);
        ImmutableArray<VisitArea> areas = map.Required("areas") is { } node
            ? MappingReader.Each(node, map.Context, "an area", area => Area(area, date, head))
            : [];
        ReportRepeats(map.Optional("areas"), "id", "the area", map.Context);
        return new Visit(id, title, date, nursery, areas) { Head = head, Units = units };
    }

    private static void ReadFormat(MappingReader map)
    {
        if (map.OptionalNumber("format", 1, int.MaxValue) is { } format && format is not (1 or Format))
            map.Context.Report(
                map.Optional("format")!,
                $"format {ScalarGrammar.Write(format)}",
                $"format 1 or {Format}: this file is of a newer program"
            );
    }

    private VisitArea Area(MappingReader map, DateOnly visitDate, ImmutableSortedDictionary<string, Answer> head)
    {
        var area = new VisitArea(
            map.Id(),
            map.Text("name"),
            head.SetItems(Answers(map, visitDate)),
            Unless(map, "weeds", () => map.Each("weeds", "a weed seen", Seen)),
            Unless(map, "past", () =>
                map.Each("past", "an earlier application", past => PastReader.Read(past, visitDate))
            )
        );
        ReportWeedsTwice(map.Optional("weeds"), map.Context);
        ReportUseToldAndDenied(map, area, visitDate);
        map.Finish();
        return area;
    }

    private static void ReportUseToldAndDenied(MappingReader map, VisitArea area, DateOnly visitDate)
    {
        if (!PutOnLately.IsContradicted(area, visitDate))
            return;
        string day = ScalarGrammar.Write(PutOnLately.LastTold(area, visitDate)!.Date!.Value);
        map.Context.Report(
            map.Optional("past")!,
            $"a use of {day} although '{PutOnLately.Question}' is no",
            $"'{PutOnLately.Question}: yes' in this area, or another day of that use"
        );
    }

    private ImmutableSortedDictionary<string, Answer> Answers(MappingReader map, DateOnly visitDate)
    {
        var answers = ImmutableSortedDictionary.CreateBuilder<string, Answer>(StringComparer.Ordinal);
        if (map.OptionalMap("answers", "answers by question") is not { Node: MappingNode given })
            return answers.ToImmutable();
        var reader = new AnswerReader(map.Context, visitDate);
        foreach (Entry entry in given.Entries)
        {
            string id = entry.Key.Text;
            if (!questions.TryGetValue(id, out Question? question))
                map.Context.CheckWord(entry.Key, id, map.Context.Lexicon.Of("questions"));
            else if (reader.Read(question, entry) is { } answer)
                answers[id] = answer;
        }

        return answers.ToImmutable();
    }

    private static WeedSeen Seen(MappingReader map)
    {
        var seen = new WeedSeen(
            map.Word("weed", "weeds"),
            IsNotKnown(map, "stage") ? null : map.OptionalWord("stage", "list:stage"),
            IsNotKnown(map, "cover-percent") ? null : map.OptionalNumber("cover-percent", 0, 100)
        )
        {
            PotsPercent = IsNotKnown(map, "pots-percent") ? null : map.OptionalNumber("pots-percent", 0, 100),
            Stands = IsNotKnown(map, "stands") ? null : map.OptionalWord("stands", WeedSeen.Places),
        };
        map.Finish();
        return seen;
    }

    private static ImmutableArray<T>? Unless<T>(MappingReader map, string key, Func<ImmutableArray<T>> read) =>
        map.Has(key) && !IsNotKnown(map, key) ? read() : null;

    /// <summary>Whether the key says that its value is not known. Declares it.</summary>
    internal static bool IsNotKnown(MappingReader map, string key) =>
        map.Optional(key) is ScalarNode { Text: NotKnown };

    // One weed may stand there as seedlings and in flower; in one stage it is told once.
    private static void ReportWeedsTwice(Node? list, ReadContext context)
    {
        var seen = new HashSet<(string Weed, string? Stage)>();
        foreach (MappingNode item in (list as SequenceNode)?.Items.OfType<MappingNode>() ?? [])
        {
            string? stage = item.Find("stage") is ScalarNode { Text: not NotKnown } told ? told.Text : null;
            if (item.Find("weed") is ScalarNode id && !seen.Add((id.Text, stage)))
                context.Report(
                    id,
                    $"the weed '{id.Text}' a second time {(stage is null ? "without a stage" : $"as '{stage}'")}",
                    "each stage of a weed once"
                );
        }
    }

    private static void ReportRepeats(Node? list, string key, string what, ReadContext context)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (MappingNode item in (list as SequenceNode)?.Items.OfType<MappingNode>() ?? [])
        {
            if (item.Find(key) is ScalarNode id && !seen.Add(id.Text))
                context.Report(id, $"{what} '{id.Text}' a second time", "each once");
        }
    }
}
