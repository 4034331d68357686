using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>Whatever bars a nursery may lift: none of them stood between a chemical and an area.</summary>
public sealed class LiftedBarLawTests
{
    [Fact]
    public void With_every_bar_lifted_that_can_be_no_chemical_is_nearer_to_use_on_any_worked_visit()
    {
        string[] ids = [.. ShippedRules.Knowledge.Judgements.Select(judgement => judgement.Id)];
        int[] refused = [.. Load(ids).Refusals.Select(problem => problem.Where.Line)];
        string[] liftable = [.. ids.Where((_, at) => !refused.Contains(at + 1))];
        Assert.NotEmpty(liftable);
        KnowledgeBase lifted = Load(liftable).Value!;
        Assert.Equal(liftable.Length, lifted.Stamp.Lifted.Length);

        var advisor = Advisor.Of(lifted);
        Assert.All(ShippedRules.WorkedAdvice, shipped =>
            Assert.Equal(Standings(shipped), Standings(advisor.Advise(shipped.Visit)))
        );
    }

    private static string[] Standings(VisitAdvice advice) =>
        [
            .. advice.Areas.SelectMany(area =>
                ShippedRules.Knowledge.Treatments.Keys.Select(id => $"{area.Area.Id} {id} {area.StatusOf(id)}")
            ),
        ];

    private static Outcome<KnowledgeBase, Problem> Load(IEnumerable<string> bars)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("weedadvisor-");
        try
        {
            using (var lines = new StreamWriter(Path.Combine(folder.FullName, "lifts.yaml")))
            {
                foreach (string bar in bars)
                    lines.Write($"- {{ bar: {bar}, because: a trial }}\n");
            }

            return KnowledgeFolder.Load(Repository.Rules, KnowledgeScope.WithoutWorkedVisits, folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
