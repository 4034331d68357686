using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>Which file holds what.</summary>
internal static class FileRoles
{
    private static readonly ImmutableArray<string> s_folders =
    [
        "actives",
        "judgements",
        "law",
        "lessons",
        "practices",
        "ratings",
        "treatments",
        "visits",
        "vocabulary",
        "weeds",
    ];

    /// <summary>The files that must be there, in ordinal order.</summary>
    public static ImmutableArray<string> RequiredFiles { get; } =
    [
        "crops.yaml",
        "findings.yaml",
        "knowledge.yaml",
        "prices.yaml",
        "questions.yaml",
        "regions.yaml",
        "scales.yaml",
        Sources,
        Usual,
    ];

    /// <summary>The file of what is cited.</summary>
    public const string Sources = "sources.yaml";

    /// <summary>The file of what is taken for usual.</summary>
    public const string Usual = "usual.yaml";

    private const string CoverageFile = "coverage.yaml";
    private const string LimitsFile = "limits.yaml";
    private const string ResistanceFile = "resistance.yaml";
    private const string WeedingFile = "weeding.yaml";
    private const string WithdrawnFile = "withdrawn.yaml";
    private const string ProductPricesFile = "product-prices.yaml";
    private const string WorkingTimesFile = "working-times.yaml";

    private static readonly ImmutableArray<string> s_optional =
    [
        CoverageFile,
        LimitsFile,
        ProductPricesFile,
        ResistanceFile,
        WeedingFile,
        WithdrawnFile,
        WorkingTimesFile,
    ];

    /// <summary>What the file at this path, relative to the folder, holds; null when it has no place there.</summary>
    public static FileRole? Of(string path)
    {
        int slash = path.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
            return OfFile(path);
        bool isDirect = path.LastIndexOf('/') == slash;
        return isDirect && path.EndsWith(".yaml", StringComparison.Ordinal) ? OfFolder(path[..slash]) : null;
    }

    /// <summary>Whether the role has a folder of files, which may be empty, and not one file.</summary>
    public static bool IsFolder(FileRole role) =>
        role
            is FileRole.Actives
                or FileRole.Judgements
                or FileRole.Law
                or FileRole.Lessons
                or FileRole.Practices
                or FileRole.Ratings
                or FileRole.Treatments
                or FileRole.Visits
                or FileRole.Vocabulary
                or FileRole.Weeds;

    /// <summary>The problem of a file that has no place.</summary>
    public static Problem Unplaced(string path)
    {
        string first = path.Split('/')[0];
        string expected =
            "a .yaml file among "
            + string.Join(", ", [.. RequiredFiles, .. s_optional])
            + " or directly in "
            + string.Join("/, ", s_folders)
            + "/";
        return new Problem(
            Place.Whole(path),
            "a file that nothing reads",
            expected,
            NearestWord.Of(first, [.. RequiredFiles, .. s_optional, .. s_folders])
        );
    }

    private static FileRole? OfFile(string name) =>
        name switch
        {
            "knowledge.yaml" => FileRole.Version,
            "questions.yaml" => FileRole.Questions,
            Sources => FileRole.Sources,
            Usual => FileRole.Usual,
            "findings.yaml" => FileRole.Findings,
            "crops.yaml" => FileRole.Crops,
            "regions.yaml" => FileRole.Regions,
            "scales.yaml" => FileRole.Scales,
            "prices.yaml" or ProductPricesFile => FileRole.Prices,
            CoverageFile => FileRole.Coverage,
            LimitsFile => FileRole.Limits,
            ResistanceFile => FileRole.Resistance,
            WeedingFile => FileRole.Weeding,
            WithdrawnFile => FileRole.Withdrawn,
            WorkingTimesFile => FileRole.WorkingTimes,
            _ => null,
        };

    private static FileRole? OfFolder(string name) =>
        name switch
        {
            "actives" => FileRole.Actives,
            "judgements" => FileRole.Judgements,
            "law" => FileRole.Law,
            "lessons" => FileRole.Lessons,
            "practices" => FileRole.Practices,
            "ratings" => FileRole.Ratings,
            "treatments" => FileRole.Treatments,
            "visits" => FileRole.Visits,
            "vocabulary" => FileRole.Vocabulary,
            "weeds" => FileRole.Weeds,
            _ => null,
        };
}
