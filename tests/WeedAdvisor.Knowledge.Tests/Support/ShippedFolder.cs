using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>The folder <c>rules/</c> that is shipped.</summary>
internal static class ShippedFolder
{
    /// <summary>Its knowledge, without a problem.</summary>
    public static KnowledgeBase Load()
    {
        Outcome<KnowledgeBase, Problem> outcome = KnowledgeFolder.Load(Repository.Rules);
        Assert.True(outcome.IsGood, string.Join('\n', outcome.Refusals));
        return outcome.Value!;
    }

    /// <summary>The text of all its judgements.</summary>
    public static string Judgements() =>
        string.Join(
            '\n',
            Directory
                .EnumerateFiles(Path.Combine(Repository.Rules, "judgements"), "*.yaml")
                .Order(StringComparer.Ordinal)
                .Select(File.ReadAllText)
        );
}
