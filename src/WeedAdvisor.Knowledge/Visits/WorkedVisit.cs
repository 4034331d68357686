using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>A visit with the advice it must give: a test that stands beside the rules it tests.</summary>
/// <param name="File">The file it stands in, relative to the knowledge folder.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Expectations">What must come out, by area; empty for a visit that only demonstrates.</param>
public sealed record WorkedVisit(string File, Visit Visit, ImmutableArray<Expectation> Expectations);

/// <summary>What must, and must not, be advised for an area.</summary>
public sealed record Expectation
{
    /// <summary>The area's id.</summary>
    public required string Area { get; init; }

    /// <summary>Where the expectation stands.</summary>
    public required Place Where { get; init; }

    /// <summary>Actions that must be clear: whatever the missing answers turn out to be.</summary>
    public ImmutableArray<string> Clear { get; init; } = [];

    /// <summary>The clear actions that must lead the ranking, in this order.</summary>
    public ImmutableArray<string> First { get; init; } = [];

    /// <summary>Actions that must be neither clear nor clear unless a doubt holds.</summary>
    public ImmutableArray<string> NotClear { get; init; } = [];

    /// <summary>Actions that must be barred, and by which judgement.</summary>
    public ImmutableArray<ExpectedBar> Barred { get; init; } = [];

    /// <summary>Actions that must wait, and for which question.</summary>
    public ImmutableArray<ExpectedWait> Waiting { get; init; } = [];

    /// <summary>How actions must stand: one of the seven statuses each.</summary>
    public ImmutableArray<ExpectedStatus> Status { get; init; } = [];

    /// <summary>Actions that must be not yet, and until when.</summary>
    public ImmutableArray<ExpectedUntil> Until { get; init; } = [];

    /// <summary>Actions that must be clear unless a doubt holds, and the question that settles it.</summary>
    public ImmutableArray<ExpectedWait> Unless { get; init; } = [];

    /// <summary>Findings that must be certain.</summary>
    public ImmutableArray<string> Findings { get; init; } = [];

    /// <summary>Judgements whose caution must be given.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary><c>treatment</c> or <c>practice</c> when no such action may be clear at all; else null.</summary>
    public string? NoClear { get; init; }

    /// <summary>Whether no clear treatment may reach the crop.</summary>
    public bool NoClearReachingCrop { get; init; }

    /// <summary>The question that must be asked next; null when not tested.</summary>
    public string? NextQuestion { get; init; }

    /// <summary>Judgements that must hold certainly.</summary>
    public ImmutableArray<string> Fires { get; init; } = [];

    /// <summary>Judgements that must not hold certainly.</summary>
    public ImmutableArray<string> Holds { get; init; } = [];
}

/// <summary>A bar that must be given.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Because">The judgement's id.</param>
public sealed record ExpectedBar(string Action, string Because);

/// <summary>A wait that must be given.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Needs">The question's id.</param>
public sealed record ExpectedWait(string Action, string Needs);

/// <summary>A status that must come out.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Is">The word of the status, such as <c>not-yet</c>.</param>
public sealed record ExpectedStatus(string Action, string Is)
{
    /// <summary>The words of the seven statuses.</summary>
    public const string Words = "words:clear|clear-unless|waits|not-advised|not-yet|not-this-way|never";
}

/// <summary>What must end the bars of an action. One of the two at least is given.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Day">The first day on which no day or hour stands against it; null when not tested.</param>
/// <param name="State">Words that one of the states it waits for must hold; null when not tested.</param>
public sealed record ExpectedUntil(string Action, DateOnly? Day, string? State);
