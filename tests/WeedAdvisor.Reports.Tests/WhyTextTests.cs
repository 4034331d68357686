using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.Reports.Text;

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
        Assert.Contains("no rule speaks for it", Why("let-surface-dry", SampleAdvice.BlankArea), StringComparison.Ordinal);

    [Fact]
    public void A_reason_shows_the_findings_behind_it()
    {
        var page = new Page(80);
        Reason reason = SampleAdvice.FullArea.Clear[^1].Because[0];
        ReasonText.Write(page, SampleKnowledge.Small, reason);
        ExpectedText.Matches(page.ToString());
    }

    private static string Why(string action) => Why(action, SampleAdvice.FullArea);

    private static string Why(string action, AreaAdvice area) => WhyText.Of(
        SampleAdvice.Of(area), area, SampleKnowledge.Small.ActionOf(action)!, SampleKnowledge.Small, 80);
}
