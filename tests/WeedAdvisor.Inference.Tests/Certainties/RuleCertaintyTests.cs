using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Certainties;

/// <summary>What a rule is worth that builds on uncertain findings, from the knowledge to the advice.</summary>
public class RuleCertaintyTests
{
    private static readonly string[] s_findings = ["wet", "fed", "weedy"];

    // Published worked values: G. S. Novak Jr., lectures on EMYCIN's certainty factors, University of Texas at Austin.
    // The least certain premise counts, times the rule's own factor: premises 0.6, 0.3 and 0.4 with a rule of 0.7 give
    // 0.21 (www.cs.utexas.edu/~novak/cs378226.html); 0.8, 0.7 and 0.9 with 0.4 give 0.28
    // (cs.utexas.edu/~novak/cs378cl25a.html).
    [Theory]
    [InlineData(0.6, 0.3, 0.4, 0.7, 0.21)]
    [InlineData(0.8, 0.7, 0.9, 0.4, 0.28)]
    public void A_rule_is_worth_its_least_certain_finding_times_its_own_certainty(
        double first,
        double second,
        double third,
        double rule,
        double published
    )
    {
        Pattern underTheSky = SmallKnowledge.Fact(FactKind.Site, ("cover", SmallKnowledge.Is("sky")));
        Judgement[] found =
        [
            .. s_findings.Zip([first, second, third], (id, certainty) =>
                SmallKnowledge.Rule($"it-is-{id}", new Consequence.MakesFinding(id, certainty), underTheSky)
            ),
        ];
        Judgement advised = SmallKnowledge.Rule(
            "pull-where-all-three-hold",
            new Consequence.Argument(rule, false),
            [
                .. s_findings.Select(id => new Pattern.HasFinding(id)),
                SmallKnowledge.Fact(FactKind.Practice, ("id", SmallKnowledge.Is("pull"))),
            ]
        );

        ClearAction pull = Assert.Single(
            Advisor
                .Of(SmallKnowledge.Of([.. found, advised]))
                .Open(AreaCase.Alone(new DateOnly(2026, 5, 12), UnderTheSky))
                .Advice.Clear
        );

        Assert.Equal("pull", pull.Action);
        Assert.Equal(published, pull.Certainty, 12);
    }

    private static VisitArea UnderTheSky =>
        VisitArea.Blank("a", "A") with
        {
            Answers = ImmutableSortedDictionary<string, Answer>.Empty.Add(
                "cover",
                new Answer.Words(WordSet.Of(["sky"]))
            ),
            Weeds = [],
            Past = [],
        };
}
