using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Lines;

/// <summary>What a reason speaks of, in short, is what its conditions matched.</summary>
public sealed class ReasonSubjectsTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void The_subjects_of_a_reason_are_the_facts_that_its_conditions_matched_by_name_and_in_order()
    {
        HashSet<string> kinds = [];
        new RandomVisits(s_knowledge).Case.Sample(
            looked =>
            {
                foreach (Reason reason in ShippedRules.Advisor.Open(looked).Advice.AllConclusions())
                {
                    Assert.Equal(
                        reason.Matched.Select(match => (match.Pattern, match.Fact)),
                        reason.Subjects.Select(subject => (subject.Pattern, subject.Fact))
                    );
                    Assert.Equal(RuleOf(reason).When.Length, reason.Subjects.Length);
                    kinds.UnionWith(RuleOf(reason).When.Select(pattern => pattern.GetType().Name));
                }
            },
            iter: Sizes.Of(10, 300),
            threads: 1
        );
        Assert.Superset(
            new HashSet<string>
            {
                nameof(Pattern.Fact),
                nameof(Pattern.HasFinding),
                nameof(Pattern.None),
                nameof(Pattern.Any),
            },
            kinds
        );
    }

    [Fact]
    public void A_weed_that_is_seen_is_called_by_its_name_and_one_that_is_not_there_by_none()
    {
        AreaAdvice mist = ShippedRules.Advisor.Advise(ShippedRules.Visit("mist-house-with-liverwort")).Areas[0];
        string[] lit =
        [
            .. mist.AllConclusions()
                .Where(reason =>
                    reason.Judgement == "darkness-stops-seed-that-needs-light" && reason.Action == "rice-hull-mulch"
                )
                .Select(reason => Assert.Single(reason.Subjects, subject => subject.Pattern == "weed").Fact)
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(["algae crust", "common liverwort", "flexuous bittercress"], lit);
        foreach (Reason reason in mist.AllConclusions())
        {
            for (int at = 0; at < reason.Subjects.Length; at++)
            {
                if (RuleOf(reason).When[at] is Pattern.None && reason.Matched[at].Truth == Truth.Yes)
                    Assert.Equal("none", reason.Subjects[at].Fact);
            }
        }
    }

    [Fact]
    public void A_reason_made_by_hand_speaks_of_what_it_was_given()
    {
        var reason = new Reason(
            "rule",
            "topic",
            "It is wet.",
            new Consequence.Bar(Severity.Unsuitable),
            "cover",
            1,
            true,
            [],
            [
                new MatchedPattern("weed", "liverwort", Truth.Yes, [], []),
                new MatchedPattern("no crop", "none", Truth.Yes, [], []),
            ],
            []
        );
        Assert.Equal([new MatchedSubject("weed", "liverwort"), new MatchedSubject("no crop", "none")], reason.Subjects);
    }

    private static Judgement RuleOf(Reason reason) =>
        s_knowledge.Judgements.Single(rule => rule.Id == reason.Judgement);
}
