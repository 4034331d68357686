namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>An item that a list is to hold.</summary>
/// <param name="Old">The item's number in the list as it stands, from 0; null for a new one.</param>
/// <param name="Lines">Its text without the dash; null to leave an old one as it stands.</param>
internal readonly record struct ListItem(int? Old, string[]? Lines);

/// <summary>
/// Changes to the text of a YAML file that stands in lines: each touches the lines of one value and leaves all others,
/// with their comments and blank lines, as they are. A comment on a line of its own stays unless it stands within what
/// is taken out; a comment behind a value goes with the line it is on, and stays when only the value changes. Nothing
/// is checked: whoever asked for it reads the result again.
/// </summary>
internal sealed class BlockText(string text)
{
    private readonly List<(int Start, int End, string With)> _edits = [];
    private bool _isBeyond;

    /// <summary>Whether nothing was changed yet.</summary>
    public bool IsUntouched => _edits.Count == 0 && !_isBeyond;

    /// <summary>Notes that what is wanted cannot be done line by line.</summary>
    public void GiveUp() => _isBeyond = true;

    /// <summary>The text with all changes made; null when one of them could not be.</summary>
    public string? Text()
    {
        var written = new System.Text.StringBuilder(text.Length);
        int at = 0;
        foreach ((int start, int end, string with) in _edits.OrderBy(edit => edit.Start).ThenBy(edit => edit.End))
        {
            if (start < at)
                return null;
            written.Append(text, at, start - at).Append(with);
            at = end;
        }

        return _isBeyond ? null : written.Append(text, at, text.Length - at).ToString();
    }

    /// <summary>Gives a key of a map a value on one line.</summary>
    /// <param name="map">The map; not in brackets.</param>
    /// <param name="key">The key.</param>
    /// <param name="yaml">The value.</param>
    /// <param name="after">The keys behind which a new one goes: behind the last of them that is there.</param>
    public void Set(MappingNode map, string key, string yaml, params ReadOnlySpan<string> after)
    {
        if (EntryOf(map, key) is not { } entry)
            Insert(map, [$"{key}: {yaml}"], after);
        else if (IsOnOneLine(entry.Value))
            Replace(entry.Value.Extent.Start, EndOf(entry.Value), yaml);
        else
            Replace(entry.Key.Extent.Start, EndOf(entry), $"{key}: {yaml}");
    }

    /// <summary>Gives a key of a map a list or map in lines below it.</summary>
    public void SetLines(MappingNode map, string key, IEnumerable<string> lines, params ReadOnlySpan<string> after)
    {
        string[] below = [.. lines.Select(line => "  " + line)];
        if (EntryOf(map, key) is not { } entry)
        {
            Insert(map, [$"{key}:", .. below], after);
            return;
        }

        // What stood behind the old value on its last line would otherwise stand behind the last of the new lines.
        int end = EndOf(entry),
            lineEnd = EndOfLine(end);
        string indent = new(' ', map.Column - 1);
        string rest = text[end..lineEnd].TrimEnd('\r', '\n'),
            eol = Eol(end);
        Replace(
            entry.Key.Extent.Start,
            end + rest.Length,
            $"{key}:{rest}{string.Concat(below.Select(line => eol + indent + line))}"
        );
    }

    /// <summary>
    /// Takes a key and its value out of a map; where its line begins with a dash, the value becomes another one that
    /// says the same.
    /// </summary>
    public void Remove(MappingNode map, string key, string instead)
    {
        if (EntryOf(map, key) is not { } entry)
            return;
        int start = StartOfLine(entry.Key.Extent.Start);
        if (string.IsNullOrWhiteSpace(text[start..entry.Key.Extent.Start]))
            Replace(start, EndOfLine(EndOf(entry)), "");
        else
            Set(map, key, instead);
    }

    /// <summary>
    /// Adds a key to a map whose keys are answers to questions: in the order of the alphabet where the others stand so,
    /// else at the end.
    /// </summary>
    /// <param name="owner">The entry whose value the map is.</param>
    /// <param name="key">The key.</param>
    /// <param name="yaml">The value.</param>
    public void AddSorted(Entry owner, string key, string yaml)
    {
        var map = (MappingNode)owner.Value;
        string[] keys = [.. map.Entries.Select(entry => entry.Key.Text)];
        bool isSorted = keys.SequenceEqual(keys.Order(StringComparer.Ordinal));
        Entry? before = isSorted
            ? map.Entries.LastOrDefault(entry => string.CompareOrdinal(entry.Key.Text, key) < 0)
            : map.Entries[^1];
        int at = before is null ? owner.Key.Extent.End : EndOf(before);
        InsertBelow(at, new string(' ', map.Column - 1), [$"{key}: {yaml}"]);
    }

