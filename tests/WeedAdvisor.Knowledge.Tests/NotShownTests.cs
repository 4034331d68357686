using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>The file of what the worked visits need not show; it may be missing.</summary>
public sealed class NotShownTests
{
    [Fact]
    public void It_may_be_missing() => Assert.Empty(new FixtureKnowledge().Load().Value!.NotShown);

    [Fact]
    public void Its_exceptions_are_read_with_their_reason()
    {
        Outcome<KnowledgeBase, Problem> outcome = With(
            "- judgements: [RULE]\n  lacks: held-back\n  because: It always holds."
        );

        NotShown exception = Assert.Single(outcome.Value!.NotShown);
        Assert.Equal([Rule()], exception.Judgements);
        Assert.Empty(exception.Actions);
        Assert.Equal("held-back", exception.Lacks);
        Assert.Equal("It always holds.", exception.Because);
    }

    [Theory]
    [InlineData("- judgements: [RULE]\n  lacks: everything\n  because: So.", "'everything'")]
    [InlineData("- judgements: [no-such-rule]\n  lacks: fires\n  because: So.", "'no-such-rule'")]
    [InlineData("- actions: [no-such-action]\n  lacks: clear\n  because: So.", "'no-such-action'")]
    [InlineData("- judgements: [RULE]\n  lacks: fires", "an exception without 'because'")]
    public void What_is_wrong_in_it_is_told(string text, string found)
    {
        Problem problem = Assert.Single(With(text).Refusals);
        Assert.Equal("coverage.yaml", problem.Where.File);
        Assert.Equal(found, problem.Found);
    }

    private static Outcome<KnowledgeBase, Problem> With(string text) =>
        new FixtureKnowledge().With("coverage.yaml", text.Replace("RULE", Rule(), StringComparison.Ordinal)).Load();

    private static string Rule() => new FixtureKnowledge().Load().Value!.Judgements[0].Id;
}
