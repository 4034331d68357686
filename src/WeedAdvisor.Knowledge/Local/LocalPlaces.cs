using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Local;

/// <summary>
/// Places of the nursery's own: each is one more answer to the question for the place. Practices of the place that it
/// is like go on there too; chemicals do not, since no label names it.
/// </summary>
internal static class LocalPlaces
{
    private const string Expected = "a place: { id: ..., text: ..., like: ... }";

    /// <summary>Adds the places to the questions and the practices.</summary>
    public static void Add(SequenceNode places, string file, List<PlacedFile> files, List<Problem> problems)
    {
        foreach (Node item in places.Items)
        {
            if (
                item is not MappingNode place
                || place.Find("id") is not ScalarNode id
                || place.Find("text") is not ScalarNode
                || !ScalarGrammar.IsId(id.Text)
            )
            {
                problems.Add(new Problem(new Place(file, item.Line, item.Column), item.Described, Expected));
                continue;
            }

            if (place.Entries.FirstOrDefault(entry => entry.Key.Text is not ("id" or "text" or "like")) is { } unknown)
                problems.Add(
                    new Problem(
                        new Place(file, unknown.Key.Line, unknown.Key.Column),
                        unknown.Key.Described,
                        Expected,
                        NearestWord.Of(unknown.Key.Text, ["id", "text", "like"])
                    )
                );
            string[] known = [.. Answers(files)];
            if (known.Contains(id.Text))
                problems.Add(
                    new Problem(new Place(file, id.Line, id.Column), $"the place '{id.Text}' a second time", "a new id")
                );
            else if (place.Find("like") is { } like && !known.Contains((like as ScalarNode)?.Text))
                problems.Add(
                    new Problem(
                        new Place(file, like.Line, like.Column),
                        like.Described,
                        "a place that the questions know",
                        NearestWord.Of((like as ScalarNode)?.Text ?? "", known)
                    )
                );
            else
                Put(place, id, files);
        }
    }

    private static IEnumerable<string> Answers(List<PlacedFile> files) =>
        files
            .Where(one => one.Role == FileRole.Questions)
            .SelectMany(one => (one.Parsed.Root as SequenceNode)?.Items ?? [])
            .OfType<MappingNode>()
            .Where(IsPlace)
            .SelectMany(question => (question.Find("answers") as SequenceNode)?.Items ?? [])
            .OfType<MappingNode>()
            .Select(answer => (answer.Find("id") as ScalarNode)?.Text ?? "");

    private static bool IsPlace(MappingNode record) => (record.Find("id") as ScalarNode)?.Text == QuestionIds.Place;

    private static void Put(MappingNode place, ScalarNode id, List<PlacedFile> files)
    {
        var answer = new MappingNode(
            [.. place.Entries.Where(entry => entry.Key.Text != "like")],
            place.Line,
            place.Column
        );
        string? like = (place.Find("like") as ScalarNode)?.Text;
        for (int i = 0; i < files.Count; i++)
        {
            if (files[i].Parsed.Root is not SequenceNode records)
                continue;
            Func<MappingNode, MappingNode>? change = files[i].Role switch
            {
                FileRole.Questions => record => IsPlace(record) ? With(record, "answers", answer) : record,
                FileRole.Practices => record => Holds(record, like) ? With(record, "places", id) : record,
                _ => null,
            };
            if (change is null)
                continue;
            Node[] items = [.. records.Items.Select(item => item is MappingNode record ? change(record) : item)];
            files[i] = files[i] with
            {
                Parsed = files[i].Parsed with { Root = new SequenceNode(items, records.Line, records.Column) },
            };
        }
    }

    private static bool Holds(MappingNode practice, string? place) =>
        place is not null
        && practice.Find("places") is SequenceNode places
        && places.Items.OfType<ScalarNode>().Any(word => word.Text == place);

    private static MappingNode With(MappingNode record, string key, Node item) =>
        new(
            [
                .. record.Entries.Select(entry =>
                    entry.Key.Text == key && entry.Value is SequenceNode list
                        ? entry with
                        {
                            Value = new SequenceNode([.. list.Items, item], list.Line, list.Column),
                        }
                        : entry
                ),
            ],
            record.Line,
            record.Column
        );
}
