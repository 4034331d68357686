using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads the sources: a map from key to what is cited.</summary>
internal static class SourceReader
{
    /// <summary>The key of what the grower read on his own label.</summary>
    public const string LabelBook = "label-book";

    /// <summary>The key of what a nursery says in its own folder.</summary>
    public const string OwnFolder = "own-folder";

    /// <summary>The keys that stand for "no published source" and need no entry.</summary>
    public static ImmutableArray<Source> Always { get; } =
    [
        new("common-practice", null, "Common practice of the trade", null, null, null, null),
        new("invented", null, "Invented for this program", null, null, null, null),
        new(LabelBook, null, "The grower's own label book", null, null, null, null),
        new(OwnFolder, null, "The nursery's own folder", null, null, null, null),
        new("memory", null, "From memory, not confirmed", null, null, null, null),
    ];

    /// <summary>All sources of the file.</summary>
    public static IEnumerable<Source> Read(Node root, ReadContext context)
    {
        if (MappingReader.Of(root, context, "sources by key") is not { Node: MappingNode sources })
            yield break;
        foreach (Entry entry in sources.Entries)
        {
            if (!ScalarGrammar.IsId(entry.Key.Text))
                context.Report(entry.Key, entry.Key.Described, "a key: lower-case words joined by hyphens");
            if (MappingReader.Of(entry.Value, context, "a source") is { } map)
                yield return One(entry.Key.Text, map);
        }
    }

    private static Source One(string key, MappingReader map)
    {
        var source = new Source(
            key,
            map.OptionalText("authors"),
            map.Text("title"),
            map.OptionalText("year"),
            map.OptionalText("publisher"),
            map.OptionalText("url"),
            map.OptionalText("note")
        );
        map.Finish();
        return source;
    }
}
