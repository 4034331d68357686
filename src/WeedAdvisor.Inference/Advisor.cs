using System.Collections.Immutable;
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

    // Enough that the cores wait little for each other, few enough that what is worked out at once dies young.
    private const int AreasAtOnce = 16;

    private readonly RuleEngine _engine;
    private readonly AdviceBuilder _builder;

    private Advisor(KnowledgeBase knowledge)
    {
        Knowledge = knowledge;
        _engine = RuleEngine.Of(knowledge.Judgements, CatalogueFacts.InTurn(knowledge));
        _builder = new AdviceBuilder(knowledge);
    }

    /// <summary>The knowledge it advises from.</summary>
    public KnowledgeBase Knowledge { get; }

    /// <summary>Compiles the judgements of a knowledge base.</summary>
    public static Advisor Of(KnowledgeBase knowledge) => new(knowledge);

    /// <summary>The advice for every area of a visit.</summary>
    public VisitAdvice Advise(Visit visit) =>
        new(Knowledge.Stamp, visit, [.. AdviseInTurn(visit).SelectMany(some => some)]);

    /// <summary>
    /// The advice for the areas of a visit in their order, some at a time: the next are worked out when they are asked
    /// for, so that who tells them in turn need not hold all of them. Areas share no more than their roof; many are
    /// shared out over the cores.
    /// </summary>
    public IEnumerable<ImmutableArray<AreaAdvice>> AdviseInTurn(Visit visit)
    {
        var roofs = new Roofs(visit, Knowledge);
        int workers = Math.Clamp(visit.Areas.Length / LeastAreasPerWorker, 1, Environment.ProcessorCount);
        // One session serves area after area: the catalogue stays, only what differs is matched anew.
        var sessions = new LiveAdvice?[workers];
        var asked = new HashSet<string>(StringComparer.Ordinal);
        for (int from = 0; from < visit.Areas.Length; from += AreasAtOnce)
        {
            var advice = new AreaAdvice[Math.Min(AreasAtOnce, visit.Areas.Length - from)];
            int first = from,
                taken = -1;
            if (workers == 1)
                AdviseEvery(0);
            else
                Parallel.For(0, workers, new ParallelOptions { MaxDegreeOfParallelism = workers }, AdviseEvery);
            AskOnce(advice, asked);
            yield return ImmutableCollectionsMarshal.AsImmutableArray(advice);

            void AdviseEvery(int worker)
            {
                // Some areas take longer than others: whoever is free takes the next.
                while (Interlocked.Increment(ref taken) is var i && i < advice.Length)
                {
                    AreaCase area = roofs.CaseOf(first + i);
                    advice[i] = sessions[worker] is { } session
                        ? session.Change(area)
                        : (sessions[worker] = Open(area)).Advice;
                }
            }
        }
    }

    // What has one answer for the whole nursery is asked once a visit, in the first area that wants it.
    private static void AskOnce(AreaAdvice[] areas, HashSet<string> asked)
    {
        for (int i = 0; i < areas.Length; i++)
        {
            if (areas[i].NextQuestion is { IsOfNursery: true } next && !asked.Add(next.Id))
                areas[i] = areas[i] with { NextQuestion = areas[i].NextOfArea };
        }
    }

    /// <summary>A line to one area: change an answer and read the new advice.</summary>
    /// <param name="area">The area as it now stands.</param>
    public LiveAdvice Open(AreaCase area) => new(Knowledge, _engine.Open(), _builder, area);
}
