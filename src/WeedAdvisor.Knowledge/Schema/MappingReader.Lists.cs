using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>Values of several parts: ranges, lists of words and texts, maps, lists of maps.</summary>
internal sealed partial class MappingReader
{
    /// <summary>A required range, <c>[low, high]</c> or one number.</summary>
    public Span Range(string key, decimal low, decimal high) => Range(Required(key), low, high) ?? default;

    /// <summary>A range, or null when the key is missing.</summary>
    public Span? OptionalRange(string key, decimal low, decimal high) => Range(Optional(key), low, high);

    /// <summary>A required set of words; it may be empty.</summary>
    public WordSet WordSet(string key, string notation) => Readings.WordSet.Of(Words(key, notation, isRequired: true));

    /// <summary>A set of words, empty when the key is missing.</summary>
    public WordSet OptionalWordSet(string key, string notation) =>
        Readings.WordSet.Of(Words(key, notation, isRequired: false));

    /// <summary>Words in the order written; a null notation accepts any.</summary>
    public ImmutableArray<string> Words(string key, string? notation, bool isRequired)
    {
        Node? node = isRequired ? Required(key) : Optional(key);
        ValidWords? valid = notation is null ? null : Context.Lexicon.Of(notation);
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (ScalarNode item in ScalarsOf(node, valid?.Expected ?? "words"))
        {
            Context.CheckWord(item, item.Text, valid);
            if (words.Contains(item.Text))
                Context.Report(item, $"'{item.Text}' a second time", "each word once in a list");
            else
                words.Add(item.Text);
        }

        return words.DrainToImmutable();
    }

    /// <summary>Texts in the order written; none when the key is missing.</summary>
    public ImmutableArray<string> Texts(string key) => [.. ScalarsOf(Optional(key), "texts").Select(item => item.Text)];

    /// <summary>The keys of the sources a value rests on: at least one.</summary>
    public ImmutableArray<string> Sources()
    {
        ImmutableArray<string> sources = Words("source", "sources", isRequired: true);
        if (sources.IsEmpty && _map.Find("source") is SequenceNode empty)
            Context.Report(empty, empty.Described, "at least one source; 'common-practice' where none is published");
        return sources;
    }

    /// <summary>Numbers in the order written, each between the limits.</summary>
    public ImmutableArray<decimal> Numbers(string key, decimal low, decimal high)
    {
        var numbers = ImmutableArray.CreateBuilder<decimal>();
        foreach (ScalarNode item in ScalarsOf(Required(key), "numbers"))
            numbers.Add(Number(item, low, high) ?? 0);
        return numbers.DrainToImmutable();
    }

    /// <summary>Months, 1 to 12, each once.</summary>
    public ImmutableArray<int> Months(string key)
    {
        var months = ImmutableArray.CreateBuilder<int>();
        foreach (ScalarNode item in ScalarsOf(Required(key), "months"))
        {
            if (Number(item, 1, 12) is not { } number)
                continue;
            int month = (int)Math.Clamp(number, 1, 12);
            if (number != decimal.Truncate(number) || months.Contains(month))
                Context.Report(item, $"{item.Described} as a month", "whole months from 1 to 12, each once");
            months.Add(month);
        }

        return months.DrainToImmutable();
    }

    /// <summary>A reader of the map under the key, or null when the key is missing.</summary>
    public MappingReader? OptionalMap(string key, string what) =>
        Optional(key) is { } node ? Of(node, Context, what) : null;

    /// <summary>One value for each map of the list under the key; none when the key is missing.</summary>
    public ImmutableArray<T> Each<T>(string key, string what, Func<MappingReader, T> read) =>
        Each(Optional(key), Context, what, read);

    /// <summary>One value for each map of a list.</summary>
    public static ImmutableArray<T> Each<T>(Node? node, ReadContext context, string what, Func<MappingReader, T> read)
    {
        if (node is null)
            return [];
        if (node is not SequenceNode list)
        {
            context.Report(node, node.Described, $"a list; each item {what}");
            return [];
        }

        var values = ImmutableArray.CreateBuilder<T>(list.Items.Count);
        foreach (Node item in list.Items)
        {
            if (Of(item, context, what) is { } map)
                values.Add(read(map));
        }

        return values.DrainToImmutable();
    }

    private Span? Range(Node? node, decimal low, decimal high)
    {
        if (node is null)
            return null;
        if (node is not SequenceNode list)
            return Number(node, low, high) is { } number ? new Span(number, number) : null;
        if (list.Items.Count != 2)
        {
            Context.Report(node, $"a list of {list.Items.Count}", "a range: [low, high]");
            return null;
        }

        if (Number(list.Items[0], low, high) is not { } from || Number(list.Items[1], low, high) is not { } to)
            return null;
        if (from > to)
            Context.Report(
                node,
                $"[{ScalarGrammar.Write(from)}, {ScalarGrammar.Write(to)}]",
                "a range with the lower number first"
            );
        return new Span(from, to);
    }

    private IEnumerable<ScalarNode> ScalarsOf(Node? node, string expected)
    {
        if (node is null)
            yield break;
        if (node is not SequenceNode list)
        {
            Context.Report(node, node.Described, $"a list, as in [a, b]: {expected}");
            yield break;
        }

        foreach (Node item in list.Items)
        {
            if (Scalar(item, expected) is { } scalar)
                yield return scalar;
        }
    }
}
