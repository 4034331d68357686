using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>What answers that are missing could make of a plan. Money is US dollars for 1000 pots.</summary>
public sealed record PlanQuestions
{
    /// <summary>Nothing is open.</summary>
    public static PlanQuestions None { get; } = new();

    /// <summary>Answers that were tried, those that change the plan most first.</summary>
    public ImmutableArray<AnswerTried> Tried { get; init; } = [];

    /// <summary>
    /// Ids of open questions of which no answer was tried: too many, or not to be answered with a word.
    /// </summary>
    public ImmutableArray<string> NotTried { get; init; } = [];

    /// <summary>Ids of preventives that are clear on no day and wait for an answer or a label.</summary>
    public ImmutableArray<string> Blocked { get; init; } = [];

    /// <summary>Ids of the questions that they wait for, that which most wait for first.</summary>
    public ImmutableArray<string> BlockedBy { get; init; } = [];

    /// <summary>How many of them wait for something that only a label can tell.</summary>
    public int BlockedByLabel { get; init; }

    /// <summary>What all of them together could save at most, whatever the answers are; 0 where they can save
    /// nothing.</summary>
    public decimal MostSavedUsd { get; init; }

    /// <summary>What it is worth to clean up round about; null where nothing seeds there.</summary>
    public SourceCleaned? Source { get; init; }
}

/// <summary>An answer that was tried.</summary>
/// <param name="Question">Id of the question.</param>
/// <param name="Answer">The answer in words.</param>
/// <param name="ChangeUsd">By how much the plan is dearer with it, at the rounds of the plan or of the others that were
/// near; below 0 where it is cheaper.</param>
/// <param name="Way">The plan with it.</param>
/// <param name="HasOtherWork">Whether other rounds, covers or preventives are chosen then.</param>
public sealed record AnswerTried(string Question, string Answer, decimal ChangeUsd, Way Way, bool HasOtherWork);
