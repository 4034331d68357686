using System.Collections.Frozen;
using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>Which file holds what.</summary>
internal static class FileRoles
{
    private static readonly FrozenDictionary<string, FileRole> s_files = new Dictionary<string, FileRole>
    {
        ["knowledge.yaml"] = FileRole.Version,
        ["questions.yaml"] = FileRole.Questions,
        ["sources.yaml"] = FileRole.Sources,
        ["findings.yaml"] = FileRole.Findings,
        ["crops.yaml"] = FileRole.Crops,
        ["regions.yaml"] = FileRole.Regions,
        ["scales.yaml"] = FileRole.Scales,
        ["prices.yaml"] = FileRole.Prices,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, FileRole> s_folders = new Dictionary<string, FileRole>
    {
        ["vocabulary"] = FileRole.Vocabulary,
        ["weeds"] = FileRole.Weeds,
        ["practices"] = FileRole.Practices,
        ["treatments"] = FileRole.Treatments,
        ["judgements"] = FileRole.Judgements,
        ["visits"] = FileRole.Visits,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The files that must be there, in ordinal order.</summary>
    public static ImmutableArray<string> RequiredFiles { get; } = [.. s_files.Keys.Order(StringComparer.Ordinal)];

    /// <summary>What the file at this path, relative to the folder, holds; null when it has no place there.</summary>
    public static FileRole? Of(string path)
    {
        if (s_files.TryGetValue(path, out FileRole role))
            return role;
        string[] parts = path.Split('/');
        return parts.Length == 2 && path.EndsWith(".yaml", StringComparison.Ordinal)
            && s_folders.TryGetValue(parts[0], out role) ? role : null;
    }

    /// <summary>Whether the role has a folder of files, which may be empty, and not one file.</summary>
    public static bool IsFolder(FileRole role) => s_folders.Values.Contains(role);

    /// <summary>The problem of a file that has no place.</summary>
    public static Problem Unplaced(string path)
    {
        string first = path.Split('/')[0];
        string expected = "a .yaml file among " + string.Join(", ", RequiredFiles)
            + " or directly in " + string.Join("/, ", s_folders.Keys.Order(StringComparer.Ordinal)) + "/";
        return new Problem(
            Place.Whole(path),
            "a file that nothing reads",
            expected,
            NearestWord.Of(first, [.. s_files.Keys, .. s_folders.Keys]));
    }
}
