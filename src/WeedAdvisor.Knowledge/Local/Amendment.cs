using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Local;

/// <summary>
/// What a nursery says otherwise of a shipped record: the keys beside <c>amends</c> take the place of the shipped ones,
/// and what stands below <c>also</c> is added to its lists.
/// </summary>
internal static class Amendment
{
    /// <summary>The key that names the shipped record.</summary>
    public const string Key = "amends";

    private const string Also = "also";

    // On the others hang bars: hours that keep people out, intervals, when plants are taken to be hardened or rooted.
    private static readonly ImmutableHashSet<string> s_ownNumbers =
    [
        UsualIds.Rounds,
        UsualIds.Pots,
        UsualIds.PotWidth,
        UsualIds.SpacedPots,
        UsualIds.PlantsHurt,
        UsualIds.Seen,
        UsualIds.Seeding,
        UsualIds.BlownIn,
        UsualIds.FromNearBy,
        UsualIds.CleanUp,
        UsualIds.LookFrom,
        UsualIds.LookTo,
        UsualIds.EvenSpread,
        UsualIds.UnevenSpread,
        UsualIds.YearLate,
    ];

    /// <summary>The record as the nursery has it, and what may not be said of it.</summary>
    /// <param name="shipped">The shipped record.</param>
    /// <param name="own">The nursery's record.</param>
    /// <param name="file">The nursery's file.</param>
    /// <param name="role">What both files hold.</param>
    public static (MappingNode Merged, ImmutableArray<Problem> Problems) Of(
        MappingNode shipped,
        MappingNode own,
        string file,
        FileRole role
    )
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        List<Entry> merged = [.. shipped.Entries];
        string id = (shipped.Find("id") as ScalarNode)?.Text ?? "";
        foreach (Entry entry in own.Entries.Where(entry => entry.Key.Text != Key))
        {
            if (entry.Key.Text == Also && entry.Value is MappingNode lists)
                problems.AddRange(lists.Entries.Select(list => Add(list)).OfType<Problem>());
            else if (Refusal(role, id, entry.Key.Text) is { } expected)
                problems.Add(At(entry.Key, entry.Key.Described, expected));
            else
                Put(entry);
        }

        // A number of the nursery's own is as sure as it says; the shipped range was that of the shipped one.
        if (role is FileRole.Prices or FileRole.Usual && own.Find("value") is not null && own.Find("range") is null)
            merged.RemoveAll(entry => entry.Key.Text == "range");
        if (own.Find(AmendedOrigins.From) is null && LocalFiles.ValuesOf(role) is { } fields)
            AmendedOrigins.Put(merged, own, own.Find(Also) as MappingNode, fields);
        return (new MappingNode([.. merged], own.Line, own.Column), problems.ToImmutable());

        Problem At(Node node, string found, string expected) =>
            new(new Place(file, node.Line, node.Column), found, expected);

        void Put(Entry entry)
        {
            int at = merged.FindIndex(one => one.Key.Text == entry.Key.Text);
            if (at < 0)
                merged.Add(entry);
            else
                merged[at] = entry;
        }

        Problem? Add(Entry list)
        {
            int at = merged.FindIndex(one => one.Key.Text == list.Key.Text);
            if (at < 0 || Joined(merged[at].Value, list.Value) is not { } joined)
                return At(list.Key, list.Key.Described, "the key of a list of the shipped record");
            merged[at] = merged[at] with { Value = joined };
            return null;
        }
    }

    /// <summary>Two lists or two maps as one; null when they are not alike.</summary>
    public static Node? Joined(Node shipped, Node own) =>
        (shipped, own) switch
        {
            (SequenceNode first, SequenceNode more) => new SequenceNode(
                [.. first.Items, .. more.Items],
                first.Line,
                first.Column
            ),
            (MappingNode first, MappingNode more) => new MappingNode(
                [.. first.Entries, .. more.Entries],
                first.Line,
                first.Column
            ),
            _ => null,
        };

    // What was expected instead; null when the key may be changed.
    private static string? Refusal(FileRole role, string id, string key) =>
        key == "id" ? "no id: it keeps that of the record it amends"
        : role == FileRole.Regions && key == "country" ? "any other key: which law holds is not yours to say"
        : role == FileRole.Usual && !s_ownNumbers.Contains(id) ? "no change: bars on chemicals hang on it"
        : null;
}
