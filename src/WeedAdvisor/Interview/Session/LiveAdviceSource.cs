using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Interview.Session;

/// <summary>
/// Advice from the engine. One line to it is kept open, so that an answer costs only what it changes.
/// </summary>
/// <param name="advisor">The engine.</param>
public sealed class LiveAdviceSource(Advisor advisor) : IAdviceSource
{
    private LiveAdvice? _live;

    /// <inheritdoc/>
    public Advisor? Engine => advisor;

    /// <inheritdoc/>
    public AreaAdvice Of(AreaCase area)
    {
        if (_live is not null)
            return _live.Change(area);
        _live = advisor.Open(area);
        return _live.Advice;
    }
}
