using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class RateVisitTests
{
    private static readonly string s_rules = Repository.Rules;

    [Fact]
    public void What_was_used_in_the_area_this_year_counts()
    {
        string visit = Path.Combine(s_rules, "visits", "clean-yard-in-august.yaml");
        CommandRun alone = Run("dimethenamid-p-pendimethalin-granule");
        CommandRun after = Run("dimethenamid-p-pendimethalin-granule", "--visit", visit);
        Assert.Equal("", after.Error);
        Assert.DoesNotContain("used in twelve months", alone.Out, StringComparison.Ordinal);
        Assert.Contains("dimethenamid-P used in twelve months", after.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_visit_to_several_areas_needs_one_named()
    {
        string visit = Path.Combine(s_rules, "visits", "demo-spring.yaml");
        CommandRun run = Run("prodiamine-granule", "--visit", visit);
        Assert.Equal(ExitCode.Usage, run.Code);
        string said = Assert.Single(run.Complaints);
        Assert.StartsWith(
            "weedadvisor: the visit has several areas; name one with --visit-area: ",
            said,
            StringComparison.Ordinal
        );
        string area = said.TrimEnd('.').Split(' ')[^1];
        Assert.Equal(ExitCode.Done, Run("prodiamine-granule", "--visit", visit, "--visit-area", area).Code);
    }

    [Theory]
    [InlineData("--visit-area needs --visit FILE", ExitCode.Usage, "--visit-area", "yard")]
    [InlineData("no visit file 'nowhere.yaml'", ExitCode.InputOutput, "--visit", "nowhere.yaml")]
    public void A_slip_is_one_line(string said, int code, params string[] more)
    {
        CommandRun run = Run("prodiamine-granule", more);
        Assert.Equal(code, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void A_treatment_misspelt_is_named_with_the_nearest() =>
        Assert.Equal(
            "weedadvisor: --treatment: no treatment 'prodiamin-granule'; did you mean 'prodiamine-granule'?",
            Assert.Single(Run("prodiamin-granule").Complaints)
        );

    private static CommandRun Run(string treatment, params string[] more) =>
        CommandRun.Of([
            "rate",
            "product",
            "treatment",
            "--treatment",
            treatment,
            "--area",
            "600 ft2",
            "--end",
            "low",
            .. more,
            "--knowledge",
            s_rules,
        ]);
}
