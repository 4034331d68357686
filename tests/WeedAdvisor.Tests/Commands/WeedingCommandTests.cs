using System.Globalization;
using System.Text.Json;
using WeedAdvisor.Golden;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class WeedingCommandTests
{
    private static readonly string s_rules = Repository.Rules;
    private static readonly string s_demo = Path.Combine(s_rules, "visits", "demo-spring.yaml");

    // All areas of the demo in the long run.
    private static readonly string[] s_oneArea = Sizes.IsLong ? [] : ["--area", "container-yard"];

    [Theory]
    [InlineData("--wage takes a number from 0 to 10000, not '-5'", "--wage=-5")]
    [InlineData("--wage takes a number from 0 to 10000, not 'much'", "--wage", "much")]
    [InlineData("--pots takes a whole number from 1 to 100000000, not '0'", "--pots", "0")]
    [InlineData("--intervals takes a whole number from 1 to 52, not '0'", "--intervals", "2,0")]
    [InlineData("--intervals takes a whole number from 1 to 52, not ''", "--intervals", "2,")]
    [InlineData("--miss takes a number from 0 to 100, not '101'", "--miss", "101")]
    [InlineData("--control takes a number from 0 to 100, not '-1'", "--control=-1")]
    [InlineData("--weeks takes a whole number from 1 to 260, not '2.5'", "--weeks", "2.5")]
    [InlineData("--seed takes a whole number from 0 to", "--seed", "x")]
    [InlineData("no weed 'spurge-spoted' (did you mean 'spurge-spotted'?)", "--weeds", "spurge-spoted")]
    [InlineData("--weeds names no weed", "--weeds", ",")]
    [InlineData("--format is one of text, md, html, json, not 'yaml'", "--format", "yaml")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = CommandRun.Of(["weeding", s_demo, "--knowledge", s_rules, .. args]);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void The_yard_of_the_demo_with_the_working()
    {
        CommandRun run = Run("--area", "container-yard", "--pots", "20000", "--control", "70", "--uncertain");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        ExpectedText.Matches(run.Out, "Weeding_of_the_demo_yard");
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(240)]
    public void It_fits_the_page(int width)
    {
        CommandRun run = Run([
            "--uncertain",
            "--pots",
            "100000000",
            "--width",
            width.ToString(CultureInfo.InvariantCulture),
            .. s_oneArea,
        ]);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= width, line));
    }

    [Fact]
    public void Areas_without_pots_get_a_line_and_no_number()
    {
        CommandRun run = Run("--area", "under-bench");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("No pots stand here.", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("ROUNDS COMPARED", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_every_interval_the_present_one_among_them_and_counts_every_weed()
    {
        using var json = JsonDocument.Parse(Run("--area", "liner-bed", "--intervals", "1,2", "--format", "json").Out);
        JsonElement area = json.RootElement.GetProperty("areas")[0];
        Assert.Equal(4, area.GetProperty("presentIntervalWeeks").GetInt32());
        Assert.Equal(
            [1, 2, 4],
            area.GetProperty("intervals").EnumerateArray().Select(one => one.GetProperty("weeks").GetInt32())
        );
        foreach (
            JsonElement weed in area.GetProperty("intervals")
                .EnumerateArray()
                .SelectMany(one => one.GetProperty("weeds").EnumerateArray())
        )
        {
            double came = Of(weed, "standingAtStart") + Of(weed, "emerged");
            Assert.Equal(came, Of(weed, "pulled") + Of(weed, "dead") + Of(weed, "standing"), 2);
        }

        static double Of(JsonElement weed, string name) => weed.GetProperty(name).GetDouble();
    }

    [Fact]
    public void Twice_the_pots_and_twice_the_wage_are_four_times_the_labour_cost()
    {
        double one = Cost("--pots", "1000", "--wage", "10"),
            labour = Cost("--pots", "1000", "--wage", "20") - one;
        double twice = Cost("--pots", "2000", "--wage", "20");
        Assert.Equal(twice, 2 * (one + labour), 2);
        Assert.True(labour > 0);

        double Cost(params string[] args)
        {
            using var json = JsonDocument.Parse(Run([.. args, "--area", "liner-bed", "--format", "json"]).Out);
            return json
                .RootElement.GetProperty("areas")[0]
                .GetProperty("intervals")[0]
                .GetProperty("costUsd")
                .GetDouble();
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_bytes()
    {
        string[] args = ["--uncertain", "--format", "json", .. s_oneArea];
        string first = Run([.. args, "--seed", "5"]).Out;
        Assert.Equal(first, Run([.. args, "--seed", "5"]).Out);
        Assert.NotEqual(first, Run([.. args, "--seed", "6"]).Out);
    }

    [Fact]
    public void Without_weeds_it_says_what_to_do_and_named_weeds_do()
    {
        string visit = Visit("region: willamette-valley", "[]")
            .Replace("    weeds: []\n", "", StringComparison.Ordinal);
        CommandRun run = In(visit);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(
            "area 'yard': No weed is noted here. Note those seen, or those you expect",
            Assert.Single(run.Complaints),
            StringComparison.Ordinal
        );
        CommandRun named = In(visit, "--weeds", "spurge-spotted,bittercress-hairy,spurge-spotted");
        Assert.Equal(ExitCode.Done, named.Code);
        Assert.Contains("Weeds: spotted spurge, hairy bittercress.", named.Out, StringComparison.Ordinal);
        Assert.Contains("How often you weed now is not known.", named.Out, StringComparison.Ordinal);
        Assert.Contains("the price list, invented", named.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_region_it_says_what_to_answer() =>
        Assert.Contains(
            "Answer the question 'region'",
            Assert.Single(In(Visit("edible: no", "[{ weed: spurge-spotted, stage: expected }]")).Complaints),
            StringComparison.Ordinal
        );

    [Fact]
    public void Films_cannot_be_pulled_and_are_left_out()
    {
        CommandRun alone = In(Visit("region: puget-sound", "[{ weed: algae-crust, stage: mature }]"));
        Assert.Contains("a film that cannot be pulled", Assert.Single(alone.Complaints), StringComparison.Ordinal);
        CommandRun both = In(
            Visit("region: puget-sound", "[{ weed: algae-crust, stage: mature }, { weed: liverwort, stage: expected }]")
        );
        Assert.Contains("Left out: ", both.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Knowledge_without_parameters_says_so() =>
        Assert.Contains(
            "The knowledge has no weeding.yaml",
            CommandRun.Of("weeding", CommandRun.SmallVisit, "--area", "yard").Error,
            StringComparison.Ordinal
        );

    private static CommandRun Run(params string[] args) =>
        CommandRun.Of(["weeding", s_demo, "--knowledge", s_rules, .. args]);

    private static CommandRun In(string visit, params string[] args) =>
        CommandRun.In(new StringReader(visit), ["weeding", "-", "--knowledge", s_rules, .. args]);

    private static string Visit(string answer, string weeds) =>
        $$"""
            visit: test
            date: 2026-04-14
            areas:
              - id: yard
                name: The yard
                answers: { place: container-yard, stock: established, {{answer}} }
                weeds: {{weeds}}
                past: []

            """;
}
