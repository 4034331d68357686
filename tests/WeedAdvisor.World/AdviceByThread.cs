using System.Collections.Concurrent;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.World;

/// <summary>
/// The advice on one area after the other, from a session for each thread: opening one costs as much as some areas.
/// </summary>
/// <param name="advisor">Makes the advisor when the first area is asked for.</param>
public sealed class AdviceByThread(Func<Advisor> advisor)
{
    private readonly Lazy<Advisor> _advisor = new(advisor);
    private readonly ConcurrentDictionary<int, LiveAdvice> _live = new();

    /// <summary>The advice on an area.</summary>
    public AreaAdvice On(AreaCase area)
    {
        if (_live.TryGetValue(Environment.CurrentManagedThreadId, out LiveAdvice? live))
            return live.Change(area);
        live = _advisor.Value.Open(area);
        _live[Environment.CurrentManagedThreadId] = live;
        return live.Advice;
    }
}
