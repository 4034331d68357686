using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Local;

/// <summary>
/// Lays the files of a local folder over the shipped ones before either is read, so that both are read and checked in
/// the same way. A record that <c>amends</c> a shipped one takes its place, in the file of the nursery.
/// </summary>
internal sealed class LocalOverlay
{
    private readonly List<PlacedFile> _files;
    private readonly List<Problem> _problems = [];

    private LocalOverlay(IEnumerable<PlacedFile> shipped) => _files = [.. shipped];

    /// <summary>All files, and what is wrong with the local ones.</summary>
    /// <param name="shipped">The parsed files of the knowledge folder.</param>
    /// <param name="local">The parsed files of the local folder.</param>
    public static (PlacedFile[] Files, ImmutableArray<Problem> Problems) Lay(
        IEnumerable<PlacedFile> shipped,
        IEnumerable<PlacedFile> local
    )
    {
        var overlay = new LocalOverlay(shipped);
        foreach (PlacedFile file in local)
            overlay.Add(file);
        return ([.. overlay._files], [.. overlay._problems]);
    }

    private void Add(PlacedFile file)
    {
        switch (file.Parsed.Root)
        {
            case SequenceNode places when file.Role == FileRole.Places:
                LocalPlaces.Add(places, file.Parsed.File, _files, _problems);
                break;
            case SequenceNode records when file.Role != FileRole.Lifts:
                var own = new SequenceNode(
                    [.. records.Items.Select(item => Amended(item, file)).OfType<Node>()],
                    records.Line,
                    records.Column
                );
                _files.Add(file with { Parsed = file.Parsed with { Root = own } });
                break;
            case MappingNode lists when file.Role == FileRole.Vocabulary:
                _files.Add(file with { Parsed = file.Parsed with { Root = NewLists(lists) } });
                break;
            default:
                _files.Add(file);
                break;
        }
    }

    // A record without 'amends' is a new one and stays as it is; one that may not amend is left out.
    private Node? Amended(Node item, PlacedFile file)
    {
        if (item is not MappingNode own || own.Find(Amendment.Key) is not { } named)
            return item;
        string id = (named as ScalarNode)?.Text ?? "";
        if (LocalFiles.UseOf(file.Role) != LocalUse.ChangeAndAdd)
        {
            Report(
                file,
                named,
                $"'{Amendment.Key}'",
                "a record of your own with an 'id'; shipped ones of this kind stay"
            );
            return null;
        }

        if (Take(file.Role, id) is not { } shipped)
        {
            Report(
                file,
                named,
                named.Described,
                "the id of a shipped record of this kind",
                NearestWord.Of(id, Ids(file.Role))
            );
            return null;
        }

        (MappingNode merged, ImmutableArray<Problem> problems) = Amendment.Of(
            shipped,
            own,
            file.Parsed.File,
            file.Role
        );
        _problems.AddRange(problems);
        return merged;
    }

    private void Report(PlacedFile file, Node at, string found, string expected, string? nearest = null) =>
        _problems.Add(new Problem(new Place(file.Parsed.File, at.Line, at.Column), found, expected, nearest));

    // The words of a list that is there are added to it; the rest are lists of the nursery's own.
    private MappingNode NewLists(MappingNode lists)
    {
        List<Entry> own = [];
        foreach (Entry list in lists.Entries)
        {
            int at = _files.FindIndex(file =>
                file.Role == FileRole.Vocabulary
                && file.Parsed.Root is MappingNode map
                && map.Find(list.Key.Text) is not null
            );
            if (at < 0)
            {
                own.Add(list);
                continue;
            }

            var root = (MappingNode)_files[at].Parsed.Root!;
            Entry[] entries =
            [
                .. root.Entries.Select(entry =>
                    entry.Key.Text == list.Key.Text && Amendment.Joined(entry.Value, list.Value) is { } joined
                        ? entry with
                        {
                            Value = joined,
                        }
                        : entry
                ),
            ];
            _files[at] = Rooted(_files[at], new MappingNode(entries, root.Line, root.Column));
        }

        return new MappingNode([.. own], lists.Line, lists.Column);
    }

    private MappingNode? Take(FileRole role, string id)
    {
        for (int i = 0; i < _files.Count; i++)
        {
            if (_files[i].Role != role || _files[i].Parsed.Root is not SequenceNode records)
                continue;
            MappingNode? found = records.Items.OfType<MappingNode>().FirstOrDefault(record => IdOf(record) == id);
            if (found is null)
                continue;
            Node[] rest = [.. records.Items.Where(item => item != found)];
            if (rest.Length == 0)
                _files.RemoveAt(i);
            else
                _files[i] = Rooted(_files[i], new SequenceNode(rest, records.Line, records.Column));
            return found;
        }

        return null;
    }

    private IEnumerable<string> Ids(FileRole role) =>
        _files
            .Where(file => file.Role == role)
            .SelectMany(file => (file.Parsed.Root as SequenceNode)?.Items ?? [])
            .OfType<MappingNode>()
            .Select(IdOf)
            .OfType<string>();

    private static string? IdOf(MappingNode record) => (record.Find("id") as ScalarNode)?.Text;

    private static PlacedFile Rooted(PlacedFile file, Node root) =>
        file with
        {
            Parsed = file.Parsed with { Root = root },
        };
}
