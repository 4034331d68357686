using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>One thing is wrong in a rule; exactly one problem, in these words, must come out.</summary>
public sealed class BadJudgementTests
{
    private const string Support = "support: 0.5";

    [Theory]
    [InlineData(
        "site: { plaice: house }",
        "found 'plaice'; expected something that a site pattern can test; did you mean 'place'?"
    )]
    [InlineData(
        "site: { place: hous }",
        "found 'hous'; expected an answer to 'place': house, yard; did you mean 'house'?"
    )]
    [InlineData("site: { place: [] }", "found an empty list; expected at least one word")]
    [InlineData("site: { place: [house, house] }", "found 'house' a second time")]
    [InlineData("site: { place: {} }", "found an empty map; expected one of: at-least")]
    [InlineData(
        "site: { place: { nott: house } }",
        "found 'nott'; expected one of: at-least, at-most, between, called, has, lacks, less-than, more-than, not; did "
            + "you mean 'not'?"
    )]
    [InlineData(
        "site: { place: { has: house } }",
        "found 'has' on 'place'; expected 'place: house': 'place' is not a set"
    )]
    [InlineData("site: { place: { at-least: 3 } }", "found 'at-least' on 'place', which is not a number")]
    [InlineData("site: { place: { between: [1, 2] } }", "found 'between' on 'place', which is not a number")]
    [InlineData("site: { place: }", "found nothing; expected a word")]
    [InlineData("site: { place: [[house]] }", "found a list; expected a word")]
    [InlineData("site: { mean-c: warm }", "found 'warm'; expected a number: 'mean-c' is one")]
    [InlineData("site: { mean-c: 130 }", "found 130; expected a number from -40 to 45")]
    [InlineData("site: { mulch-depth: { at-least: 31 } }", "found 31; expected a number from 0 to 30")]
    [InlineData("site: { mulch-depth: { between: [5, 1] } }", "found [5, 1]; expected the lower number first")]
    [InlineData("site: { mulch-depth: { between: 5 } }", "found '5'; expected two numbers: [low, high]")]
    [InlineData("site: { total-cover-percent: { more-than: 101 } }", "found 101; expected a number from 0 to 100")]
    [InlineData(
        "site: { potted-on: 2026-01-01 }",
        "found 'potted-on'; expected the number of days that follows from the date, such as 'days-since-potting'"
    )]
    [InlineData("site: { month: [6, 7] }", "found 'month'; expected 'season', 'mean-c' or 'warming'")]
    [InlineData("site: { crops: hollies }", "found 'crops'; expected a 'crop:' pattern")]
    [InlineData("site: { weeds: liverwort }", "found 'weeds'; expected a 'weed:' pattern")]
    [InlineData("site: { past: oxadine-granules }", "found 'past'; expected a 'past:' pattern")]
    [InlineData("site: house", "found 'house'; expected a map of tests")]
    [InlineData("weed: { id: liverwurt }", "did you mean 'liverwort'?")]
    [InlineData("weed: { up: yes }", "found 'yes'; expected one of: false, true")]
    [InlineData("weed: { cover-percent: { at-least: 120 } }", "found 120; expected a number from 0 to 100")]
    [InlineData("weed: { colour: green }", "found 'colour'; expected something that a weed pattern can test")]
    [InlineData("past: { groups: { has: 15 } }", "found '15'; expected a site-of-action group of an active: 14")]
    [InlineData("past: { actives: { has: oxadin } }", "did you mean 'oxadine'?")]
    [InlineData("crop: { id: $crop }", "found the variable $crop, bound and never used")]
    [InlineData("crop: { is-a: { has: $crop } }", "found the variable $crop before it is bound")]
    [InlineData("none: { crop: { id: $crop } }", "found the variable $crop before it is bound")]
    [InlineData(
        "crop: { id: $Crop }",
        "found '$Crop'; expected a variable: a dollar sign and lower-case words joined by hyphens"
    )]
    [InlineData("site: { mulch-depth: { at-least: $x } }", "found the variable $x before it is bound")]
    [InlineData("site: { place: [house, $x] }", "found '$x'; expected a word; a variable stands alone, not in a list")]
    [InlineData(
        "site: { mean-c: $m, place: $m }",
        "found $m, which holds a number; expected a variable that holds words"
    )]
    [InlineData(
        "weed: { up: $m, id: $m }",
        "found $m, which holds true or false; expected a variable that holds words"
    )]
    [InlineData(
        "site: { place: $m, mulch-depth: { at-most: $m } }",
        "found $m, which holds words; expected a variable that holds a number"
    )]
    [InlineData(
        "weeds: { up: true }",
        "found 'weeds'; expected one of: action, any, closure, crop, escape, finding, limit, none, past, practice, "
            + "site, treatment, weed; did you mean 'weed'?"
    )]
    [InlineData("{ weed: {}, crop: {} }", "found a map of keys; expected one pattern: a map with one key")]
    [InlineData("weed", "found 'weed'; expected one pattern: a map with one key")]
    [InlineData(
        "none: { none: { weed: {} } }",
        "found 'none'; expected one of: action, closure, crop, escape, finding, limit, past, practice, site, "
            + "treatment, weed"
    )]
    [InlineData("finding: { id: surface-stays-wett }", "did you mean 'surface-stays-wet'?")]
    [InlineData(
        "finding: { id: surface-stays-wet, certainty: 1 }",
        "found the key 'certainty'; expected keys of a finding: id"
    )]
    [InlineData("finding: surface-stays-wet", "found 'surface-stays-wet'; expected a finding, as a map of keys")]
    [InlineData(
        "past: { days-ago: { less-than: 56, called: $ago } }",
        "found 'called' here; expected 'called: $name' before the tests"
    )]
    public void A_bad_pattern_is_a_problem(string pattern, string expected) =>
        AssertOne(expected, Rule.Load(Support + "\n  because: x", "practice: {}", pattern));

