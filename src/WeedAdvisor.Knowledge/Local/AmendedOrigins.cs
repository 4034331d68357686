using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Local;

/// <summary>
/// Where the values of an amended record come from: what the nursery says otherwise is its own word, what it adds to a
/// list stands beside the shipped sources, and the rest keeps them.
/// </summary>
internal static class AmendedOrigins
{
    /// <summary>The key of the map from field to source.</summary>
    public const string From = "from";

    private const string All = "all";

    /// <summary>Writes the sources anew.</summary>
    /// <param name="merged">The entries of the record, changed in place.</param>
    /// <param name="own">The nursery's record.</param>
    /// <param name="also">What it adds to lists; null when nothing.</param>
    /// <param name="fields">Which fields are values.</param>
    public static void Put(List<Entry> merged, MappingNode own, MappingNode? also, ValueFields fields)
    {
        int at = merged.FindIndex(entry => entry.Key.Text == From);
        if (at < 0 || merged[at].Value is not MappingNode shipped)
            return;
        Entry[] values = [.. merged.Where(entry => fields.Values.Contains(entry.Key.Text))];
        Entry[] named = [.. values.Select(value => new Entry(value.Key, Of(value.Key, shipped, own, also)))];
        merged[at] = merged[at] with { Value = new MappingNode(named, shipped.Line, shipped.Column) };
    }

    private static Node Of(ScalarNode field, MappingNode shipped, MappingNode own, MappingNode? also)
    {
        var mine = new ScalarNode(SourceReader.OwnFolder, isPlain: true, field.Line, field.Column);
        Node? before = shipped.Find(field.Text) ?? shipped.Find(All);
        if (before is null || own.Find(field.Text) is not null)
            return mine;
        if (also?.Find(field.Text) is null)
            return before;
        IReadOnlyList<Node> sources = before is SequenceNode list ? list.Items : [before];
        return new SequenceNode([.. sources, mine], before.Line, before.Column);
    }
}
