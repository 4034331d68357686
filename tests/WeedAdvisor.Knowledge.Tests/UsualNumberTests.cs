using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>What is taken for usual: every value stands in its file, and no other.</summary>
public sealed class UsualNumberTests
{
    [Fact]
    public void A_folder_that_leaves_out_a_value_is_told_which()
    {
        string file = string.Join(
            '\n',
            FixtureKnowledge
                .Good.Usual.Records.Keys.Where(id => id != UsualIds.EntryHours)
                .Select(id => $"- {{ id: {id}, name: A usual value, value: 1, from: {{ all: invented }} }}")
        );
        Problem problem = Assert.Single(Problems(file + "\n"));
        Assert.Equal("no usual value 'entry-hours-when-unknown'", problem.Found);
    }

    [Fact]
    public void A_value_of_another_name_is_refused_with_the_nearest() =>
        Assert.Contains(Problems("- { id: rounds-week, name: Rounds, value: 4, from: { all: invented } }\n"), problem =>
            problem.Found == "'rounds-week'" && problem.Nearest == "rounds-weeks"
        );

    private static ImmutableArray<Problem> Problems(string file) =>
        new FixtureKnowledge().With("usual.yaml", file).Load().Refusals;
}
