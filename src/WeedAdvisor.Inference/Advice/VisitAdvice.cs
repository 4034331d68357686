using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Advice;

/// <summary>The advice for a visit: reproducible from the visit and the knowledge alone.</summary>
/// <param name="Knowledge">Which knowledge it came from.</param>
/// <param name="Visit">The visit advised on.</param>
/// <param name="Areas">The advice area by area, in the order of the visit.</param>
public sealed record VisitAdvice(KnowledgeStamp Knowledge, Visit Visit, ImmutableArray<AreaAdvice> Areas);

/// <summary>The advice for one area.</summary>
public sealed record AreaAdvice
{
    /// <summary>The area advised on.</summary>
    public required VisitArea Area { get; init; }

    /// <summary>The area as read.</summary>
    public required AreaReading Reading { get; init; }

    /// <summary>What was concluded about the area, certain ones first, then by certainty and id.</summary>
    public required ImmutableArray<AreaFinding> Findings { get; init; }

    /// <summary>What keeps people out, or may do so; null when nothing does.</summary>
    public KeepOut? KeepOut { get; init; }

    /// <summary>
    /// Clear actions in the order of the work: by horizon; within one what clears weeds first, then by worth. Those
    /// that are clear unless a doubt holds come after those that are clear; what does not go on in today's weather, or
    /// lacks its tool, comes last.
    /// </summary>
    public required ImmutableArray<ClearAction> Clear { get; init; }

    /// <summary>
    /// Actions that something speaks for but that wait for an answer, in the order in which they would stand if it let
    /// them.
    /// </summary>
    public required ImmutableArray<WaitingAction> Waiting { get; init; }

    /// <summary>Actions that must not be used here, in ordinal order of id.</summary>
    public required ImmutableArray<BarredAction> Barred { get; init; }

    /// <summary>
    /// Actions that more speaks against than for, or that nothing speaks for, in ordinal order of id.
    /// </summary>
    public ImmutableArray<NotAdvisedAction> NotAdvised { get; init; } = [];

    /// <summary>Cautions for the whole area, in ordinal order of judgement.</summary>
    public required ImmutableArray<AreaCaution> Cautions { get; init; }

    /// <summary>Actions that rules argue both for and against, in ordinal order of action.</summary>
    public required ImmutableArray<Conflict> Conflicts { get; init; }

    /// <summary>What no rule could judge, in a fixed order.</summary>
    public required ImmutableArray<Gap> Gaps { get; init; }

    /// <summary>The question to ask next; null when no answer could change the advice.</summary>
    public required NextQuestion? NextQuestion { get; init; }

    /// <summary>
    /// The question to ask next when those of the whole nursery are asked elsewhere; null when none of this area could
    /// change the advice.
    /// </summary>
    public NextQuestion? NextOfArea { get; init; }

    /// <summary>How an action stands here.</summary>
    public ActionStatus StatusOf(string action) =>
        Clear.FirstOrDefault(one => one.Action == action) is { } clear ? clear.Status
        : Barred.FirstOrDefault(one => one.Action == action) is { } barred ? barred.Status
        : Waiting.Any(one => one.Action == action) ? ActionStatus.Waits
        : ActionStatus.NotAdvised;

    /// <summary>
    /// Everything that was concluded, certain or possible, in ordinal order of judgement and match; also the arguments
    /// and cautions on what is barred for good. Worked out anew each time: few want all of it.
    /// </summary>
    public ImmutableArray<Reason> AllConclusions() => Trail.All();

    /// <summary>Whether an action is clear here, without a doubt that could still outweigh it.</summary>
    public bool IsClear(string action) =>
        Clear.Any(clear => clear.Action == action && clear.Status == ActionStatus.Clear);

    /// <summary>Where all conclusions are read.</summary>
    public ITrail Trail { get; init; } = new GivenTrail([]);
}

/// <summary>Something concluded about the area.</summary>
/// <param name="Id">The finding's id.</param>
/// <param name="Text">What it says.</param>
/// <param name="Certainty">Combined certainty, in (0, 1]; of the possible reasons when it is only possible.</param>
/// <param name="IsCertain">Whether it holds whatever the unanswered questions turn out to be.</param>
/// <param name="Because">The reasons.</param>
public sealed record AreaFinding(
    string Id,
    string Text,
    double Certainty,
    bool IsCertain,
    ImmutableArray<Reason> Because
);

/// <summary>A caution for the whole area.</summary>
/// <param name="Text">What is said.</param>
/// <param name="IsCertain">Whether it holds for sure.</param>
/// <param name="Because">The reason.</param>
public sealed record AreaCaution(string Text, bool IsCertain, Reason Because);

/// <summary>An action that certain rules argue both for and against.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="For">The arguments for.</param>
/// <param name="Against">The arguments against.</param>
public sealed record Conflict(string Action, ImmutableArray<Reason> For, ImmutableArray<Reason> Against);
