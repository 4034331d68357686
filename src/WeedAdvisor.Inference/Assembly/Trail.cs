using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>What the rules concluded, put into words when somebody reads it.</summary>
internal sealed class Trail(AreaConclusions concluded, Reasons reasons) : ITrail
{
    /// <inheritdoc/>
    public ImmutableArray<Reason> All() => [.. concluded.All().Select(reasons.Of)];
}
