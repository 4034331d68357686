using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>The law of a country: its rules hold there alone, and every topic is answered.</summary>
public sealed class LawFileTests
{
    private const string Register = "- { topic: register, not-held: the office of plants }\n";

    private const string WhoMay = """
        - id: only-with-a-licence
          topic: who-may-apply
          when:
            - treatment: { status: current }
          caution: Only with a licence.
          because: The law says so.
          source: [book]

        """;

    private const string Recalled = """
        - id: only-with-a-licence
          topic: who-may-apply
          caution: Only with a licence.
          because: The law says so.
          source: [memory]

        """;

    [Fact]
    public void The_country_stands_before_the_conditions_of_a_rule()
    {
        Judgement rule = Rule(WhoMay + Register, "only-with-a-licence");
        Assert.Equal(2, rule.When.Length);
        IsOfCountry(rule, "gb");
        Assert.Equal("law/gb", rule.Topic);
        Assert.Equal("gb", rule.Law!.Country);
        Assert.True(rule.Law.IsHeld);
        Assert.Equal(["who-may-apply"], rule.Law.Topics);
    }

    [Fact]
    public void A_rule_without_conditions_of_its_own_holds_in_the_whole_country()
    {
        Judgement rule = Rule(
            WhoMay.Replace("  when:\n    - treatment: { status: current }\n", "", StringComparison.Ordinal) + Register,
            "only-with-a-licence"
        );
        Assert.Single(rule.When);
        IsOfCountry(rule, "gb");
    }

    [Fact]
    public void A_topic_that_is_not_held_says_so_and_whom_to_ask()
    {
        Judgement rule = Rule(WhoMay + Register, "gb-register-is-not-held");
        IsOfCountry(rule, "gb");
        Assert.False(rule.Law!.IsHeld);
        Assert.Equal(
            new Consequence.Caution(
                "Which products are registered is not held here for the second country: ask the office of plants."
            ),
            rule.Then
        );
    }

    [Fact]
    public void A_rule_tells_when_it_was_held_against_the_text_it_cites()
    {
        Assert.Null(Rule(WhoMay + Register, "only-with-a-licence").Law!.Checked);
        Judgement rule = Rule(
            WhoMay.Replace("source: [book]", "source: [book]\n  checked: 2026-11-25", StringComparison.Ordinal)
                + Register,
            "only-with-a-licence"
        );
        Assert.Equal(new DateOnly(2026, 11, 25), rule.Law!.Checked);
    }

    [Fact]
    public void A_rule_may_answer_several_topics()
    {
        Judgement rule = Rule(
            WhoMay.Replace("topic: who-may-apply", "topic: [who-may-apply, register]", StringComparison.Ordinal),
            "only-with-a-licence"
        );
        Assert.Equal(["register", "who-may-apply"], rule.Law!.Topics);
    }

    [Theory]
    [InlineData("gb", WhoMay, "law/gb.yaml: found nothing on 'register'; expected rules with 'topic: register'")]
    [InlineData("gb", "[]\n", "found nothing on 'who-may-apply'")]
    [InlineData("gd", WhoMay + Register, "found 'gd'; expected a word of list 'country'")]
    [InlineData("other", WhoMay + Register, "found a file of law named 'other'; expected the word of one country")]
    [InlineData("gb", WhoMay + Register + Register, "found the id 'gb-register-is-not-held' a second time")]
    [InlineData(
        "gb",
        Recalled + "  checked: 2026-11-25\n" + Register,
        "found 'checked' in a rule of law that names no source; expected no 'checked'"
    )]
    [InlineData("gb", Recalled + "  checked: 2026-11-31\n" + Register, "found '2026-11-31'")]
    [InlineData("gb", WhoMay + "- { topic: register, not-held: x, checked: 2026-11-25 }\n", "found the key 'checked'")]
    [InlineData("gb", WhoMay + "- { topic: registre, not-held: x }\n", "did you mean 'register'?")]
    [InlineData("gb", WhoMay + "- { topic: register, not-held: x, source: [book] }\n", "found the key 'source'")]
    public void A_slip_is_told(string country, string text, string expected)
    {
        Outcome<KnowledgeBase, Problem> read = Load(country, text);
        Assert.Contains(read.Refusals, problem => problem.ToString().Contains(expected, StringComparison.Ordinal));
    }

    private static void IsOfCountry(Judgement rule, string country)
    {
        Pattern.Fact site = Assert.IsType<Pattern.Fact>(rule.When[0]);
        Assert.Equal(FactKind.Site, site.Kind);
        AttributeCondition condition = Assert.Single(site.Tests);
        Assert.Equal("country", condition.Attribute);
        Assert.Equal(new AttributeTest.Word(WordSet.Of([country]), Negated: false), condition.Test);
    }

    private static Judgement Rule(string text, string id)
    {
        Outcome<KnowledgeBase, Problem> read = Load("gb", text);
        Assert.Empty(read.Refusals);
        return read.Value!.Judgements.Single(one => one.Id == id);
    }

    private static Outcome<KnowledgeBase, Problem> Load(string country, string text) =>
        new FixtureKnowledge().With($"law/{country}.yaml", text).Load();
}
