using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>An answer, or why there is none. A doubtful entry is refused or questioned; it never becomes a number.</summary>
public sealed record RateOutcome
{
    private RateOutcome(RateAnswer? answer, ImmutableArray<RateProblem> problems)
    {
        Answer = answer;
        Problems = problems;
    }

    /// <summary>The answer; null when there are problems.</summary>
    public RateAnswer? Answer { get; }

    /// <summary>What stands in the way, in the order of the fields; empty when there is an answer.</summary>
    public ImmutableArray<RateProblem> Problems { get; }

    /// <summary>An answer.</summary>
    public static implicit operator RateOutcome(RateAnswer answer) => Of(answer);

    /// <summary>A refusal.</summary>
    public static implicit operator RateOutcome(RateProblem problem) => Refused(problem);

    /// <summary>An answer.</summary>
    public static RateOutcome Of(RateAnswer answer) => new(answer, []);

    /// <summary>A refusal.</summary>
    /// <param name="problems">What stands in the way, at least one.</param>
    public static RateOutcome Refused(params ImmutableArray<RateProblem> problems) => problems.IsEmpty
        ? throw new ArgumentException("a refusal needs a reason", nameof(problems))
        : new RateOutcome(null, problems);

    /// <summary>An answer.</summary>
    public static RateOutcome ToRateOutcome(RateAnswer answer) => Of(answer);

    /// <summary>A refusal.</summary>
    public static RateOutcome ToRateOutcome(RateProblem problem) => Refused(problem);
}

/// <summary>Why an entry gives no number.</summary>
/// <param name="Field">Id of the field at fault.</param>
/// <param name="Text">What was found and what is expected, in one line without the field's name.</param>
public sealed record RateProblem(string Field, string Text);
