using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>Something that the worked visits need not show, and why.</summary>
public sealed record NotShown
{
    /// <summary>What can be lacking: the words of <see cref="Lacks"/>.</summary>
    internal const string Words = "words:fires|expected|held-back|clear|expected-clear|barred|expected-barred";

    /// <summary>Ids of the practices and treatments meant.</summary>
    public required ImmutableArray<string> Actions { get; init; }

    /// <summary>Ids of the judgements meant.</summary>
    public required ImmutableArray<string> Judgements { get; init; }

    /// <summary>
    /// <c>fires</c>, <c>expected</c> or <c>held-back</c> of judgements; <c>clear</c>, <c>expected-clear</c>,
    /// <c>barred</c> or <c>expected-barred</c> of actions.
    /// </summary>
    public required string Lacks { get; init; }

    /// <summary>Why no visit shows it.</summary>
    public required string Because { get; init; }

    /// <summary>Where it stands.</summary>
    public required Place Where { get; init; }
}
