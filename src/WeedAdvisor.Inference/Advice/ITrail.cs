using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Advice;

/// <summary>Everything that was concluded about an area. Immutable: the same each time it is read.</summary>
public interface ITrail
{
    /// <summary>
    /// Every conclusion, certain or possible, in ordinal order of judgement and match; worked out anew each time.
    /// </summary>
    public ImmutableArray<Reason> All();
}

/// <summary>Conclusions that are at hand.</summary>
/// <param name="Reasons">The conclusions, in order.</param>
public sealed record GivenTrail(ImmutableArray<Reason> Reasons) : ITrail
{
    /// <inheritdoc/>
    public ImmutableArray<Reason> All() => Reasons;
}
