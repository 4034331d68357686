using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>The rule language: what is written becomes which tree.</summary>
public sealed class JudgementReadingTests
{
    [Fact]
    public void A_rule_keeps_its_topic_reason_sources_and_place()
    {
        Judgement rule = Read("support: 0.8\n  because: \"Why {action} helps.\"", "action: { }");

        Assert.Equal("topic", rule.Topic);
        Assert.Equal("a-rule", rule.Id);
        Assert.Equal("Why {action} helps.", rule.Because);
        Assert.Equal(["book"], rule.Sources);
        Assert.Equal("judgements/topic.yaml:1:3", rule.Where.ToString());
        Assert.Equal(
            new Pattern.Fact(FactKind.Action, []).Kind,
            Assert.IsType<Pattern.Fact>(Assert.Single(rule.When)).Kind
        );
    }

    [Theory]
    [InlineData("site: { place: house }", "Word house")]
    [InlineData("site: { place: [yard, house] }", "Word house, yard")]
    [InlineData("site: { place: { not: house } }", "no Word house")]
    [InlineData("site: { place: { not: [house, yard] } }", "no Word house, yard")]
    [InlineData("site: { equipment: { has: spreader } }", "Word spreader")]
    [InlineData("site: { equipment: { lacks: [spreader, sprayer] } }", "no Word sprayer, spreader")]
    [InlineData("site: { region: warm-coast }", "Word warm-coast")]
    [InlineData("site: { enclosed: yes }", "Word yes")]
    [InlineData("site: { mean-c: [3, 04] }", "Word 3, 4")]
    [InlineData("site: { mean-c: { not: 3 } }", "no Word 3")]
    [InlineData("site: { mulch-depth: { at-least: 2.5 } }", "AtLeast 2.5")]
    [InlineData("site: { mulch-depth: { at-most: 2.5 } }", "AtMost 2.5")]
    [InlineData("site: { mulch-depth: { more-than: 2 } }", "MoreThan 2")]
    [InlineData("site: { mulch-depth: { less-than: 2 } }", "LessThan 2")]
    [InlineData("site: { mulch-depth: { between: [1, 5] } }", "(AtLeast 1 and AtMost 5)")]
    [InlineData("site: { mulch-depth: { at-least: 3, at-most: 7 } }", "(AtLeast 3 and AtMost 7)")]
    [InlineData("site: { mulch-depth: { between: [1, 5], not: 3 } }", "(AtLeast 1 and AtMost 5 and no Word 3)")]
    [InlineData("site: { days-since-potting: { less-than: 14 } }", "LessThan 14")]
    [InlineData("site: { season: { not: summer } }", "no Word summer")]
    [InlineData("weed: { up: true }", "Word true")]
    [InlineData("weed: { kind: [broadleaf, bryophyte] }", "Word broadleaf, bryophyte")]
    [InlineData("weed: { rated-as: { has: annual-grasses } }", "Word annual-grasses")]
    [InlineData("crop: { is-a: { has: hollies } }", "Word hollies")]
    [InlineData("past: { result: [injury, escapes] }", "Word escapes, injury")]
    [InlineData("past: { groups: { has: \"14\" } }", "Word 14")]
    [InlineData("past: { actives: { has: oxadine } }", "Word oxadine")]
    public void A_test_is_read(string pattern, string expected) =>
        Assert.Equal([expected], Tests(Read("caution: Beware.\n  because: So.", pattern).When[0]));

    [Fact]
    public void A_variable_binds_first_and_compares_later()
    {
        Judgement rule = Read(
            "bar: unsuitable\n  because: \"{$cover} and {$days}\"",
            "site: { cover: $cover, days-since-potting: $days }",
            "treatment: { allowed-under: { has: $cover }, wait-after-potting-days: { more-than: $days } }",
            "none: { treatment: { allowed-under: { lacks: $cover } } }",
            "any: { past: { days-ago: $days } }"
        );

        Assert.Equal(["$cover binds", "$days binds"], Tests(rule.When[0]));
        Assert.Equal(["no $cover"], Tests(Assert.IsType<Pattern.None>(rule.When[1]).Inner));
        Assert.Equal(["$days"], Tests(Assert.IsType<Pattern.Any>(rule.When[2]).Inner));
        // The action is looked at last, wherever it is written.
        Assert.Equal(["$cover", "MoreThan $days"], Tests(rule.When[3]));
    }

