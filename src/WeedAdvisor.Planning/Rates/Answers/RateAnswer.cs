using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>The answer to one rate sum.</summary>
public sealed record RateAnswer
{
    /// <summary>The figures, the one asked for first; at least one.</summary>
    public required ImmutableArray<RateResult> Results { get; init; }

    /// <summary>The working, line by line.</summary>
    public required ImmutableArray<WorkingLine> Working { get; init; }

    /// <summary>What it all means in plain words: a verdict, an order of steps.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What was assumed.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>What must be said with it.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>
    /// Keys of the sources of the method and its constants; <c>common-practice</c> and <c>memory</c> as in the
    /// knowledge.
    /// </summary>
    public ImmutableArray<string> Sources { get; init; } = [];

    /// <summary>The figure with an id.</summary>
    /// <exception cref="InvalidOperationException">There is no such figure.</exception>
    public RateResult this[string id] => Results.Single(result => result.Id == id);
}
