using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>
/// A rule of the trade: conditions, one consequence, the reason in plain words. This tree is the one source from which
/// the engine's rule, the explanations and the documentation come.
/// </summary>
/// <param name="Id">The rule's id: a kebab-case sentence that states it.</param>
/// <param name="Topic">The topic file it stands in, such as <c>under-cover</c>.</param>
/// <param name="When">The conditions, all of which must hold, in the order written; never empty.</param>
/// <param name="Then">The one consequence.</param>
/// <param name="Because">The reason, in words for the grower; may hold slots such as <c>{treatment}</c> and
/// <c>{$cover}</c>.</param>
/// <param name="Sources">Keys of the sources; never empty.</param>
/// <param name="Memory">Names of fields whose value is from memory.</param>
/// <param name="Where">Where the rule stands.</param>
public sealed record Judgement(
    string Id,
    string Topic,
    ImmutableArray<Pattern> When,
    Consequence Then,
    string Because,
    ImmutableArray<string> Sources,
    ImmutableArray<string> Memory,
    Place Where
)
{
    /// <summary>The country whose law it tells; null for a rule of the trade, which holds everywhere.</summary>
    public LawAnswer? Law { get; init; }
}

/// <summary>What a rule answers of a country's law.</summary>
/// <param name="Country">The country in which alone it holds: a word of list <c>country</c>.</param>
/// <param name="Topics">Words of list <c>law-topic</c> that it answers.</param>
/// <param name="IsHeld">False when it only says that the topic is not held, and whom to ask.</param>
public sealed record LawAnswer(string Country, WordSet Topics, bool IsHeld)
{
    /// <summary>The day it was last held against the text that it cites; null when it never was.</summary>
    public DateOnly? Checked { get; init; }
}
