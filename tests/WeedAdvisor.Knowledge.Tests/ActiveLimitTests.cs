using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class ActiveLimitTests
{
    private const string File = "limits.yaml";

    private const string Good =
        "- id: oxadine-yearly\n  active: oxadine\n  yearly-limit-kg-ai-ha: 2.5\n  uses-per-year: 3\n  "
        + "checked: 2026-11-25\n  from: { all: book }\n";

    [Fact]
    public void A_limit_counts_an_active_over_all_products()
    {
        var limit = new FixtureKnowledge().With(File, Good).Load().Value!.ActiveLimits["oxadine-yearly"];
        Assert.Equal(("oxadine", 2.5m, 3m), (limit.Active, limit.KgAiHaPerYear, limit.UsesPerYear));
    }

    [Fact]
    public void A_limit_may_hold_for_a_form_a_calendar_year_and_the_days_between()
    {
        const string more =
            "- id: oxadine-sprays\n  active: oxadine\n  form: spray\n  per: calendar-year\n  interval-days: 60\n  "
            + "checked: 2026-11-25\n  from: { all: book }\n";
        var limit = new FixtureKnowledge().With(File, Good + more).Load().Value!.ActiveLimits["oxadine-sprays"];
        Assert.Equal(("spray", true, 60m), (limit.Form, limit.IsCalendarYear, limit.IntervalDays));
    }

    [Theory]
    [InlineData("uses-per-year: 3", "uses-per-year: 3\n  unlimited: true", "'unlimited' beside a figure")]
    [InlineData("uses-per-year: 3", "form: dust", "found 'dust'; expected one of")]
    [InlineData("active: oxadine", "active: oxadin", "did you mean 'oxadine'?")]
    [InlineData("  yearly-limit-kg-ai-ha: 2.5\n  uses-per-year: 3\n", "", "found a limit without a figure")]
    [InlineData("uses-per-year: 3", "uses-per-year: 0", "found 0; expected a number from 1 to 366")]
    public void A_limit_that_cannot_be_is_refused(string was, string now, string said) =>
        Assert.Contains(
            said,
            Assert
                .Single(
                    new FixtureKnowledge().With(File, Good.Replace(was, now, StringComparison.Ordinal)).Load().Refusals
                )
                .ToString(),
            StringComparison.Ordinal
        );
}
