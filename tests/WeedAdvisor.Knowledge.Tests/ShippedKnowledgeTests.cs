using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>The knowledge that is shipped reads without a problem.</summary>
public sealed class ShippedKnowledgeTests
{
    [Fact]
    public void It_loads_whole()
    {
        KnowledgeBase knowledge = ShippedFolder.Load();

        Assert.NotEmpty(knowledge.Treatments);
        Assert.NotEmpty(knowledge.Judgements);
    }

    [Fact]
    public void Its_worked_visits_are_visits_that_anyone_could_have_written()
    {
        KnowledgeBase knowledge = ShippedFolder.Load();

        Assert.All(knowledge.WorkedVisits, worked =>
        {
            string text = VisitText.Of(worked.Visit);
            Visit back = VisitFile.Parse(text, worked.File, knowledge).Value!;
            Assert.Equal(text, VisitText.Of(back));
            Assert.True(VisitFile.Read(Path.Combine(Repository.Rules, worked.File), knowledge).IsGood);
        });
    }
}
