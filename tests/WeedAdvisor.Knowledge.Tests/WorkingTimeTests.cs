using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class WorkingTimeTests
{
    private const string File = "working-times.yaml";
    private const string Set =
        "- { id: calibration-minutes-a-use, name: A name, value: [20, 45], from: { all: memory } }";
    private const string Spoon =
        "- { id: spoon-seconds-a-pot, name: A name, "
        + "by-pot-width: [{ cm: 16, takes: [2, 4] }, { cm: 36, takes: [3, 8] }], from: { all: memory } }";

    // Every working time once; the two above in full, the others with one number.
    private static readonly string s_good = string.Concat(
        WorkingTimeIds
            .All.Keys.Where(id => id is not (WorkingTimeIds.Calibration or WorkingTimeIds.Spoon))
            .Select(id => $"- {{ id: {id}, name: A name, value: 5, from: {{ all: memory }} }}\n")
            .Append(Set + "\n")
            .Append(Spoon + "\n")
    );

    [Fact]
    public void A_range_and_ranges_by_width_are_read()
    {
        var times = new FixtureKnowledge().With(File, s_good).Load().Value!.WorkingTimes;
        Assert.Equal(WorkingTimeIds.All.Keys, times.Keys);
        Assert.Equal(new Span(20, 45), times[WorkingTimeIds.Calibration].Value);
        Assert.Equal(new Span(5, 5), times[WorkingTimeIds.Boom].At(99));
        Assert.Equal(new Span(2, 4), times[WorkingTimeIds.Spoon].At(10));
        Assert.Equal(new Span(2.5m, 6), times[WorkingTimeIds.Spoon].At(26));
        Assert.Equal(new Span(3, 8), times[WorkingTimeIds.Spoon].At(60));
    }

    [Theory]
    [InlineData(Set, "calibration-minutes", "calibration-minute", "did you mean 'calibration-minutes-a-use'?")]
    [InlineData(Set, "[20, 45]", "[45, 20]", "a range with the lower number first")]
    [InlineData(Set, "[20, 45]", "[20, 700]", "from 0 to 600")]
    [InlineData(Set, "value: [20, 45], ", "", "a working time without 'value'")]
    [InlineData(Set, "value: [20, 45]", "by-pot-width: [{ cm: 16, takes: 5 }]", "'value': pots do not matter")]
    [InlineData(Set, "from: { all: memory }", "from: { all: hearsay }", "hearsay")]
    [InlineData(Spoon, "name: A name", "name: A name, value: 3", "'value' beside 'by-pot-width'")]
    [InlineData(Spoon, "cm: 36", "cm: 16", "the narrowest pot first")]
    [InlineData(Spoon, "takes: [3, 8]", "", "'takes'")]
    public void A_wrong_one_is_told_with_what_was_expected(string line, string text, string instead, string told)
    {
        string changed = s_good.Replace(
            line,
            line.Replace(text, instead, StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.NotEqual(s_good, changed);
        Outcome<KnowledgeBase, Problem> read = new FixtureKnowledge().With(File, changed).Load();
        Assert.Contains(read.Refusals, problem => problem.ToString().Contains(told, StringComparison.Ordinal));
        Assert.All(read.Refusals, problem => Assert.Equal(File, problem.Where.File));
    }

    [Fact]
    public void One_that_is_left_out_is_a_problem_and_none_at_all_are_not()
    {
        string without = s_good.Replace(Set + "\n", "", StringComparison.Ordinal);
        Problem problem = Assert.Single(new FixtureKnowledge().With(File, without).Load().Refusals);
        Assert.Equal("no working time 'calibration-minutes-a-use'", problem.Found);
        Assert.Empty(FixtureKnowledge.Good.WorkingTimes);
    }

    [Fact]
    public void Between_two_widths_it_lies_between_their_times_and_never_falls() =>
        Gen.Select(Gen.Int[0, WorkingTimeIds.PerPot.Length - 1], Gen.Decimal[5m, 60m], Gen.Decimal[0m, 40m])
            .Sample(
                (at, width, more) =>
                {
                    WorkingTime time = ShippedRules.Knowledge.WorkingTimes[WorkingTimeIds.PerPot[at]];
                    Span narrow = time.At(width),
                        wide = time.At(width + more);
                    Assert.InRange(narrow.Low, 0, wide.Low);
                    Assert.InRange(narrow.High, narrow.Low, wide.High);
                },
                iter: Sizes.Of(100, 10_000)
            );
}
