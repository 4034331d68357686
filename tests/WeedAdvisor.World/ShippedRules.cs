using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.World;

/// <summary>The knowledge that ships, read once a process, with its engine and its worked visits.</summary>
public static class ShippedRules
{
    private static readonly Lazy<KnowledgeBase> s_knowledge = new(Shared);
    private static readonly Lazy<Advisor> s_advisor = new(() => SharedKnowledge.Compile(Knowledge));
    private static readonly Lazy<ImmutableArray<VisitAdvice>> s_worked = new(() =>
        [.. Knowledge.WorkedVisits.AsParallel().AsOrdered().Select(worked => Advisor.Advise(worked.Visit))]
    );

    private static readonly AdviceByThread s_byThread = new(() => Advisor);

    public static KnowledgeBase Knowledge => s_knowledge.Value;

    public static Advisor Advisor => s_advisor.Value;

    /// <summary>The advice on each worked visit, in their order: worked out once a process.</summary>
    public static ImmutableArray<VisitAdvice> WorkedAdvice => s_worked.Value;

    /// <summary>The advice on every area of the worked visits.</summary>
    public static IEnumerable<AreaAdvice> WorkedAreas => WorkedAdvice.SelectMany(visit => visit.Areas);

    /// <summary>The advice on an area, from a session that serves area after area on each thread.</summary>
    public static AreaAdvice On(AreaCase area) => s_byThread.On(area);

    /// <summary>The demo visit.</summary>
    public static Visit Demo => Visit("demo-spring");

    /// <summary>The worked visit of this name.</summary>
    public static Visit Visit(string id) => Knowledge.WorkedVisits.Single(worked => worked.Visit.Id == id).Visit;

    private static KnowledgeBase Shared()
    {
        Outcome<KnowledgeBase, Problem> outcome = SharedKnowledge.Read(Repository.Rules, KnowledgeScope.Whole, null);
        return outcome.Value ?? throw new InvalidOperationException(string.Join('\n', outcome.Refusals));
    }
}
