using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Worked;

namespace WeedAdvisor.Reports.Tests;

public sealed class CoverageGapsTests
{
    private static readonly JudgementCoverage s_rule = new("rule", 2, 1, IsExpected: true, IsAlways: false);
    private static readonly ActionCoverage s_action = new(
        "spray",
        ["v"],
        ["w"],
        IsExpectedClear: true,
        IsExpectedBarred: true
    );

    [Fact]
    public void What_is_shown_and_expected_leaves_no_gap() => Assert.True(Gaps([s_rule], [s_action]).IsEmpty);

    public static TheoryData<string, JudgementCoverage> PoorRules =>
        new()
        {
            { "fires", s_rule with { Fires = 0 } },
            { "held-back", s_rule with { HeldBack = 0 } },
            { "expected", s_rule with { IsExpected = false } },
        };

    [Theory]
    [MemberData(nameof(PoorRules))]
    public void A_rule_that_is_not_shown_both_ways_is_a_gap(string lacks, JudgementCoverage rule) =>
        Assert.Equal(new CoverageGap("rule", lacks, null), Assert.Single(Gaps([rule], []).Open));

    [Fact]
    public void A_rule_about_the_catalogue_alone_need_not_be_held_back() =>
        Assert.True(Gaps([s_rule with { HeldBack = 0, IsAlways = true }], []).IsEmpty);

    public static TheoryData<string, ActionCoverage> PoorActions =>
        new()
        {
            { "clear", s_action with { ClearIn = [] } },
            { "expected-clear", s_action with { IsExpectedClear = false } },
            { "barred", s_action with { BarredIn = [] } },
            { "expected-barred", s_action with { IsExpectedBarred = false } },
        };

    [Theory]
    [MemberData(nameof(PoorActions))]
    public void A_chemical_that_is_not_shown_both_ways_is_a_gap(string lacks, ActionCoverage action) =>
        Assert.Equal(new CoverageGap("spray", lacks, null), Assert.Single(Gaps([], [action]).Open));

    [Fact]
    public void A_practice_need_not_be_barred()
    {
        var coverage = new Coverage(1, [], [s_action with { BarredIn = [], IsExpectedBarred = false }], []);
        Assert.True(CoverageGaps.Of(coverage, []).IsEmpty);
    }

    [Fact]
    public void A_gap_with_a_written_reason_is_excused()
    {
        CoverageGaps gaps = Gaps([], [s_action with { ClearIn = [] }], Excuse("clear"));
        Assert.True(gaps.IsEmpty);
        Assert.Equal("no label", Assert.Single(gaps.Excused).Excuse);
    }

    [Fact]
    public void An_exception_for_what_is_shown_after_all_has_to_go()
    {
        CoverageGaps gaps = Gaps([], [s_action], Excuse("clear"));
        Assert.False(gaps.IsEmpty);
        Assert.Equal("spray", Assert.Single(gaps.Idle).Subject);
    }

    private static CoverageGaps Gaps(
        ImmutableArray<JudgementCoverage> rules,
        ImmutableArray<ActionCoverage> treatments,
        params NotShown[] excuses
    ) => CoverageGaps.Of(new Coverage(1, rules, [], treatments), [.. excuses]);

    private static NotShown Excuse(string lacks) =>
        new()
        {
            Actions = ["spray"],
            Judgements = [],
            Lacks = lacks,
            Because = "no label",
            Where = new("coverage.yaml", 1, 1),
        };
}
