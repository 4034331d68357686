using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Advice;

/// <summary>An action that must not be used here.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Severity">The hardest of its bars.</param>
/// <param name="Because">The certain bars, hardest first.</param>
/// <param name="Sources">Keys of every source behind it, in ordinal order.</param>
public sealed record BarredAction(
    string Action,
    Severity Severity,
    ImmutableArray<Reason> Because,
    ImmutableArray<string> Sources
)
{
    /// <summary>
    /// <see cref="ActionStatus.Never"/>, <see cref="ActionStatus.NotYet"/> or <see cref="ActionStatus.NotThisWay"/>.
    /// </summary>
    public ActionStatus Status { get; init; } = ActionStatus.Never;

    /// <summary>
    /// The bars that make its status, the one that counts most first: those that never end for never, the wrong way for
    /// not this way, the last to end for not yet.
    /// </summary>
    public ImmutableArray<Reason> Deciding { get; init; } = Because;

    /// <summary>What ends it; null unless it is not yet.</summary>
    public Until? Until { get; init; }

    /// <summary>
    /// Other ways in which the product may be put on, in plain words; empty unless it is not this way.
    /// </summary>
    public ImmutableArray<string> OtherWays { get; init; } = [];

    /// <summary>
    /// How it will stand once its bars have ended, as far as is known today: clear, clear unless, waits or not advised;
    /// not advised for what is never to be used.
    /// </summary>
    public ActionStatus After { get; init; } = ActionStatus.NotAdvised;

    /// <summary>Whether more speaks for it than against it, or may: only then is it worth waiting for.</summary>
    public bool IsWanted => After != ActionStatus.NotAdvised;
}

/// <summary>An action that is neither barred nor waiting nor clear.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="For">What speaks for it for sure, strongest first; empty when nothing does.</param>
/// <param name="Against">What speaks against it, or may, strongest first; empty when nothing does.</param>
public sealed record NotAdvisedAction(string Action, ImmutableArray<Reason> For, ImmutableArray<Reason> Against);
