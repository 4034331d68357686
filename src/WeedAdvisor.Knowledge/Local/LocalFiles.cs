using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.Local;

/// <summary>Which files a local folder may hold, and what may be done in each.</summary>
internal static class LocalFiles
{
    /// <summary>What stands before the path of a local file wherever it is shown.</summary>
    public const string Prefix = "local/";

    /// <summary>The file of bars that are lifted.</summary>
    public const string Lifts = "lifts.yaml";

    /// <summary>The file of places of one's own.</summary>
    public const string Places = "places.yaml";

    // What the law, the label or a trial says is not the nursery's to change: its labels go into the label book.
    private static readonly ImmutableDictionary<FileRole, LocalUse> s_uses = new Dictionary<FileRole, LocalUse>
    {
        [FileRole.Weeds] = LocalUse.ChangeAndAdd,
        [FileRole.Practices] = LocalUse.ChangeAndAdd,
        [FileRole.Prices] = LocalUse.ChangeAndAdd,
        [FileRole.Regions] = LocalUse.ChangeAndAdd,
        [FileRole.Usual] = LocalUse.ChangeAndAdd,
        [FileRole.Weeding] = LocalUse.ChangeAndAdd,
        [FileRole.WorkingTimes] = LocalUse.ChangeAndAdd,
        [FileRole.Actives] = LocalUse.Add,
        [FileRole.Crops] = LocalUse.Add,
        [FileRole.Judgements] = LocalUse.Add,
        [FileRole.Ratings] = LocalUse.Add,
        [FileRole.Vocabulary] = LocalUse.Add,
        [FileRole.Sources] = LocalUse.Add,
    }.ToImmutableDictionary();

    /// <summary>What may be done in a file of a role; null when a local folder may not hold one.</summary>
    public static LocalUse? UseOf(FileRole role) => s_uses.TryGetValue(role, out LocalUse use) ? use : null;

    /// <summary>Which fields of the records of a role are values; null for files that hold no such records.</summary>
    public static ValueFields? ValuesOf(FileRole role) =>
        role switch
        {
            FileRole.Weeds => ValueFields.Weed,
            FileRole.Practices => ValueFields.Practice,
            FileRole.Regions => ValueFields.Region,
            FileRole.Prices or FileRole.Usual or FileRole.Weeding => ValueFields.Number,
            FileRole.WorkingTimes => ValueFields.WorkingTime,
            _ => null,
        };

    /// <summary>
    /// What a file at this path, relative to the local folder, holds; null when it has no place there.
    /// </summary>
    public static FileRole? RoleOf(string path) =>
        path switch
        {
            Lifts => FileRole.Lifts,
            Places => FileRole.Places,
            _ => FileRoles.Of(path) is { } role && s_uses.ContainsKey(role) ? role : null,
        };

    /// <summary>The problem of a file that has no place in a local folder.</summary>
    public static Problem Unplaced(string path)
    {
        string[] expected =
        [
            "crops.yaml",
            Lifts,
            Places,
            "prices.yaml",
            "product-prices.yaml",
            "regions.yaml",
            "usual.yaml",
            "weeding.yaml",
            "working-times.yaml",
        ];
        string[] folders = ["actives", "judgements", "practices", "ratings", "vocabulary", "weeds"];
        string why = FileRoles.Of(path) switch
        {
            FileRole.Treatments => "a file of chemicals: what your label says goes into the label book",
            null => "a file that nothing reads",
            _ => "a file of what no nursery can change for itself",
        };
        return new Problem(
            Place.Whole(Prefix + path),
            why,
            $"{string.Join(", ", expected)} or .yaml files in {string.Join("/, ", folders)}/",
            NearestWord.Of(path.Split('/')[0], [.. expected, .. folders])
        );
    }
}

/// <summary>What a local file may do with the records of its kind.</summary>
internal enum LocalUse
{
    /// <summary>
    /// It may add records and no more: what a chemical does to a shipped one is not the nursery's to say.
    /// </summary>
    Add,

    /// <summary>It may also put other values into shipped records.</summary>
    ChangeAndAdd,
}