    [Fact]
    public void A_number_can_be_called_by_a_name_and_tested_in_one_place()
    {
        Judgement rule = Read(
            "bar: unsuitable\n  not-yet: { from: $days, to: 56 }\n  because: \"{$days}\"",
            "past: { days-ago: { called: $days, less-than: 56 } }",
            "treatment: {}"
        );

        Assert.Equal(["$days binds", "LessThan 56"], Tests(rule.When[0]));
        Assert.Equal(new Lift.Days("days", null, 56), Assert.IsType<Consequence.Bar>(rule.Then).Lift);
    }

    [Fact]
    public void What_ends_a_bar_is_read()
    {
        Assert.Equal(new Lift.Never(), LiftOf("bar: prohibited"));
        Assert.Equal(new Lift.State("when it is dry"), LiftOf("bar: prohibited\n  not-yet: when it is dry"));
        Assert.Equal(new Lift.OtherWay("beside the pots"), LiftOf("bar: prohibited\n  not-this-way: beside the pots"));
    }

    private static Lift LiftOf(string consequence) =>
        Assert.IsType<Consequence.Bar>(Read($"{consequence}\n  because: So.", "treatment: {}").Then).Lift;

    [Fact]
    public void Each_consequence_is_read()
    {
        Assert.Equal(
            new Consequence.Argument(0.8, IsDoubt: false),
            Read("support: 0.8\n  because: x", "action: {}").Then
        );
        Assert.Equal(new Consequence.Argument(1, IsDoubt: true), Read("doubt: 1\n  because: x", "practice: {}").Then);
        Assert.Equal(
            new Consequence.Argument(0.4, IsDoubt: true, AfterCleaning: true),
            Read("doubt: 0.4\n  after-cleaning: true\n  because: x", "practice: {}").Then
        );
        Assert.Equal(
            new Consequence.Bar(Severity.Prohibited),
            Read("bar: prohibited\n  because: x", "treatment: {}").Then
        );
        Assert.Equal(
            new Consequence.Bar(Severity.Unsuitable),
            Read("bar: unsuitable\n  because: x", "treatment: {}").Then
        );
        Assert.Equal(
            new Consequence.Caution("Mind {weed}."),
            Read("caution: \"Mind {weed}.\"\n  because: x", "weed: {}").Then
        );
        Assert.Equal(
            new Consequence.MakesFinding("surface-stays-wet", 0.9),
            Read("finding: { id: surface-stays-wet, certainty: 0.9 }\n  because: x", "site: { place: house }").Then
        );
    }

    [Fact]
    public void A_finding_can_be_tested_for_being_made_and_for_being_absent()
    {
        Judgement rule = Read(
            "support: 0.5\n  because: x",
            "practice: {}",
            "finding: { id: surface-stays-wet }",
            "none: { finding: { id: liverwort-is-being-fed } }"
        );

        Assert.Equal(new Pattern.HasFinding("surface-stays-wet"), rule.When[0]);
        Assert.Equal(new Pattern.None(new Pattern.HasFinding("liverwort-is-being-fed")), rule.When[1]);
    }

    private static Judgement Read(string consequence, params string[] patterns) =>
        Rule.Load(consequence, patterns).Value?.Judgements.Single(rule => rule.Id == "a-rule")
        ?? throw new InvalidOperationException(Rule.Load(consequence, patterns).Refusals[0].ToString());

    private static IEnumerable<string> Tests(Pattern pattern) =>
        Assert.IsType<Pattern.Fact>(pattern).Tests.Select(condition => Written(condition.Test));

    private static string Written(AttributeTest test) =>
        test switch
        {
            AttributeTest.Word word => (word.Negated ? "no Word " : "Word ") + word.Words,
            AttributeTest.Limit limit => $"{limit.Comparison} {((Reading.Number)Reading.Of(limit.Value)).AsWord}",
            AttributeTest.Variable variable =>
                $"{(variable.Negated ? "no " : "")}${variable.Name}{(variable.Binds ? " binds" : "")}",
            AttributeTest.VariableLimit limit => $"{limit.Comparison} ${limit.Name}",
            AttributeTest.Every every => $"({string.Join(" and ", every.Tests.Select(Written))})",
            _ => "?",
        };
}
