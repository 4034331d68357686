using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads the table of ratings of one source, which is named after it.</summary>
internal static class RatingTableReader
{
    private const string Source = "source";
    private const string Ratings = "ratings";

    /// <summary>The table; none when the file is not one.</summary>
    public static IEnumerable<RatingTable> Read(Node root, ReadContext context)
    {
        if (MappingReader.Of(root, context, "a table of ratings") is not { } map)
            yield break;
        string source = map.Word(Source, "sources");
        CheckName(map, source);
        string scale = map.Word("scale", RatingRowReader.Scales);
        DateOnly? day = map.CheckedDay();
        map.CheckedAgainst([source]);
        map.Required(Ratings);
        var rows = new RatingRowReader(source, scale);
        ImmutableArray<RatedPair> pairs = [.. map.Each(Ratings, "a rating", rows.Read).SelectMany(row => row)];
        map.Finish();
        yield return new RatingTable(source, day, pairs, map.Where);
    }

    // Whoever holds a page in his hands finds its table by the name of the file, and no source has two. A source that
    // is not known has been reported as such.
    private static void CheckName(MappingReader map, string source)
    {
        string name = System.IO.Path.GetFileNameWithoutExtension(map.Context.File);
        if (source == name || map.Optional(Source) is not ScalarNode node)
            return;
        if (map.Context.Lexicon.Of("sources")?.Contains(source) != false)
            map.Context.Report(
                node,
                $"the table of '{source}' in a file named {name}.yaml",
                $"a file named {source}.yaml, or '{Source}: {name}'"
            );
    }
}
