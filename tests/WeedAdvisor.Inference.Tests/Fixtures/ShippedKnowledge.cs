using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Inference.Tests.Fixtures;

/// <summary>The knowledge that ships, read once, and an advisor over it.</summary>
internal static class ShippedKnowledge
{
    private static readonly Lazy<Advisor> s_advisor = new(() => Advisor.Of(Load()));

    public static Advisor Advisor => s_advisor.Value;

    public static KnowledgeBase Knowledge => Advisor.Knowledge;

    public static string Folder
    {
        get
        {
            DirectoryInfo? folder = new(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WeedAdvisor.sln")))
                folder = folder.Parent;
            return Path.Combine(folder?.FullName ?? ".", "rules");
        }
    }

    private static KnowledgeBase Load()
    {
        Outcome<KnowledgeBase, Problem> outcome = KnowledgeFolder.Load(Folder);
        return outcome.Value ?? throw new InvalidOperationException(string.Join('\n', outcome.Refusals));
    }
}
