using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Advice;

/// <summary>Why something was concluded: the rule, the facts it matched, and the reasons of the findings it builds on.</summary>
/// <param name="Judgement">The rule's id.</param>
/// <param name="Topic">The rule's topic.</param>
/// <param name="Text">The rule's reason in plain words, slots filled in.</param>
/// <param name="Then">What the rule concludes.</param>
/// <param name="Action">The id of the action concerned, or null.</param>
/// <param name="Certainty">The rule's certainty times the least certain finding it builds on, in (0, 1]; 1 for bars and cautions.</param>
/// <param name="IsCertain">Whether every condition holds for sure.</param>
/// <param name="Needs">What has to be known before it is certain; empty when it is.</param>
/// <param name="Matched">The conditions with what they matched.</param>
/// <param name="Sources">Keys of the rule's sources.</param>
public sealed record Reason(
    string Judgement,
    string Topic,
    string Text,
    Consequence Then,
    string? Action,
    double Certainty,
    bool IsCertain,
    ImmutableArray<Need> Needs,
    ImmutableArray<MatchedPattern> Matched,
    ImmutableArray<string> Sources);

/// <summary>One condition of a rule with the fact it matched.</summary>
/// <param name="Pattern">The condition in words, such as <c>weed liverwort</c>.</param>
/// <param name="Fact">Name of the fact matched, or what stood in its place.</param>
/// <param name="Truth">Whether it holds for sure or may hold.</param>
/// <param name="Tests">Its tests with what was read.</param>
/// <param name="Behind">Reasons of the finding it names; empty for other patterns.</param>
public sealed record MatchedPattern(
    string Pattern, string Fact, Truth Truth, ImmutableArray<MatchedTest> Tests, ImmutableArray<Reason> Behind);

/// <summary>One test with what was read.</summary>
/// <param name="Attribute">The attribute.</param>
/// <param name="Expected">The test in words.</param>
/// <param name="Read">What was read.</param>
/// <param name="Truth">Whether it holds.</param>
public sealed record MatchedTest(string Attribute, string Expected, string Read, Truth Truth);
