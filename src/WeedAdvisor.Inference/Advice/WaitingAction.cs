using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Advice;

/// <summary>An action that waits for an answer.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Needs">What has to be known, in order.</param>
/// <param name="Because">The possible bars and supports that wait.</param>
public sealed record WaitingAction(string Action, ImmutableArray<Need> Needs, ImmutableArray<Reason> Because)
{
    /// <summary>When it could be done.</summary>
    public Horizon Horizon { get; init; } = Horizon.ThisWeek;

    /// <summary>The most it can be worth: certainty at most times effect, 0 to 1; a missing effect counts
    /// nothing.</summary>
    public double Promise { get; init; }

    /// <summary>
    /// How it would stand, without its reasons, if every answer let it and all that may speak for it did, with the
    /// cautions that hold for sure and go with its name; null where that was not worked out.
    /// </summary>
    public ClearAction? IfClear { get; init; }

    /// <summary>What speaks for it, or may, what is sure first, then strongest first.</summary>
    public ImmutableArray<Reason> For { get; init; } = [];

    /// <summary>What speaks against it for sure, strongest first.</summary>
    public ImmutableArray<Reason> Against { get; init; } = [];
}
