using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>Where each value of a record comes from: the map <c>from</c>, from field to source.</summary>
internal sealed partial class MappingReader
{
    private const string AllFields = "all";
    private const string SourcesExpected = "a key of sources.yaml, 'memory' or 'common-practice', or a list of them";

    /// <summary>
    /// Reads <c>from</c> and reports the unknown keys. Every value of the record has its entry there, and nothing else
    /// has; <c>all</c> stands for all values of a record that rests on one source.
    /// </summary>
    public Origins FinishWithOrigins(ValueFields fields)
    {
        Node? from = Required("from");
        ImmutableArray<string> searched = Words("searched", "sources", isRequired: false);
        Finish();
        if (from is null)
            return Origins.None;
        if (Of(from, Context, "a source for each value") is not { Node: MappingNode named })
            return Origins.None;
        Entry[] held = [.. _map.Entries.Where(entry => fields.Values.Contains(entry.Key.Text))];
        ImmutableArray<FieldSource> values = named.Find(AllFields) is { } one
            ? OfAll(named, one, held)
            : OfEach(named, held, fields);
        var origins = new Origins(values, Rows(fields)) { Searched = searched };
        // A price is of its day, whoever set it.
        if (fields != ValueFields.Number)
            CheckedAgainst([.. origins.Own.SelectMany(origin => origin.Sources), .. searched]);
        if (origins.Memory.FirstOrDefault(fields.Gates.Contains) is { } gate && searched.IsEmpty)
            Context.Report(
                named.Find(gate) ?? from,
                $"'{gate}' from memory, without 'searched'",
                "keys of the sources that were looked through for it, as in searched: [a, b]"
            );
        return origins;
    }

    private ImmutableArray<FieldSource> OfAll(MappingNode named, Node one, Entry[] held)
    {
        ImmutableArray<string> sources = SourcesOf(one);
        if (named.Entries.Count > 1 || sources.Length > 1)
            Context.Report(one, "'all' beside other sources", "'all' for one source; else an entry for each value");
        return [.. held.Select(entry => new FieldSource(entry.Key.Text, sources))];
    }

    private ImmutableArray<FieldSource> OfEach(MappingNode named, Entry[] held, ValueFields fields)
    {
        string[] names = [.. held.Select(entry => entry.Key.Text)];
        foreach (Entry entry in named.Entries.Where(entry => !names.Contains(entry.Key.Text)))
        {
            string name = entry.Key.Text;
            string found = fields.Values.Contains(name)
                ? $"a source for '{name}', which {_what} here does not hold"
                : $"a source for '{name}'";
            Context.Report(entry.Key, found, $"a value of {_what}", NearestWord.Of(name, names));
        }

        var origins = ImmutableArray.CreateBuilder<FieldSource>(held.Length);
        foreach (Entry value in held)
        {
            string field = value.Key.Text;
            if (named.Find(field) is { } sources)
                origins.Add(new FieldSource(field, SourcesOf(sources)));
            else
                Context.Report(
                    value.Key,
                    $"no source for '{field}'",
                    $"'{field}' under 'from': {SourcesExpected}",
                    NearestWord.Of(field, named.Entries.Select(entry => entry.Key.Text).Except(names))
                );
        }

        return origins.DrainToImmutable();
    }

    private ImmutableArray<string> SourcesOf(Node node)
    {
        ValidWords? valid = Context.Lexicon.Of("sources");
        IReadOnlyList<Node> items = node is SequenceNode list ? list.Items : [node];
        if (items.Count == 0)
            Context.Report(node, node.Described, "at least one source; 'common-practice' where none is published");
        var sources = ImmutableArray.CreateBuilder<string>(items.Count);
        foreach (Node item in items)
        {
            if (Scalar(item, SourcesExpected) is not { } key)
                continue;
            Context.CheckWord(key, key.Text, valid);
            if (sources.Contains(key.Text))
                Context.Report(key, $"'{key.Text}' a second time", "each word once in a list");
            else
                sources.Add(key.Text);
        }

        return sources.DrainToImmutable();
    }

    // Rows have been read, and what is wrong with their sources reported, by the reader of the rows.
    private ImmutableArray<FieldSource> Rows(ValueFields fields) =>
        [
            .. _map
                .Entries.Where(entry => fields.Rows.Contains(entry.Key.Text))
                .Select(entry => new FieldSource(
                    entry.Key.Text,
                    [
                        .. RowsOf(entry.Value)
                            .SelectMany(row => row.Find("source") is SequenceNode keys ? keys.Items : [])
                            .OfType<ScalarNode>()
                            .Select(key => key.Text)
                            .Distinct(StringComparer.Ordinal),
                    ]
                )),
        ];

    private static IEnumerable<MappingNode> RowsOf(Node node) =>
        node is SequenceNode list ? list.Items.OfType<MappingNode>() : [.. new[] { node }.OfType<MappingNode>()];
}
