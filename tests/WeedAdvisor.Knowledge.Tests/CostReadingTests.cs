using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>What a practice costs and what it grows with; what a kilogram of active costs.</summary>
public sealed class CostReadingTests
{
    private const string Practice = "practices/watering.yaml";
    private const string Materials = "    materials-usd-per-1000-pots: 0\n";
    private const string Labour = "    labour-hours-per-1000-pots: [0, 1.5]\n";

    [Theory]
    [InlineData("", CostGrowth.Pots)]
    [InlineData("    grows-with: pots\n", CostGrowth.Pots)]
    [InlineData("    grows-with: weeding\n", CostGrowth.Weeding)]
    [InlineData("    grows-with: surface\n", CostGrowth.Surface)]
    [InlineData("    grows-with: ground\n", CostGrowth.Ground)]
    [InlineData("    grows-with: nothing\n", CostGrowth.Nothing)]
    public void What_it_grows_with_is_read(string line, CostGrowth growth) =>
        Assert.Equal(growth, Read(Labour, Labour + line).Value!.Practices["let-it-dry"].Cost!.GrowsWith);

    [Fact]
    public void A_depth_and_a_working_time_stand_in_place_of_the_figures()
    {
        CostDrivers cost = new FixtureKnowledge()
            .Change(Practice, Materials, "    depth-cm: [1.5, 2.5]\n    price: labour\n")
            .Change(Practice, Labour, "    work: mulching-seconds-a-pot\n")
            .Load()
            .Value!.Practices["let-it-dry"]
            .Cost!;
        Assert.Null(cost.MaterialsUsd);
        Assert.Null(cost.LabourHours);
        Assert.Equal(new Span(1.5m, 2.5m), cost.DepthCm);
        Assert.Equal(WorkingTimeIds.Mulching, cost.Work);
    }

    [Theory]
    [InlineData(Labour, Labour + "    grows-with: pot\n", "found 'pot'", "did you mean 'pots'?")]
    [InlineData(
        Labour,
        Labour + "    work: disc-seconds-a-pot\n",
        "'work' beside 'labour-hours-per-1000-pots'",
        "one or"
    )]
    [InlineData(Labour, "    work: disc-seconds-pot\n", "found 'disc-seconds-pot'", "'disc-seconds-a-pot'")]
    [InlineData(Labour, "    work: calibration-minutes-a-use\n", "found 'calibration-minutes-a-use'", "expected")]
    [InlineData(Labour, "", "does not say how long", "'labour-hours-per-1000-pots' or 'work'")]
    [InlineData(Materials, Materials + "    depth-cm: 2\n    price: labour\n", "'depth-cm' beside", "one or the other")]
    [InlineData(Materials, "    depth-cm: 2\n", "'depth-cm' without 'price'", "price of a cubic metre")]
    [InlineData(Materials, "    depth-cm: -1\n    price: labour\n", "found -1", "from 0 to 100")]
    public void A_wrong_cost_is_one_problem(string line, string instead, string found, string expected)
    {
        string problem = Assert.Single(Read(line, instead).Refusals).ToString();
        Assert.Contains(found, problem, StringComparison.Ordinal);
        Assert.Contains(expected, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void The_price_of_a_kilogram_is_named_after_the_active_and_its_form()
    {
        Assert.Equal(
            840,
            Prices("oxadine-in-granules", "usd-per-kg-active").Value!.Prices["oxadine-in-granules"].Value
        );
        string problem = Assert.Single(Prices("oxadin-in-granules", "usd-per-kg-active").Refusals).ToString();
        Assert.StartsWith(
            "product-prices.yaml:1:3: found the price 'oxadin-in-granules'",
            problem,
            StringComparison.Ordinal
        );
        Assert.EndsWith("did you mean 'oxadine-in-granules'?", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_stands_in_one_of_the_two_files() =>
        Assert.Contains("a second time", Assert.Single(Prices("labour", "usd-per-hour").Refusals).ToString());

    private static Outcome<KnowledgeBase, Problem> Read(string line, string instead) =>
        new FixtureKnowledge().Change(Practice, line, instead).Load();

    private static Outcome<KnowledgeBase, Problem> Prices(string id, string unit) =>
        new FixtureKnowledge()
            .With(
                "product-prices.yaml",
                $"- id: {id}\n  name: A kilogram\n  value: 840\n  unit: {unit}\n  from: {{ all: invented }}\n"
            )
            .Load();
}
