using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Money;

/// <summary>
/// One question has one price: whatever command is asked, read from what it prints. Only the printed figures are
/// compared.
/// </summary>
public sealed class OnePriceTests
{
    private static readonly PriceBook s_prices = PriceBook.Of(ShippedRules.Knowledge);

    // The long run compares every area, the short one each eighth.
    private static readonly int s_step = Sizes.Of(few: 8, many: 1);

    private static readonly ImmutableArray<(Visit Visit, VisitArea Area)> s_areas =
    [
        .. ShippedRules
            .Knowledge.WorkedVisits.SelectMany(worked => worked.Visit.Areas, (worked, area) => (worked.Visit, area))
            .Where((_, place) => place % s_step == 0),
    ];

    [Fact]
    public void Weeding_as_often_as_today_costs_in_weeding_what_todays_way_costs_in_money()
    {
        int compared = 0;
        foreach ((Visit visit, VisitArea area) in s_areas)
        {
            Visit alone = visit with { Areas = [area] };
            using JsonDocument weeding = Weeding(alone);
            JsonElement rounds = weeding.RootElement.GetProperty("areas")[0];
            if (rounds.GetProperty("refused").GetArrayLength() > 0)
                continue;
            using JsonDocument money = Money(alone);
            JsonElement ways = money.RootElement.GetProperty("areas")[0];
            JsonElement today = ways.GetProperty("ways")
                .EnumerateArray()
                .Single(way => way.GetProperty("isToday").GetBoolean());
            int interval = ways.GetProperty("intervalWeeks").GetInt32();
            JsonElement same = rounds
                .GetProperty("intervals")
                .EnumerateArray()
                .Single(one => one.GetProperty("weeks").GetInt32() == interval);
            Assert.Equal(Usd(today, "usdAllPots"), Usd(same, "costUsd"));
            Assert.Equal(ways.GetProperty("pots").GetInt32(), rounds.GetProperty("pots").GetInt32());
            Assert.Equal(Weeds(ways.GetProperty("weeds")), Weeds(rounds.GetProperty("intervals")[0]));
            compared++;
        }

        Assert.True(compared >= 40 / s_step, $"only {compared} areas were compared");
    }

    [Fact]
    public void Where_nothing_went_on_hands_alone_cost_in_the_season_what_todays_way_costs_in_money()
    {
        int compared = 0;
        foreach ((Visit visit, VisitArea area) in s_areas.Where(one => one.Area.Past is { IsEmpty: true }))
        {
            AreaAdvice advice = ShippedRules.Advisor.Advise(visit with { Areas = [area] }).Areas[0];
            Outcome<SeasonCase, string> season = SeasonCase.Of(
                ShippedRules.Knowledge,
                _ => advice,
                AreaCase.Alone(visit.Date, area),
                new SeasonRequest()
            );
            if (!season.IsGood)
                continue;
            using JsonDocument money = Money(visit with { Areas = [area] });
            decimal today = money
                .RootElement.GetProperty("areas")[0]
                .GetProperty("ways")
                .EnumerateArray()
                .Single(way => way.GetProperty("isToday").GetBoolean())
                .GetProperty("usdPer1000Pots")
                .GetDecimal();
            Assert.Equal(today, Math.Round(season.Value.WayOf([]).Usd, 4), 2);
            compared++;
        }

        Assert.True(compared >= 20 / s_step, $"only {compared} areas were compared");
    }

    private static decimal Usd(JsonElement element, string name) =>
        Math.Round(element.GetProperty(name).GetDecimal(), 2);

    private static string[] Weeds(JsonElement element) =>
        element.ValueKind == JsonValueKind.Array
            ? [.. element.EnumerateArray().Select(weed => weed.GetString()!)]
            : [.. element.GetProperty("weeds").EnumerateArray().Select(weed => weed.GetProperty("weed").GetString()!)];

    private static JsonDocument Weeding(Visit visit) =>
        JsonDocument.Parse(
            WeedingJson.Of(
                WeedingReport.Of(
                    visit,
                    ShippedRules.Knowledge,
                    new YearTerms(),
                    Enumerable.Range(1, 12).ToArray(),
                    null
                ),
                ShippedRules.Knowledge
            )
        );

    private static JsonDocument Money(Visit visit)
    {
        AreaAdvice advice = ShippedRules.Advisor.Advise(visit).Areas[0];
        MoneyCase money = MoneyCase.Of(advice, visit.Date, ShippedRules.Knowledge, s_prices, new YearTerms()).Value!;
        WaysCompared compared = WaysCompared.Of(money).Value!;
        return JsonDocument.Parse(
            MoneyJson.Of(
                new MoneyReport(
                    visit,
                    ShippedRules.Knowledge,
                    s_prices,
                    [new AreaMoney(visit.Areas[0], compared, null, [])]
                )
            )
        );
    }
}
