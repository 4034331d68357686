using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>The folder <c>rules/</c> that is shipped.</summary>
internal static class ShippedFolder
{
    /// <summary>Its knowledge, without a problem.</summary>
    public static KnowledgeBase Load()
    {
        Outcome<KnowledgeBase, Problem> outcome = KnowledgeFolder.Load(Root());
        Assert.True(outcome.IsGood, string.Join('\n', outcome.Refusals));
        return outcome.Value!;
    }

    /// <summary>The text of all its judgements.</summary>
    public static string Judgements() => string.Join(
        '\n',
        Directory
            .EnumerateFiles(Path.Combine(Root(), "judgements"), "*.yaml")
            .Order(StringComparer.Ordinal)
            .Select(File.ReadAllText));

    /// <summary>Where it lies.</summary>
    public static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WeedAdvisor.sln")))
            folder = folder.Parent;
        Assert.NotNull(folder);
        return Path.Combine(folder.FullName, "rules");
    }
}
