using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Inference;

/// <summary>
/// The advice for one area, kept up to date while its answers change. Not safe to share between threads.
/// </summary>
public sealed class LiveAdvice
{
    private readonly KnowledgeBase _knowledge;
    private readonly EngineSession _session;
    private readonly AdviceBuilder _builder;

    internal LiveAdvice(KnowledgeBase knowledge, EngineSession session, AdviceBuilder builder, AreaCase area)
    {
        _knowledge = knowledge;
        _session = session;
        _builder = builder;
        Advice = Change(area);
    }

    /// <summary>The advice for the area as it now stands.</summary>
    public AreaAdvice Advice { get; private set; }

    /// <summary>
    /// What is clear in an area and in which order, without its reasons and cautions; the advice stays as it is.
    /// </summary>
    internal ImmutableArray<ClearAction> OrderOf(AreaCase area) =>
        _builder.OrderOf(area, _session.Change(AreaFacts.Of(_knowledge, area)));

    /// <summary>Replaces what is known of the area; only what no longer follows is withdrawn.</summary>
    public AreaAdvice Change(AreaCase area) =>
        Advice = _builder.Of(area, _session.Change(AreaFacts.Of(_knowledge, area)));
}
