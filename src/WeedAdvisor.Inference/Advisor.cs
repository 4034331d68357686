using System.Runtime.InteropServices;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Entry;
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
    // Opening a session costs about as much as three areas.
    private const int LeastAreasPerWorker = 8;

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

    /// <summary>
    /// The advice for every area of a visit. Areas share no more than their roof; many are shared out over the cores.
    /// </summary>
    public VisitAdvice Advise(Visit visit)
    {
        var advice = new AreaAdvice[visit.Areas.Length];
        var roofs = new Roofs(visit, Knowledge);
        int workers = Math.Clamp(visit.Areas.Length / LeastAreasPerWorker, 1, Environment.ProcessorCount);
        if (workers == 1)
            AdviseEvery(1, 0);
        else
            Parallel.For(0, workers, new ParallelOptions { MaxDegreeOfParallelism = workers }, first =>
                AdviseEvery(workers, first)
            );
        return new VisitAdvice(Knowledge.Stamp, visit, ImmutableCollectionsMarshal.AsImmutableArray(advice));

        // One session serves area after area: the catalogue stays, only what differs is matched anew.
        void AdviseEvery(int step, int first)
        {
            LiveAdvice? live = null;
            for (int i = first; i < advice.Length; i += step)
            {
                if (live is null)
                    live = Open(roofs.CaseOf(i));
                else
                    live.Change(roofs.CaseOf(i));
                advice[i] = live.Advice;
            }
        }
    }

    /// <summary>A line to one area: change an answer and read the new advice.</summary>
    /// <param name="area">The area as it now stands.</param>
    public LiveAdvice Open(AreaCase area) => new(Knowledge, _engine.Open(), _builder, area);
}
