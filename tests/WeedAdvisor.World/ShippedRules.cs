using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.World;

/// <summary>The knowledge that ships, read once a process, with its engine and its worked visits.</summary>
public static class ShippedRules
{
    private static readonly Lazy<KnowledgeBase> s_knowledge = new(Load);
    private static readonly Lazy<Advisor> s_advisor = new(() => Advisor.Of(Knowledge));

    public static KnowledgeBase Knowledge => s_knowledge.Value;

    public static Advisor Advisor => s_advisor.Value;

    /// <summary>The demo visit.</summary>
    public static Visit Demo => Visit("demo-spring");

    /// <summary>The worked visit of this name.</summary>
    public static Visit Visit(string id) => Knowledge.WorkedVisits.Single(worked => worked.Visit.Id == id).Visit;

    /// <summary>Reads the rules anew.</summary>
    public static KnowledgeBase Load()
    {
        Outcome<KnowledgeBase, Problem> outcome = KnowledgeFolder.Load(Repository.Rules);
        return outcome.Value ?? throw new InvalidOperationException(string.Join('\n', outcome.Refusals));
    }
}
