using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Advice;

/// <summary>
/// An entry interval that keeps people out of an area, or may do so. It is said before anything to do.
/// </summary>
/// <param name="Until">When it ends; open while it is not even known whether it runs.</param>
/// <param name="Needs">What has to be known before anybody can say; empty when it runs for sure.</param>
/// <param name="Because">Why, each reason once; the one that lasts longest first.</param>
/// <param name="Then">Ids of the actions that wait for nothing but its end, in the order in which they will
/// rank.</param>
public sealed record KeepOut(
    Until Until,
    ImmutableArray<Need> Needs,
    ImmutableArray<string> Because,
    ImmutableArray<string> Then
)
{
    /// <summary>Whether it runs for sure.</summary>
    public bool IsSure => Needs.IsEmpty;
}
