using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Rooms;

/// <summary>The source files of a project.</summary>
internal static class Sources
{
    /// <summary>All files of a project under <c>src</c>, in ordinal order of path.</summary>
    public static SourceFile[] Of(string project)
    {
        string folder = Path.Combine(Repository.Folder, "src", project);
        return
        [
            .. Directory
                .GetFiles(folder, "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
                .Where(path =>
                    !path.StartsWith("obj/", StringComparison.Ordinal)
                    && !path.StartsWith("bin/", StringComparison.Ordinal)
                )
                .Order(StringComparer.Ordinal)
                .Select(path => new SourceFile(path, File.ReadAllText(Path.Combine(folder, path)))),
        ];
    }
}

/// <summary>A source file.</summary>
/// <param name="Path">Its path in the project.</param>
/// <param name="Text">Its text.</param>
internal sealed record SourceFile(string Path, string Text)
{
    /// <summary>The first folder it stands in; empty at the top.</summary>
    public string Room => FirstFolder(Path);

    /// <summary>The next folder it stands in below a first one; empty right under that.</summary>
    public string RoomIn(string folder) => FirstFolder(Path[(folder.Length + 1)..]);

    /// <summary>Whether it names a namespace in a using directive.</summary>
    public bool Uses(string name) =>
        Text.Split('\n')
            .Any(line =>
                line.StartsWith($"using {name}.", StringComparison.Ordinal)
                || line.StartsWith($"using {name};", StringComparison.Ordinal)
                || line.StartsWith($"using static {name}.", StringComparison.Ordinal)
            );

    private static string FirstFolder(string path) =>
        path.Contains('/', StringComparison.Ordinal) ? path[..path.IndexOf('/', StringComparison.Ordinal)] : "";
}
