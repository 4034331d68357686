using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>The file of parameters of the hand-weeding model; it may be missing, but is never half there.</summary>
public sealed class WeedingParameterTests
{
    private const string Walking = "id: walking-minutes-per-1000-pots-per-round";

    private static string Good { get; } =
        string.Concat(
            WeedingParameterLimits.All.Select(limits =>
                $"- {{ id: {limits.Key}, name: A name, value: {limits.Value.Low}, from: {{ all: invented }} }}\n"
            )
        );

    [Fact]
    public void It_may_be_missing() => Assert.Empty(new FixtureKnowledge().Load().Value!.Weeding);

    [Fact]
    public void Its_numbers_are_read_and_a_range_left_out_is_the_value()
    {
        Outcome<KnowledgeBase, Problem> outcome = With(
            Walking + ", name: A name, value: 0",
            Walking + ", name: Walk, value: 12.5, range: [8, 25]"
        );

        WeedingParameter walking = outcome.Value!.Weeding["walking-minutes-per-1000-pots-per-round"];
        Assert.Equal("Walk", walking.Name);
        Assert.Equal(12.5m, walking.Value);
        Assert.Equal(new Span(8, 25), walking.Range);
        Assert.Equal(new Span(1, 1), outcome.Value.Weeding["seeding-weeks"].Range);
        Assert.Equal(WeedingParameterLimits.All.Keys, outcome.Value.Weeding.Keys);
    }

    [Theory]
    [InlineData("value: 0", "value: 100001", "found 100001; expected a number from 0 to 10000")]
    [InlineData("value: 0", "value: -1", "found -1; expected a number from 0 to 10000")]
    [InlineData("value: 0", "value: twelve", "found 'twelve'; expected a number such as 12, 0.5 or -3")]
    [InlineData("value: 0, ", "", "found a parameter without 'value'; expected the key 'value'")]
    [InlineData("value: 0", "value: 0, unit: minutes", "found the key 'unit'")]
    [InlineData(
        "value: 0",
        "value: 0, range: [8, 25]",
        "found the value 0 outside its range; expected a value within 'range'"
    )]
    [InlineData("value: 0", "value: 8, range: [25, 8]", "found [25, 8]; expected a range with the lower number first")]
    [InlineData("value: 0", "value: 8, range: [8]", "found a list of 1; expected a range: [low, high]")]
    [InlineData("all: invented", "all: []", "expected at least one source")]
    [InlineData("all: invented", "all: hearsay", "found 'hearsay'; expected a key of sources.yaml")]
    public void What_is_wrong_in_it_is_told(string text, string instead, string told)
    {
        string line = $"{Walking}, name: A name, value: 0, from: {{ all: invented }} }}";
        Problem problem = Assert.Single(With(line, line.Replace(text, instead, StringComparison.Ordinal)).Refusals);
        Assert.Equal("weeding.yaml", problem.Where.File);
        Assert.Contains(told, problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_parameter_is_told_with_the_nearest_one()
    {
        Outcome<KnowledgeBase, Problem> outcome = With("id: seeding-weeks", "id: seeding-weks");
        Assert.Equal(2, outcome.Refusals.Length);
        Assert.Contains(outcome.Refusals, problem => problem.Nearest == "seeding-weeks");
        Assert.Contains(outcome.Refusals, problem => problem.Found == "no parameter 'seeding-weeks'");
    }

    [Fact]
    public void A_parameter_twice_is_a_problem()
    {
        string twice = Good + "- { id: seeding-weeks, name: A name, value: 1, from: { all: invented } }\n";
        Problem problem = Assert.Single(new FixtureKnowledge().With("weeding.yaml", twice).Load().Refusals);
        Assert.Equal("the id 'seeding-weeks' a second time", problem.Found);
    }

    private static Outcome<KnowledgeBase, Problem> With(string text, string instead)
    {
        Assert.Contains(text, Good, StringComparison.Ordinal);
        return new FixtureKnowledge()
            .With("weeding.yaml", Good.Replace(text, instead, StringComparison.Ordinal))
            .Load();
    }
}
