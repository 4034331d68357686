using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>
/// Reads a row of a table of ratings: one grade, as printed, of every treatment of the row on every weed of the row.
/// </summary>
/// <param name="source">Key of the source whose table it is.</param>
/// <param name="scale">The scale of the table, for rows that name none.</param>
internal sealed class RatingRowReader(string source, string scale)
{
    /// <summary>Where the words for scales come from.</summary>
    public const string Scales = "list:rating-scale";

    private const string Also = "also";

    /// <summary>What the row says, pair by pair.</summary>
    public ImmutableArray<RatedPair> Read(MappingReader map)
    {
        ImmutableArray<string> weeds = AtLeastOne(map, "weeds", "targets");
        ImmutableArray<string> treatments = AtLeastOne(map, "treatments", "treatments");
        string grade = map.Word("grade", "grades");
        string raw = map.Text("raw");
        string own = map.OptionalWord("scale", Scales) ?? scale;
        string? note = map.OptionalText("note");
        ImmutableArray<string> sources = [source, .. Others(map)];
        bool isAgain = map.OptionalFlag("again");
        map.Finish();
        return
        [
            .. from treatment in treatments
            from weed in weeds
            select new RatedPair(treatment, new Rating(weed, grade, own, raw, sources, note), isAgain, map.Where),
        ];
    }

    private ImmutableArray<string> Others(MappingReader map)
    {
        ImmutableArray<string> others = map.Words(Also, "sources", isRequired: false);
        if (others.Contains(source))
            map.Context.Report(
                map.Optional(Also)!,
                $"'{source}' under '{Also}'",
                "other sources than that of the table"
            );
        return others;
    }

    private static ImmutableArray<string> AtLeastOne(MappingReader map, string key, string notation)
    {
        ImmutableArray<string> words = map.Words(key, notation, isRequired: true);
        if (map.Optional(key) is SequenceNode { Items.Count: 0 } empty)
            map.Context.Report(empty, empty.Described, $"at least one of the {key} that it rates");
        return words;
    }
}