    [Fact]
    public void A_pattern_that_is_held_against_the_action_before_it_is_a_problem() =>
        AssertOne(
            "found the variable $wait of the action, used after it; expected the comparison on the action itself",
            Rule.Load(
                "bar: prohibited\n  because: x",
                "treatment: { wait-after-potting-days: $wait }",
                "site: { days-since-potting: { less-than: $wait } }"
            )
        );

    [Fact]
    public void The_same_id_in_two_files_is_a_problem() =>
        AssertOne(
            "found the id 'drying-helps' a second time; expected another id: judgements/moisture.yaml:10:3 has this "
                + "one",
            Rule.Load("- id: drying-helps\n  when: [practice: {}]\n  doubt: 0.5\n  because: x\n  source: [book]\n")
        );

    [Theory]
    [InlineData("when: []", "found an empty list; expected a list of at least one pattern")]
    [InlineData("when: { site: { place: house } }", "found a map of keys; expected a list of at least one pattern")]
    public void A_rule_without_patterns_is_a_problem(string when, string expected) =>
        AssertOne(expected, Rule.Load($"- id: a-rule\n  {when}\n  caution: Beware.\n  because: x\n  source: [book]\n"));

    [Theory]
    [InlineData("finding: { id: liverwort-is-being-fed }")]
    [InlineData("none: { finding: { id: liverwort-is-being-fed } }")]
    [InlineData("any: { finding: { id: liverwort-is-being-fed } }")]
    public void Findings_that_depend_on_themselves_are_a_problem(string pattern) =>
        AssertOne(
            "found findings that depend on themselves: liverwort-is-being-fed needs surface-stays-wet needs "
                + "liverwort-is-being-fed",
            Rule.Load("finding: { id: surface-stays-wet, certainty: 0.5 }\n  because: x", pattern)
        );

    [Fact]
    public void A_finding_that_needs_itself_is_a_problem() =>
        AssertOne(
            "found findings that depend on themselves: surface-stays-wet needs surface-stays-wet",
            Rule.Load(
                "finding: { id: surface-stays-wet, certainty: 0.5 }\n  because: x",
                "finding: { id: surface-stays-wet }"
            )
        );

    private static void AssertOne(string expected, Outcome<KnowledgeBase, Problem> outcome)
    {
        Problem problem = Assert.Single(outcome.Refusals);
        Assert.Contains(expected, problem.ToString(), StringComparison.Ordinal);
        Assert.Equal("judgements/topic.yaml", problem.Where.File);
    }
}
