using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.Tests;

public sealed class WhyTextTests
{
    [Fact]
    public void Why_an_action_is_clear_though_something_speaks_against_it() => ExpectedText.Matches(Why("mulch-pots"));

    [Fact]
    public void Why_a_treatment_waits() => ExpectedText.Matches(Why("granule-01"));

    [Fact]
    public void Why_a_treatment_is_barred() => ExpectedText.Matches(Why("granule-05"));

    [Fact]
    public void Why_an_action_is_not_advised() =>
        Assert.Contains(
            "Here: not advised (nothing speaks for it here).",
            Why("let-surface-dry", SampleAdvice.BlankArea),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_caution_is_told_before_its_reason()
    {
        AreaAdvice area = SampleAdvice.FullArea with { Trail = new GivenTrail([SampleAdvice.Minding("surface-wash")]) };
        string text = Why("surface-wash", area, full: true);
        Assert.Contains(
            "WHAT TO MIND WITH IT\n  - Pull what it misses.\n    because: What is left seeds.\n",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Dates_and_the_cautions_of_the_record_stand_with_a_clear_action()
    {
        string text = Why("surface-wash");
        Assert.Contains(
            "by 11 October 2026: the house must stay open after it before film goes on\n",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("WHAT TO MIND WITH IT\n  - It bleaches what it splashes.\n", text, StringComparison.Ordinal);
        Assert.Contains(
            "WHAT ITS RECORD SAYS TO MIND, WHEREVER IT IS DONE\n  - Rinse the sprayer.\n",
            Why("surface-wash", SampleAdvice.FullArea, full: true),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_reason_shows_the_findings_behind_it()
    {
        Reason reason = SampleAdvice.FullArea.Clear[^1].Because[0];
        var blocks = new ReasonBlocks(new Names(SampleKnowledge.Small), new ConditionSentences(SampleKnowledge.Small));
        Block block = blocks.Of([reason]) with { Indent = 2 };
        ExpectedText.Matches(DocumentText.Of([block], 80));
    }

    private static string Why(string action) => Why(action, SampleAdvice.FullArea);

    private static string Why(string action, AreaAdvice area, bool full = false) =>
        DocumentText.Of(
            WhyDocument.Of(SampleAdvice.Of(area), SampleKnowledge.Small.ActionOf(action)!, SampleKnowledge.Small, full),
            80
        );
}
