using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// What a rule concludes, or what it says, is wrong; exactly one problem, in these words, must come out.
/// </summary>
public sealed class BadConsequenceTests
{
    private const string Support = "support: 0.5";

    [Theory]
    [InlineData("support: 0", "found the certainty 0; expected a certainty above 0 and at most 1")]
    [InlineData(
        "support: stron",
        "found 'stron'; expected weak, fair, strong, decisive, or a number above 0 and at most 1"
    )]
    [InlineData("support: 1.1", "found 1.1; expected a number from 0 to 1")]
    [InlineData("bar: forbidden", "found 'forbidden'; expected one of: prohibited, unsuitable")]
    [InlineData("bar:", "found nothing; expected one of: prohibited, unsuitable")]
    [InlineData(
        "support: 0.5\n  bar: prohibited",
        "found 2 consequences; expected exactly one of finding, support, doubt, bar, caution"
    )]
    [InlineData("memory: []", "found 0 consequences")]
    [InlineData("support: 0.5\n  weight: 3", "found the key 'weight'")]
    [InlineData(
        "finding: { id: surface-stays-wet, certainty: 0.5 }",
        "found 1 practice, treatment or action patterns; expected none: a finding is about the area"
    )]
    public void A_bad_consequence_is_a_problem(string consequence, string expected) =>
        AssertOne(expected, Rule.Load(consequence + "\n  because: x", "practice: {}"));

    [Theory]
    [InlineData(Support, "found 2 practice, treatment or action patterns; expected exactly one")]
    [InlineData("bar: prohibited", "found 2 practice, treatment or action patterns; expected exactly one")]
    [InlineData("caution: Beware.", "found 2 practice, treatment or action patterns; expected at most one")]
    public void Two_actions_are_a_problem(string consequence, string expected) =>
        AssertOne(expected, Rule.Load(consequence + "\n  because: x", "practice: {}", "treatment: {}"));

    [Theory]
    [InlineData(Support)]
    [InlineData("doubt: 0.5")]
    [InlineData("bar: prohibited")]
    public void An_argument_without_an_action_is_a_problem(string consequence) =>
        AssertOne(
            "found 0 practice, treatment or action patterns; expected exactly one",
            Rule.Load(consequence + "\n  because: x", "site: { place: house }", "any: { treatment: {} }")
        );

    [Theory]
    [InlineData(
        "{treatment} hurts.",
        "found the slot {treatment}; expected a slot of this rule: {weed}, {practice}, {$place}"
    )]
    [InlineData("{wead} hurts.", "did you mean 'weed'?")]
    [InlineData(
        "{$plaice} hurts.",
        "found the slot {$plaice}; expected a slot of this rule: {weed}, {practice}, {$place}; did you mean '$place'?"
    )]
    [InlineData("{} hurts.", "found the slot {}")]
    [InlineData("{weed hurts.", "found a brace without its partner; expected slots such as {treatment} or {$name}")]
    [InlineData("weed} hurts.", "found a brace without its partner")]
    [InlineData("{weed {crop} hurts.", "found a brace without its partner")]
    public void A_bad_slot_is_a_problem(string because, string expected) =>
        AssertOne(
            expected,
            Rule.Load(
                $"{Support}\n  because: \"{because}\"",
                "weed: { places: $place }",
                "practice: { places: { has: $place } }",
                "any: { crop: {} }"
            )
        );

    [Fact]
    public void A_slot_in_a_rule_without_facts_is_a_problem() =>
        AssertOne(
            "found the slot {weed}; expected no slots",
            Rule.Load("caution: \"Mind {weed}.\"\n  because: x", "site: { place: house }")
        );

    private static void AssertOne(string expected, Outcome<KnowledgeBase, Problem> outcome)
    {
        Problem problem = Assert.Single(outcome.Refusals);
        Assert.Contains(expected, problem.ToString(), StringComparison.Ordinal);
        Assert.Equal("judgements/topic.yaml", problem.Where.File);
    }
}
