using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.Reports.Worked;

namespace WeedAdvisor.Reports.Tests;

public sealed class ExpectationCheckTests
{
    private static readonly Expectation s_nothing = new() { Area = "mist-house", Where = new("visits/v.yaml", 7, 5) };

    [Fact]
    public void Everything_that_comes_as_expected_is_counted()
    {
        ExpectationResult result = Check(
            s_nothing with
            {
                Clear = ["surface-wash", "mulch-pots"],
                First = ["surface-wash", "mulch-pots"],
                NotClear = ["granule-05"],
                Barred = [new("granule-05", "nothing-over-cuttings")],
                Waiting = [new("granule-02", "crops")],
                Findings = ["surface-stays-wet"],
                Cautions = ["mind-the-water", "soft"],
                NextQuestion = "cover",
                Fires = ["wet-surfaces-stay-wet"],
                Holds = ["must-allow-the-cover", "no-such-rule-holds"],
            }
        );
        Assert.Empty(result.Failures);
        Assert.Equal(14, result.Passed);
    }

    public static TheoryData<string, Expectation, string> Wrong =>
        new()
        {
            {
                "clear",
                s_nothing with
                {
                    Clear = ["granule-05"],
                },
                "granule-05 to be clear; it is never, prohibited, by"
            },
            {
                "first",
                s_nothing with
                {
                    First = ["mulch-pots"],
                },
                "mulch-pots to have rank 1; surface-wash has rank 1"
            },
            {
                "far",
                s_nothing with
                {
                    First = ["surface-wash", "mulch-pots", "let-surface-dry", "x"],
                },
                "only 3 actions"
            },
            {
                "not",
                s_nothing with
                {
                    NotClear = ["mulch-pots"],
                },
                "mulch-pots not to be clear; it is clear with rank 2"
            },
            {
                "bar",
                s_nothing with
                {
                    Barred = [new("granule-05", "other")],
                },
                "granule-05 to be barred by other; it is"
            },
            { "wait", s_nothing with { Waiting = [new("granule-01", "crops")] }, "wait for crops; it waits for cover" },
            {
                "status",
                s_nothing with
                {
                    Status = [new("granule-05", "not-yet")],
                },
                "granule-05 to be not-yet; it is never"
            },
            {
                "until",
                s_nothing with
                {
                    Until = [new("granule-05", new DateOnly(2026, 5, 2), null)],
                },
                "not yet until 2026-05-02; it is never"
            },
            {
                "unless",
                s_nothing with
                {
                    Unless = [new("mulch-pots", "cover")],
                },
                "clear unless cover tells otherwise; it is clear"
            },
            { "finding", s_nothing with { Findings = ["plants-are-weak"] }, "plants-are-weak; it was not concluded" },
            { "caution", s_nothing with { Cautions = ["none-such"] }, "the caution of none-such; it was not given" },
            { "treatment", s_nothing with { NoClear = "treatment" }, "no treatment to be clear; clear: surface-wash" },
            { "practice", s_nothing with { NoClear = "practice" }, "clear: mulch-pots, let-surface-dry" },
            {
                "reach",
                s_nothing with
                {
                    NoClearReachingCrop = true,
                },
                "reaches the crop to be clear; clear: surface-wash"
            },
            { "next", s_nothing with { NextQuestion = "heated" }, "heated to be asked next; asked: cover" },
            { "fires", s_nothing with { Fires = ["must-allow-the-cover"] }, "to hold for sure; it is only possible" },
            { "holds", s_nothing with { Holds = ["it-helps-0-7"] }, "it-helps-0-7 not to hold for sure; it does" },
            {
                "area",
                s_nothing with
                {
                    Area = "attic",
                },
                "attic: expected advice for this area; the visit has no such"
            },
            { "nobody", s_nothing with { Clear = ["nothing"] }, "it is not advised: no rule speaks of it" },
        };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_does_not_come_is_told_in_one_line(string kind, Expectation expectation, string said)
    {
        Assert.NotEmpty(kind);
        ExpectationFailure failure = Assert.Single(Check(expectation).Failures);
        string line = failure.ToString();
        Assert.StartsWith($"visits/v.yaml:7: {expectation.Area}: expected ", line, StringComparison.Ordinal);
        Assert.Contains(said.Split(": expected ")[^1], line, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', line);
    }

    [Fact]
    public void A_visit_without_expectations_is_not_run()
    {
        var visit = SampleAdvice.Full.Visit;
        KnowledgeBase knowledge = SampleKnowledge.Small with { WorkedVisits = [new("visits/demo.yaml", visit, [])] };
        ExpectationResult result = ExpectationCheck.Run(knowledge, _ => throw new InvalidOperationException("run"));
        Assert.Equal(0, result.Passed);
    }

    [Fact]
    public void All_worked_visits_are_run_in_order()
    {
        var visit = SampleAdvice.Full.Visit;
        Expectation bad = s_nothing with { Clear = ["granule-05", "mulch-pots"] };
        KnowledgeBase knowledge = SampleKnowledge.Small with
        {
            WorkedVisits = [new("visits/a.yaml", visit, [bad]), new("visits/b.yaml", visit, [bad])],
        };
        ExpectationResult result = ExpectationCheck.Run(knowledge, _ => SampleAdvice.Full);
        Assert.Equal(2, result.Passed);
        Assert.Equal(2, result.Failures.Length);
    }

    private static ExpectationResult Check(Expectation expectation)
    {
        AreaAdvice area = SampleAdvice.FullArea;
        VisitAdvice advice = SampleAdvice.Of(area with { Findings = [area.Findings[0]] });
        return ExpectationCheck.Check(
            new WorkedVisit("visits/v.yaml", advice.Visit, [expectation]),
            advice,
            SampleKnowledge.Small
        );
    }
}
