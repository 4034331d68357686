using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Desks;

public sealed class CostDeskTests
{
    [Fact]
    public void Without_a_word_typed_it_reckons_as_the_commands_do()
    {
        var desk = new CostDesk(DemoInterview.Alone());
        Commands.CommandRun money = Run("money", "--format", "json");
        using var document = System.Text.Json.JsonDocument.Parse(money.Out);
        var ways = document.RootElement.GetProperty("areas")[0].GetProperty("ways").EnumerateArray().ToArray();
        Assert.Equal(
            ways.Select(way => way.GetProperty("way").GetString()),
            desk.Ways!.Ways.Select(way => way.Plan.Id)
        );
        Assert.Equal(
            ways.Select(way => Math.Round(way.GetProperty("usdPer1000Pots").GetDecimal(), 2)),
            desk.Ways.Ways.Select(way => Math.Round(way.Usd, 2))
        );
        string weeding = Run("weeding", "--width", "100").Out;
        WeedingSeason best = desk.Intervals!.Cheapest.Season;
        Assert.Contains($"Every {best.IntervalWeeks} weeks is the cheapest", weeding, StringComparison.Ordinal);
        Assert.Equal([1, 2, 3, 4, 6, 8], desk.Intervals.Intervals.Select(one => one.Season.IntervalWeeks));
    }

    [Fact]
    public void Every_number_moves_the_result_at_once()
    {
        var desk = new CostDesk(DemoInterview.Alone());
        string before = Text(desk);
        foreach (
            (CostField field, string text) in new[]
            {
                (CostField.Pots, "25000"),
                (CostField.Wage, "21.5"),
                (CostField.Interval, "5"),
                (CostField.Missed, "25"),
                (CostField.Control, "70"),
            }
        )
        {
            desk.Type(field, text);
            Assert.NotEqual(before, Text(desk));
            before = Text(desk);
        }

        Assert.Equal(25_000, desk.Ways!.Case.Pots);
        Assert.Equal(21.5m, desk.Ways.Case.WageUsd);
        Assert.Equal(5, desk.Ways.Today.Plan.IntervalWeeks);
        Assert.Contains(desk.Intervals!.Intervals, one => one.Season.IntervalWeeks == 5);
    }

