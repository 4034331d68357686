using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class KnowledgeScopeTests
{
    private const string Visit = "visits/wet-house.yaml",
        Sources = "sources.yaml";

    [Theory]
    [InlineData(KnowledgeScope.WithoutWorkedVisits)]
    [InlineData(KnowledgeScope.ForAdvice)]
    public void What_is_left_out_changes_nothing_else_and_not_the_stamp(KnowledgeScope scope)
    {
        KnowledgeBase whole = FixtureKnowledge.Good;
        KnowledgeBase read = new FixtureKnowledge().Load(scope).Value!;

        Assert.Equal(whole.Stamp, read.Stamp);
        Assert.Equal(whole.Judgements.Select(one => one.Id), read.Judgements.Select(one => one.Id));
        Assert.Equal(whole.Judgements.Select(one => one.Sources), read.Judgements.Select(one => one.Sources));
        Assert.Equal(whole.Questions.Select(one => one.Id), read.Questions.Select(one => one.Id));
        Assert.Equal(whole.Weeds.Keys, read.Weeds.Keys);
        Assert.Equal(whole.Crops.Keys, read.Crops.Keys);
        Assert.Equal(whole.Treatments.Keys, read.Treatments.Keys);
        Assert.Equal(whole.Practices.Keys, read.Practices.Keys);
        Assert.NotEmpty(whole.WorkedVisits);
        Assert.Empty(read.WorkedVisits);
    }

    [Fact]
    public void A_broken_worked_visit_is_a_problem_only_where_worked_visits_are_read()
    {
        FixtureKnowledge knowledge = new FixtureKnowledge().With(Visit, "date: [");

        Assert.Equal(Visit, Assert.Single(knowledge.Load().Refusals).Where.File);
        Assert.True(knowledge.Load(KnowledgeScope.WithoutWorkedVisits).IsGood);
        Assert.True(knowledge.Load(KnowledgeScope.ForAdvice).IsGood);
    }

    [Fact]
    public void A_broken_list_of_sources_is_a_problem_wherever_it_is_read()
    {
        FixtureKnowledge knowledge = new FixtureKnowledge().With(Sources, "book: [");

        Assert.Equal(Sources, Assert.Single(knowledge.Load().Refusals).Where.File);
        Assert.False(knowledge.Load(KnowledgeScope.WithoutWorkedVisits).IsGood);
        Assert.True(knowledge.Load(KnowledgeScope.ForAdvice).IsGood);
    }

    [Fact]
    public void A_file_that_must_be_there_is_missed_in_every_scope()
    {
        FixtureKnowledge knowledge = new FixtureKnowledge().Without(Sources);

        Assert.All(Enum.GetValues<KnowledgeScope>(), scope =>
            Assert.Contains(knowledge.Load(scope).Refusals, problem => problem.Where.File == Sources)
        );
    }

    [Fact]
    public void A_broken_rule_is_a_problem_in_every_scope()
    {
        string path = new FixtureKnowledge().Paths.First(one =>
            one.StartsWith("judgements/", StringComparison.Ordinal)
        );
        FixtureKnowledge knowledge = new FixtureKnowledge().With(path, "- [");

        Assert.All(Enum.GetValues<KnowledgeScope>(), scope =>
            Assert.Contains(knowledge.Load(scope).Refusals, problem => problem.Where.File == path)
        );
    }
}
