using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>
/// Reads the keys of one map. Each key that is asked for is thereby declared; <see cref="Finish"/> then reports the
/// keys that nobody asked for. What can't be read is reported and stands in as an empty value, so that reading goes on
/// to the next problem; whoever reports a problem never hands out the value.
/// </summary>
internal sealed partial class MappingReader
{
    private readonly MappingNode _map;
    private readonly string _what;
    private readonly List<string> _declared = [];
    private readonly List<string> _moved = [];

    /// <summary>A reader of the map, which is called <paramref name="what"/> in problems.</summary>
    public MappingReader(MappingNode map, ReadContext context, string what)
    {
        _map = map;
        _what = what;
        Context = context;
    }

    /// <summary>What the readers of this file share.</summary>
    public ReadContext Context { get; }

    /// <summary>The map itself, as a place for problems.</summary>
    public Node Node => _map;

    /// <summary>Where the map stands.</summary>
    public Place Where => Context.At(_map);

    /// <summary>A reader of the node when it is a map; otherwise a problem and null.</summary>
    public static MappingReader? Of(Node node, ReadContext context, string what)
    {
        if (node is MappingNode map)
            return new MappingReader(map, context, what);
        context.Report(node, node.Described, $"{what}, as a map of keys");
        return null;
    }

    /// <summary>Whether the key is there. Declares it.</summary>
    public bool Has(string key) => Optional(key) is not null;

    /// <summary>The node under the key, or null. Declares the key.</summary>
    public Node? Optional(string key)
    {
        if (!_declared.Contains(key))
            _declared.Add(key);
        return _map.Find(key);
    }

    /// <summary>The node under the key, or a problem and null. Declares the key.</summary>
    public Node? Required(string key)
    {
        Node? value = Optional(key);
        if (value is null)
            Context.Report(_map, $"{_what} without '{key}'", $"the key '{key}'");
        return value;
    }

    /// <summary>Reports the key, if it is there, and where its content belongs.</summary>
    public void Moved(string key, string expected)
    {
        _moved.Add(key);
        if (_map.Entries.FirstOrDefault(entry => entry.Key.Text == key) is { } entry)
            Context.Report(entry.Key, $"the key '{key}' in {_what}", expected);
    }

    /// <summary>Reports the keys that nobody asked for. To be called when everything else has been read.</summary>
    public void Finish()
    {
        foreach (Entry entry in _map.Entries)
        {
            string key = entry.Key.Text;
            if (!_declared.Contains(key) && !_moved.Contains(key))
                Context.Report(
                    entry.Key,
                    $"the key '{key}'",
                    $"keys of {_what}: {string.Join(", ", _declared)}",
                    NearestWord.Of(key, _declared)
                );
        }
    }

    /// <summary>
    /// Reads <c>memory</c> and reports the unknown keys. A field that is said to be from memory must be a field of the
    /// record.
    /// </summary>
    public ImmutableArray<string> FinishWithMemory()
    {
        ImmutableArray<string> memory = Words("memory", null, isRequired: false);
        if (Optional("memory") is SequenceNode list)
        {
            var fields = new ValidWords($"the name of a field of {_what}", _declared);
            foreach (ScalarNode item in list.Items.OfType<ScalarNode>())
                Context.CheckWord(item, item.Text, fields);
        }

        Finish();
        return memory;
    }
}