    [Fact]
    public void What_the_grower_says_is_stopped_counts_in_the_rounds_as_in_todays_way() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[1, 12])
            .Sample(
                (twentieths, weeks) =>
                {
                    var desk = new CostDesk(s_yard);
                    desk.Type(CostField.Control, CostField.Write(twentieths * 5));
                    desk.Type(CostField.Interval, CostField.Write(weeks));
                    IntervalCost at = desk.Intervals!.Intervals.Single(one => one.Season.IntervalWeeks == weeks);
                    Assert.Equal(at.Season.Hours, desk.Ways!.Today.Season.Hours, 6);
                    Assert.Equal(at.Usd, desk.Ways.Today.Usd, 6);
                },
                iter: Sizes.Of(few: 5, many: 200)
            );

    [Fact]
    public void The_more_is_stopped_the_less_todays_way_costs_and_no_other_way_moves()
    {
        var desk = new CostDesk(s_yard);
        decimal last = decimal.MaxValue;
        string[]? others = null;
        for (int percent = 0; percent <= 100; percent += 20)
        {
            desk.Type(CostField.Control, CostField.Write(percent));
            Assert.True(desk.Ways!.Today.Usd < last);
            last = desk.Ways.Today.Usd;
            string[] now =
            [
                .. desk.Ways.Ways.Where(way => way != desk.Ways.Today).Select(way => $"{way.Plan.Id} {way.Usd}"),
            ];
            Assert.Equal(others ?? now, now);
            others = now;
        }
    }

    [Theory]
    [InlineData("0")]
    [InlineData("100000001")]
    [InlineData("2.5")]
    [InlineData("1,000")]
    [InlineData("many")]
    [InlineData("-3")]
    public void A_wrong_number_is_named_beside_its_field_and_the_last_good_result_stays(string wrong)
    {
        var desk = new CostDesk(s_yard);
        desk.Type(CostField.Pots, "300");
        string good = Text(desk);
        desk.Type(CostField.Pots, wrong);
        desk.Type(CostField.Wage, "30");
        Assert.Equal($"a whole number from 1 to 100000000, not '{wrong}'", desk.Beside(CostField.Pots).Text);
        Assert.Equal(LineTone.Warning, desk.About(CostField.Pots).Tone);
        Assert.Null(desk.ProblemOf(CostField.Wage));
        Assert.True(desk.IsStale);
        Assert.Equal(good, Text(desk));
        desk.Type(CostField.Pots, "300");
        Assert.False(desk.IsStale);
        Assert.NotEqual(good, Text(desk));
    }

    [Fact]
    public void Moving_goes_from_stop_to_stop_and_ends_at_the_last()
    {
        var desk = new CostDesk(s_yard);
        desk.Move(CostField.Wage, +1);
        Assert.Equal("19", desk.TextOf(CostField.Wage));
        desk.Type(CostField.Wage, "19.4");
        desk.Move(CostField.Wage, -1);
        Assert.Equal("19", desk.TextOf(CostField.Wage));
        desk.Move(CostField.Pots, +1);
        Assert.Equal("15000", desk.TextOf(CostField.Pots));
        desk.Move(CostField.Control, +1);
        Assert.Equal("0", desk.TextOf(CostField.Control));
        Assert.All(CostField.All, field =>
        {
            foreach (int direction in new[] { 1, -1 })
            {
                for (int i = 0; i < field.Stops.Length + 2; i++)
                    desk.Move(field, direction);
                Assert.Equal(CostField.Write(direction > 0 ? field.Stops[^1] : field.Stops[0]), desk.TextOf(field));
                Assert.Null(desk.ProblemOf(field));
            }
        });
    }

    [Fact]
    public void What_is_told_of_a_field_fits_in_two_rows() =>
        Assert.All(CostField.All, field => Assert.InRange(Wrapping.Lines(field.Help, 80, " ", " ").Count(), 1, 2));

    [Fact]
    public void The_bar_grows_with_the_number() => Assert.All(CostField.All, field =>
        {
            string[] bars = [.. field.Stops.Select(stop => field.Bar(stop))];
            Assert.Equal(
                bars.Order(StringComparer.Ordinal).Reverse(),
                bars.OrderByDescending(bar => bar.Count(mark => mark == '='))
            );
            Assert.DoesNotContain('.', bars[^1]);
            Assert.DoesNotContain('=', field.Bar(null));
            Assert.Single(bars.Select(bar => bar.Length).Distinct());
        });

    [Theory]
    [InlineData("bark-pile", "No pots stand here")]
    [InlineData("under-bench", "No pots stand here")]
    public void An_area_without_pots_is_refused_in_words(string area, string said) =>
        Refused(DemoInterview.Alone(area: area), said);

    [Fact]
    public void An_area_without_weeds_or_region_is_refused_in_words()
    {
        Refused(DemoInterview.Alone(change: area => area with { Weeds = null }), "No weed is noted");
        Refused(
            DemoInterview.Alone(change: area => area with { Answers = area.Answers.Remove("region") }),
            "The region is not known"
        );
        Refused(
            new InterviewSession(SmallTrade.Knowledge, new FakeAdvice(), VisitEdits.Begin(new DateOnly(2026, 4, 14))),
            "no weeding.yaml"
        );
    }

    [Fact]
    public void Without_a_price_for_an_hour_one_is_typed()
    {
        InterviewSession Yard() =>
            new(
                ShippedRules.Knowledge with
                {
                    Prices = ShippedRules.Knowledge.Prices.Remove("labour-rate"),
                },
                new LiveAdviceSource(ShippedRules.Advisor),
                ShippedRules.Demo with
                {
                    Areas = [s_yard.Area.Without("labour-rate")],
                }
            );
        var desk = new CostDesk(Yard());
        Assert.Contains("What an hour of labour costs is not known", Text(desk), StringComparison.Ordinal);
        Assert.EndsWith("not known", desk.Beside(CostField.Wage).Text, StringComparison.Ordinal);
        desk.Type(CostField.Wage, "18");
        Assert.NotNull(desk.Ways);
    }

    [Fact]
    public void Every_line_fits_and_every_way_opens()
    {
        var desk = new CostDesk(s_yard);
        desk.Type(CostField.Pots, "100000");
        foreach (int width in new[] { 58, 78, 118 })
        {
            var lines = PageLines.Of(desk.Page(), width);
            Assert.All(lines, line => Assert.True(line.Text.Length <= width, line.Text));
            Assert.Equal(
                desk.Ways!.Ways.Select(way => way.Plan.Id),
                lines.Select(line => line.Action).OfType<string>().Distinct()
            );
            Assert.All(desk.Ways.Ways, way =>
                Assert.All(PageLines.Of(desk.Against(way.Plan.Id), width), line =>
                    Assert.True(line.Text.Length <= width, line.Text)
                )
            );
        }

        Assert.Throws<ArgumentException>(() => PageLines.Of(desk.Against("no-such-way"), 78));
    }

    [Fact]
    public void A_way_opens_with_its_budget_and_what_moves_it()
    {
        var desk = new CostDesk(s_yard);
        string text = string.Join('\n', PageLines.Of(desk.Against("bark-mulch"), 78).Select(line => line.Text));
        Assert.Contains("Added costs: ", text, StringComparison.Ordinal);
        Assert.Contains("Net change: ", text, StringComparison.Ordinal);
        Assert.Contains("WHAT MOVES THE NET CHANGE MOST\n", text, StringComparison.Ordinal);
        Assert.Matches(@"\n  [.=]*\|[.=]*(\n|$)", text);
        Assert.Contains(
            "The others are held against it.",
            string.Join('\n', PageLines.Of(desk.Against(WayPlan.Today), 78).Select(line => line.Text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Each_area_keeps_its_own_numbers_and_follows_the_interview()
    {
        InterviewSession session = DemoInterview.Alone();
        var desks = new CostDesks(session);
        CostDesk desk = desks.Here();
        desk.Type(CostField.Pots, "300");
        session.Say("labour-rate", new Answer.Number(25));
        Assert.Same(desk, desks.Here());
        Assert.Equal(25, desk.Ways!.Case.WageUsd);
        Assert.Equal("300", desk.TextOf(CostField.Pots));
        session.Open(ShippedRules.Demo with { Id = "another" }, null);
        Assert.NotSame(desk, desks.Here());
    }

    private static readonly InterviewSession s_yard = DemoInterview.Alone();

    internal static string Text(CostDesk desk) =>
        string.Join('\n', PageLines.Of(desk.Page(), 78).Select(line => line.Text));

    private static void Refused(InterviewSession session, string said)
    {
        var desk = new CostDesk(session);
        AdviceLine line = PageLines.Of(desk.Page(), 200)[0];
        Assert.Equal(LineTone.Warning, line.Tone);
        Assert.Contains(said, line.Text, StringComparison.Ordinal);
        Assert.Null(desk.Ways);
    }

    private static Commands.CommandRun Run(string command, params string[] more)
    {
        string rules = Repository.Rules;
        return Commands.CommandRun.Told([
            command,
            Path.Combine(rules, "visits", "demo-spring.yaml"),
            "--area",
            "container-yard",
            "--knowledge",
            rules,
            .. more,
        ]);
    }
}
