using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>The knowledge that is shipped reads without a problem.</summary>
public sealed class ShippedKnowledgeTests
{
    [Fact]
    public void It_loads_whole()
    {
        KnowledgeBase knowledge = Load();

        Assert.NotEmpty(knowledge.Treatments);
        Assert.NotEmpty(knowledge.Judgements);
    }

    [Fact]
    public void Its_worked_visits_are_visits_that_anyone_could_have_written()
    {
        KnowledgeBase knowledge = Load();

        Assert.All(knowledge.WorkedVisits, worked =>
        {
            string text = VisitText.Of(worked.Visit);
            Visit back = VisitFile.Parse(text, worked.File, knowledge).Value!;
            Assert.Equal(text, VisitText.Of(back));
            Assert.True(VisitFile.Read(Path.Combine(Rules(), worked.File), knowledge).IsGood);
        });
    }

    private static KnowledgeBase Load()
    {
        Outcome<KnowledgeBase, Problem> outcome = KnowledgeFolder.Load(Rules());
        Assert.True(outcome.IsGood, string.Join('\n', outcome.Refusals));
        return outcome.Value!;
    }

    private static string Rules()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WeedAdvisor.sln")))
            folder = folder.Parent;
        Assert.NotNull(folder);
        return Path.Combine(folder.FullName, "rules");
    }
}
