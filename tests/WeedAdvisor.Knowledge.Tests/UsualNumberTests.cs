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

    [Fact]
    public void A_range_holds_its_value_and_only_a_late_year_goes_below_none()
    {
        Assert.Contains(
            Problems("- { id: rounds-weeks, name: Rounds, value: 4, range: [5, 8], from: { all: invented } }\n"),
            problem => problem.Found == "the value 4 outside its range"
        );
        Assert.Contains(
            Problems("- { id: rounds-weeks, name: Rounds, value: 4, range: [-1, 8], from: { all: invented } }\n"),
            problem => problem.Found == "-1"
        );
        Assert.DoesNotContain(
            Problems(
                $"- {{ id: {UsualIds.YearLate}, name: Late, value: 0, range: [-3, 3], from: {{ all: invented }} }}\n"
            ),
            problem => problem.Where.Line == 1 && problem.Found.Contains('3', StringComparison.Ordinal)
        );
    }

    private static ImmutableArray<Problem> Problems(string file) =>
        new FixtureKnowledge().With("usual.yaml", file).Load().Refusals;
}
