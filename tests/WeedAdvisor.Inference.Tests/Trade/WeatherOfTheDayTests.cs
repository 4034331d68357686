using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// The weather of the visit's day: nobody sprays in wind, and a leaf spray needs its dry hours. Rain-free hours are
/// published for glyphosate and bentazon (University of Illinois 1997; the upper 6 hours of glyphosate from memory) and
/// for fatty acids (Pacific Northwest Weed Management Handbook); heat limits are from memory; the rest is common
/// practice.
/// </summary>
public class WeatherOfTheDayTests
{
    private const string Weather = "weather-today";
    private const string Glyphosate = "glyphosate-outdoor-directed";
    private const string FattyAcids = "caprylic-capric-acid-spray";

    private static readonly WordSet s_sprays = WordSet.Of(["spray-over-top", "directed-spray", "floor-spray"]);
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Theory]
    [InlineData(Glyphosate, "windy", "wind")]
    [InlineData(Glyphosate, "rain-soon", "rain soon")]
    [InlineData(Glyphosate, "frost", "frost")]
    [InlineData(Glyphosate, "hot", "")]
    [InlineData(Glyphosate, "mild-and-bright", "")]
    [InlineData("clethodim-over-top", "hot", "heat")]
    [InlineData(FattyAcids, "leaves-wet", "wet leaves")]
    [InlineData(FattyAcids, "hot", "")]
    [InlineData("hand-weed-now", "rain-soon", "")]
    public void An_answer_says_why_not_today(string action, string weather, string why)
    {
        ClearAction told = Assert.Single(OnAPath(weather).Clear, one => one.Action == action);
        Assert.Equal(why, string.Join(", ", told.NotToday));
        Assert.Empty(told.Conditions);
    }

    [Theory]
    [InlineData(Glyphosate, "no rain or sprinkling for 6 h after")]
    [InlineData("clethodim-over-top", "below 29 C, no rain or sprinkling for 1 h after")]
    [InlineData(FattyAcids, "on dry leaves, no rain or sprinkling for 4 h after")]
    [InlineData("hand-weed-now", "")]
    public void Unanswered_its_conditions_stand_with_the_spray(string action, string conditions)
    {
        ClearAction told = Assert.Single(OnAPath(null).Clear, one => one.Action == action);
        Assert.Equal(conditions, string.Join(", ", told.Conditions));
        Assert.Empty(told.NotToday);
    }

    [Fact]
    public void What_does_not_go_on_today_stands_below_what_does()
    {
        ImmutableArray<ClearAction> clear = OnAPath("windy").Clear;
        Assert.Contains(clear, one => !one.NotToday.IsEmpty);
        Assert.Equal(clear.OrderBy(one => one.Horizon).ThenBy(one => !one.NotToday.IsEmpty), clear);
        Assert.All(clear.Where(one => one.NotToday.IsEmpty && s_knowledge.Treatments.ContainsKey(one.Action)), one =>
            Assert.False(s_knowledge.Treatments[one.Action].Applied.Overlaps(s_sprays), one.Action)
        );
    }

    [Fact]
    public void No_weather_changes_a_status()
    {
        string[] silent = [.. Statuses(OnAPath(null))];
        foreach (string weather in s_knowledge.QuestionOf(Weather)!.Choices.Select(choice => choice.Id))
            Assert.Equal(silent, Statuses(OnAPath(weather)));
    }

    [Fact]
    public void No_rule_asks_for_the_weather() =>
        Assert.DoesNotContain(
            ShippedRules
                .On(AreaCase.Alone(new DateOnly(2026, 5, 14), VisitArea.Blank("a", "A")))
                .AllConclusions()
                .SelectMany(one => one.Needs),
            need => need.Id == Weather
        );

    private static IEnumerable<string> Statuses(AreaAdvice advice) =>
        advice
            .Clear.Select(one => $"{one.Action} {one.Status}")
            .Concat(advice.Waiting.Select(one => $"{one.Action} waits"))
            .Concat(advice.Barred.Select(one => $"{one.Action} {one.Status}"))
            .Concat(advice.NotAdvised.Select(one => $"{one.Action} not advised"))
            .Order(StringComparer.Ordinal);

    private static AreaAdvice OnAPath(string? weather)
    {
        (string Question, string Answer)[] answers =
        [
            ("put-on-lately", "no"),
            ("place", "walkway"),
            ("cover", "open-sky"),
            ("covering-planned", "no"),
            ("stock", "none-present"),
            ("edible", "no"),
            ("organic", "no"),
            ("floor", "gravel"),
            ("floor-state", "clean"),
            ("water-nearby", "none-near"),
            ("neighbours", "none-near"),
            ("licensed", "yes"),
            ("equipment", "backpack-sprayer"),
            ("region", "willamette-valley"),
            .. weather is null ? Array.Empty<(string, string)>() : [(Weather, weather)],
        ];
        VisitArea path = new(
            "path",
            "Path",
            AreaAnswers.Of(answers),
            [new WeedSeen("crabgrass-large", "seedling", 5), new WeedSeen("groundsel-common", "young", 5)],
            []
        );
        return ShippedRules.On(AreaCase.Alone(new DateOnly(2026, 5, 14), path));
    }
}
