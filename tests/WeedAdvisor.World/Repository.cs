namespace WeedAdvisor.World;

/// <summary>Where the repository lies, found from wherever the tests run.</summary>
public static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Folder { get; } = Find();

    /// <summary>The rules that ship.</summary>
    public static string Rules { get; } = Path.Combine(Folder, "rules");

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WeedAdvisor.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("the tests do not run inside the repository");
    }
}
