using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference;

/// <summary>
/// Gives advice from a knowledge base. Compiling the judgements is the expensive part: make one advisor and keep it.
/// Safe to share between threads.
/// </summary>
public sealed class Advisor
{
    private readonly RuleEngine _engine;
    private readonly AdviceBuilder _builder;

    private Advisor(KnowledgeBase knowledge)
    {
        Knowledge = knowledge;
        _engine = RuleEngine.Of(knowledge.Judgements, CatalogueFacts.Of(knowledge));
        _builder = new AdviceBuilder(knowledge);
    }

    /// <summary>The knowledge it advises from.</summary>
    public KnowledgeBase Knowledge { get; }

    /// <summary>Compiles the judgements of a knowledge base.</summary>
    public static Advisor Of(KnowledgeBase knowledge) => new(knowledge);

    /// <summary>The advice for every area of a visit.</summary>
    public VisitAdvice Advise(Visit visit)
    {
        if (visit.Areas.IsEmpty)
            return new VisitAdvice(Knowledge.Stamp, visit, []);
        var advice = ImmutableArray.CreateBuilder<AreaAdvice>(visit.Areas.Length);
        // One session serves area after area: the catalogue stays, only what differs is matched anew.
        LiveAdvice live = Open(visit.Date, visit.Areas[0]);
        advice.Add(live.Advice);
        foreach (VisitArea area in visit.Areas.Skip(1))
            advice.Add(live.Change(area));
        return new VisitAdvice(Knowledge.Stamp, visit, advice.MoveToImmutable());
    }

    /// <summary>A line to one area: change an answer and read the new advice.</summary>
    /// <param name="date">The day of the visit.</param>
    /// <param name="area">The area as it now stands.</param>
    public LiveAdvice Open(DateOnly date, VisitArea area) => new(Knowledge, _engine.Open(), _builder, date, area);
}
