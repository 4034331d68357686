using System.Text.RegularExpressions;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Rooms;

/// <summary>Whoever follows a page to a file finds it: every path and link that the pages name is there.</summary>
public sealed partial class PathsInDocsTests
{
    private static readonly string[] s_ends = ["", ".cs", ".yaml", ".md"];

    private static readonly string[] s_topFolders = ["src", "tests", "docs", "rules", ".ci"];

    // Every file and folder of the repository, with those in which the parts of the program lie left off too.
    private static readonly Lazy<HashSet<string>> s_there = new(There);

    // The folders of the program and of the knowledge, by which a path is known.
    private static readonly Lazy<HashSet<string>> s_rooms = new(() =>
        [.. s_topFolders, .. s_there.Value.Where(path => path.Contains('/')).Select(path => path.Split('/')[0])]
    );

    public static TheoryData<string> Pages =>
        [
            "README.md",
            "DEVELOPERS.md",
            .. Directory
                .GetFiles(Path.Combine(Repository.Folder, "docs"), "*.md", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Repository.Folder, file).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_path_and_every_link_leads_to_what_is_there(string page)
    {
        string text = Fenced().Replace(File.ReadAllText(Path.Combine(Repository.Folder, page)), "");
        Assert.All(PathsIn(text), path => Assert.True(IsThere(path), path));
        string folder = Path.GetDirectoryName(Path.Combine(Repository.Folder, page))!;
        Assert.All(
            Link().Matches(text).Select(link => link.Groups[1].Value).Where(link => !link.Contains("://")),
            link => Assert.True(Path.Exists(Path.Combine(folder, link)), link)
        );
    }

    [Fact]
    public void The_page_for_developers_names_many_and_one_that_is_not_there_is_seen()
    {
        string text = File.ReadAllText(Path.Combine(Repository.Folder, "DEVELOPERS.md"));
        Assert.True(PathsIn(text).Count() > 80);
        Assert.Equal(["Inference/Areas/NoSuchRoom.cs"], PathsIn("in `Inference/Areas/NoSuchRoom.cs`, `no` and `1/2`"));
        Assert.False(IsThere("Inference/Areas/NoSuchRoom.cs"));
        Assert.False(IsThere("NoSuchFile.cs"));
    }

    // What stands as code and is a file of ours by its end, or a path by the folder it begins with.
    private static IEnumerable<string> PathsIn(string text) =>
        from code in Code().Matches(text).Select(match => match.Groups[1].Value.TrimEnd('/'))
        where Plain().IsMatch(code)
        let isSource = code.EndsWith(".cs", StringComparison.Ordinal)
            && !code.StartsWith("...", StringComparison.Ordinal)
        where isSource || (code.Contains('/') && s_rooms.Value.Contains(code.Split('/')[0]))
        select code;

    private static bool IsThere(string path) =>
        s_ends.Any(end => s_there.Value.Contains(path + end))
        // A member of a class: the class is there.
        || (path.Contains('.') && s_there.Value.Contains(path[..path.LastIndexOf('.')] + ".cs"));

    private static HashSet<string> There()
    {
        HashSet<string> there = new(StringComparer.Ordinal);
        foreach (string top in s_topFolders)
        {
            string root = Path.Combine(Repository.Folder, top);
            IEnumerable<string> inside = Directory
                .EnumerateFileSystemEntries(root, "*", SearchOption.AllDirectories)
                .Select(entry => Path.GetRelativePath(Repository.Folder, entry).Replace('\\', '/'))
                .Where(entry => !Built().IsMatch(entry));
            foreach (string entry in inside)
            {
                there.Add(entry);
                // A file beside one that was named, and what lies in a project: by its name, or without its project.
                if (entry.EndsWith(".cs", StringComparison.Ordinal))
                    there.Add(entry[(entry.LastIndexOf('/') + 1)..]);
                if (top is "src" or "tests" && entry.Split('/', 3) is [_, string project, ..])
                {
                    string below = entry[(top.Length + 1)..];
                    there.Add(below);
                    there.Add(below[project.Length..].TrimStart('/'));
                    there.Add(below.Replace("WeedAdvisor.", "", StringComparison.Ordinal));
                }
            }
        }

        there.Remove("");
        return there;
    }

    [GeneratedRegex("```.*?```", RegexOptions.Singleline)]
    private static partial Regex Fenced();

    [GeneratedRegex("`([^`\n]+)`")]
    private static partial Regex Code();

    [GeneratedRegex("^[A-Za-z0-9./_-]+$")]
    private static partial Regex Plain();

    [GeneratedRegex(@"\]\(([^)#\s]+)(?:#[^)]*)?\)")]
    private static partial Regex Link();

    [GeneratedRegex("(^|/)(bin|obj)(/|$)")]
    private static partial Regex Built();
}
