using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Advice;

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
    /// lifted: 1 water, 2 feed, 3 still air; 0 where it pulls what else stands among them. Null else.
    /// </summary>
    public int? StarvingStep { get; init; }

    /// <summary>
    /// The weeds on account of which rules speak for it, by id in ordinal order; empty where they speak of none.
    /// </summary>
    public ImmutableArray<string> ForWeeds { get; init; } = [];

    /// <summary>Rules speak for it on account of the weed that covers most here.</summary>
    public bool MeetsMainWeed { get; init; }

    /// <summary>It clears weeds that are up, now.</summary>
    public bool Cleans { get; init; }

    /// <summary>It clears the weed that covers most here: that weed's own step.</summary>
    public bool IsOwnStep => this is { MeetsMainWeed: true, Cleans: true, IsHygiene: false, ComesAfterCleaning: false };

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
    /// What the figures of the record alone say it costs for 1000 pots (or 100 m² of floor), US dollars: for the order,
    /// not for a page. Null when the record does not say.
    /// </summary>
    public required decimal? RecordUsd { get; init; }

    /// <summary>Arguments for and against that count, strongest first.</summary>
    public required ImmutableArray<Reason> Because { get; init; }

    /// <summary>Cautions that the record and the rules attach to it.</summary>
    public required ImmutableArray<ActionCaution> Cautions { get; init; }

    /// <summary>Keys of every source behind it, in ordinal order.</summary>
    public required ImmutableArray<string> Sources { get; init; }
}