    /// <summary>
    /// Makes a list that is not in brackets hold these items. The old ones among them keep their order.
    /// </summary>
    public void Rearrange(SequenceNode list, IReadOnlyList<ListItem> wanted)
    {
        if (DashColumn(list.Items[0]) is not { } column || list.Items.Any(item => DashColumn(item) != column))
        {
            GiveUp();
            return;
        }

        int? last = null;
        foreach (ListItem item in wanted)
        {
            if (item.Old is { } old)
            {
                last = old;
                if (item.Lines is [string only])
                    Replace(list.Items[old].Extent.Start, EndOf(list.Items[old]), only);
                continue;
            }

            string indent = new(' ', column);
            string[] lines = [.. item.Lines!.Select((line, i) => (i == 0 ? "- " : "  ") + line)];
            if (last is { } above)
                InsertBelow(EndOf(list.Items[above]), indent, lines);
            else
                InsertAt(StartOfLine(list.Items[0].Extent.Start), indent, lines);
        }

        foreach (int gone in Enumerable.Range(0, list.Items.Count).Except(wanted.Select(item => item.Old ?? -1)))
            Replace(StartOfLine(list.Items[gone].Extent.Start), EndOfLine(EndOf(list.Items[gone])), "");
    }

    /// <summary>Puts another text in the place of a node.</summary>
    public void Replace(Node node, string[] lines) =>
        Replace(
            node.Extent.Start,
            EndOf(node),
            string.Join(Eol(node.Extent.Start) + new string(' ', node.Column - 1), lines)
        );

    /// <summary>The entry of a key; null when the map has none.</summary>
    public static Entry? EntryOf(MappingNode map, string key) =>
        map.Entries.FirstOrDefault(entry => entry.Key.Text == key);

    private void Insert(MappingNode map, string[] lines, ReadOnlySpan<string> after)
    {
        Entry? above = null;
        foreach (string key in after)
            above = EntryOf(map, key) ?? above;
        if (above is null)
            GiveUp();
        else
            InsertBelow(EndOf(above), new string(' ', map.Column - 1), lines);
    }

    private void InsertBelow(int end, string indent, string[] lines) => InsertAt(EndOfLine(end), indent, lines);

    private void InsertAt(int at, string indent, string[] lines)
    {
        string eol = Eol(Math.Max(0, at - 1));
        string body = string.Join(eol, lines.Select(line => indent + line));
        Replace(at, at, at == 0 || text[at - 1] == '\n' ? body + eol : eol + body);
    }

    private void Replace(int start, int end, string with) => _edits.Add((start, end, with));

    private bool IsOnOneLine(Node value)
    {
        Extent extent = value.Extent;
        return (value is ScalarNode || value.IsFlow)
            && extent.End > extent.Start
            && !text.AsSpan(extent.Start, extent.End - extent.Start).ContainsAny('\r', '\n');
    }

    // Where the dash of an item stands, counted from 0; null when it is not the first thing of the item's line.
    private int? DashColumn(Node item)
    {
        int start = StartOfLine(item.Extent.Start);
        string lead = text[start..item.Extent.Start];
        return lead.Trim() == "-" ? lead.IndexOf('-', StringComparison.Ordinal) : null;
    }

    private int EndOf(Entry entry) => Math.Max(entry.Key.Extent.End, EndOf(entry.Value));

    // The end that the parser gives to a folded text lies behind the blank lines after it.
    private int EndOf(Node node) =>
        node switch
        {
            MappingNode { IsFlow: false, Entries: [.., Entry last] } => EndOf(last),
            SequenceNode { IsFlow: false, Items: [.., Node last] } => EndOf(last),
            _ => node.Extent.Start
                + text.AsSpan(node.Extent.Start, node.Extent.End - node.Extent.Start).TrimEnd().Length,
        };

    private int StartOfLine(int at) => at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;

    private int EndOfLine(int at)
    {
        int feed = text.IndexOf('\n', at);
        return feed < 0 ? text.Length : feed + 1;
    }

    private string Eol(int at)
    {
        int feed = text.IndexOf('\n', at);
        if (feed < 0)
            feed = text.LastIndexOf('\n');
        return feed > 0 && text[feed - 1] == '\r' ? "\r\n" : "\n";
    }
}
