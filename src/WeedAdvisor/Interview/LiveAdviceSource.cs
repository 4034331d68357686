using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Advice from the engine. One line to it is kept open, so that an answer costs only what it changes.</summary>
/// <param name="advisor">The engine.</param>
public sealed class LiveAdviceSource(Advisor advisor) : IAdviceSource
{
    private LiveAdvice? _live;

    /// <inheritdoc/>
    public AreaAdvice Of(DateOnly date, VisitArea area)
    {
        if (_live is not null)
            return _live.Change(area, date);
        _live = advisor.Open(date, area);
        return _live.Advice;
    }
}
