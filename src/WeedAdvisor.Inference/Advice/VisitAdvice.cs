using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
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

/// <summary>An action that is clear here.</summary>
public sealed record ClearAction
{
    /// <summary>The action's id.</summary>
    public required string Action { get; init; }

    /// <summary><see cref="ActionStatus.Clear"/> or <see cref="ActionStatus.ClearUnless"/>.</summary>
    public ActionStatus Status { get; init; } = ActionStatus.Clear;

    /// <summary>What has to be known before no doubt can outweigh it, in order; empty when it is clear.</summary>
    public ImmutableArray<Need> Unless { get; init; } = [];

    /// <summary>The doubts that could still outweigh it; empty when it is clear.</summary>
    public ImmutableArray<Reason> Doubts { get; init; } = [];

    /// <summary>
    /// Why it does not go on today, such as <c>wind</c>; empty when nothing is against it or nobody told the weather.
    /// </summary>
    public ImmutableArray<string> NotToday { get; init; } = [];

    /// <summary>What the day must be like, such as <c>below 29 C</c>; empty when the weather was told.</summary>
    public ImmutableArray<string> Conditions { get; init; } = [];

    /// <summary>It cleans what lies round the weeds, such as a floor or a strip.</summary>
    public bool IsHygiene { get; init; }

    /// <summary>Its rank, from 1; actions of one horizon that do one job share it.</summary>
    public required int Rank { get; init; }

    /// <summary>When it can be done.</summary>
    public Horizon Horizon { get; init; } = Horizon.ThisWeek;

    /// <summary>The job it does, word of list <c>one-of</c>: one of several is enough. Null when it stands
    /// alone.</summary>
    public string? OneOf { get; init; }

    /// <summary>None of the tools it needs is there.</summary>
    public bool LacksTool { get; init; }

    /// <summary>
    /// It wants a clean surface, weeds are up, and nothing that clears them can be done yet.
    /// </summary>
    public bool WaitsForCleaning { get; init; }

    /// <summary>It is the second step: weeds are up, and it wants a clean surface.</summary>
    public bool ComesAfterCleaning { get; init; }

    /// <summary>It is done at once and before all other work: people or other stock are at risk.</summary>
    public bool IsAtOnce { get; init; }

    /// <summary>It finds out which weed it is, and a weed here has no name: it comes before every choice.</summary>
    public bool Names { get; init; }

    /// <summary>
    /// Where it takes from the films and mats that are most of what stands here what they live on, before they are
    /// lifted: 1 water, 2 feed, 3 still air. Null else.
    /// </summary>
    public int? StarvingStep { get; init; }

    /// <summary>It clears weeds that are up, now.</summary>
    public bool Cleans { get; init; }

    /// <summary>
    /// Certainty times effect, 0 to 1; where the effect is missing, certainty times the least effect known of an action
    /// of its horizon.
    /// </summary>
    public required double Worth { get; init; }

    /// <summary>Combined certainty of the arguments for and against, in (0, 1].</summary>
    public required double Certainty { get; init; }

    /// <summary>Whether its effect is on weeds that stand, on weeds to come, or on both.</summary>
    public WorksOn WorksOn { get; init; } = WorksOn.Standing;

    /// <summary>Expected effect on the weeds seen, as far as it works on them.</summary>
    public required Effect Effect { get; init; }

    /// <summary>
    /// Expected reduction of weeds that stand, 0 to 1; null when it is not published or not its work.
    /// </summary>
    public double? ReductionOfStanding => WorksOn == WorksOn.Coming ? null : Effect.Reduction;

    /// <summary>Expected reduction of weeds to come, 0 to 1; null when it is not published or not its work.</summary>
    public double? ReductionOfComing => WorksOn == WorksOn.Standing ? null : Effect.Reduction;

    /// <summary>The effect that its worth rests on, 0 to 1.</summary>
    public double EffectCounted { get; init; }

    /// <summary>Word of list <c>when</c>.</summary>
    public required string When { get; init; }

    /// <summary>
    /// Estimated cost for 1000 pots (or 100 m² of floor), US dollars, at the area's labour rate; null when not known.
    /// </summary>
    public required decimal? CostUsd { get; init; }

    /// <summary>Labour hours for 1000 pots (or 100 m² of floor); null when not known.</summary>
    public required decimal? Hours { get; init; }

    /// <summary>Arguments for and against that count, strongest first.</summary>
    public required ImmutableArray<Reason> Because { get; init; }

    /// <summary>Cautions that the record and the rules attach to it.</summary>
    public required ImmutableArray<ActionCaution> Cautions { get; init; }

    /// <summary>Keys of every source behind it, in ordinal order.</summary>
    public required ImmutableArray<string> Sources { get; init; }
}

/// <summary>A caution said with an action.</summary>
/// <param name="Said">What is said.</param>
/// <param name="Judgement">The judgement it comes from; null when it stands in the action's record.</param>
/// <param name="IsCertain">Whether it holds for sure.</param>
public sealed record ActionCaution(Said Said, string? Judgement, bool IsCertain)
{
    /// <summary>What is said, in plain words.</summary>
    public string Text => Said.Text;

    /// <summary>It keeps somebody from being hurt: no page leaves it out.</summary>
    public bool ProtectsPeople { get; init; }
}

/// <summary>A caution for the whole area.</summary>
/// <param name="Text">What is said.</param>
/// <param name="IsCertain">Whether it holds for sure.</param>
/// <param name="Because">The reason.</param>
public sealed record AreaCaution(string Text, bool IsCertain, Reason Because);

/// <summary>Expected effect of an action on the weeds seen: cover-weighted mean of published reductions.</summary>
/// <param name="Reduction">Mean of the middles, 0 to 1; null when nothing is published for any weed that counts; of a
/// weed without a figure nothing is promised.</param>
/// <param name="Parts">The figures it comes from, one for each weed seen.</param>
public sealed record Effect(double? Reduction, ImmutableArray<EffectPart> Parts);

/// <summary>Effect on one weed.</summary>
/// <param name="Weed">The weed's id.</param>
/// <param name="Weight">Its share of the cover, 0 to 1.</param>
/// <param name="LowPercent">Low end of the published reduction, percent; null when missing.</param>
/// <param name="HighPercent">High end, percent; null when missing.</param>
/// <param name="Sources">Keys of the sources.</param>
public sealed record EffectPart(
    string Weed,
    double Weight,
    decimal? LowPercent,
    decimal? HighPercent,
    ImmutableArray<string> Sources
);

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

/// <summary>An action that certain rules argue both for and against.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="For">The arguments for.</param>
/// <param name="Against">The arguments against.</param>
public sealed record Conflict(string Action, ImmutableArray<Reason> For, ImmutableArray<Reason> Against);

/// <summary>What no rule could judge.</summary>
public enum GapKind
{
    /// <summary>Two answers contradict each other; both count as not known.</summary>
    Contradiction,

    /// <summary>No clear action has a published effect on this weed.</summary>
    WeedWithoutAnswer,

    /// <summary>Nothing meets this weed for now: it is left.</summary>
    WeedLeft,

    /// <summary>No efficacy table rates this weed.</summary>
    WeedWithoutRating,

    /// <summary>No treatment at all is clear.</summary>
    NoTreatment,

    /// <summary>Nothing at all is clear.</summary>
    Nothing,
}

/// <summary>Something that no rule could judge.</summary>
/// <param name="Kind">What kind of gap.</param>
/// <param name="Subject">The weed's id, or null.</param>
/// <param name="Text">The gap in plain words.</param>
public sealed record Gap(GapKind Kind, string? Subject, string Text);
