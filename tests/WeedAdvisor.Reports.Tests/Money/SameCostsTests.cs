using System.Text.Json;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Money;

/// <summary>
/// One use of an action in an area with given pots costs the same dollars and hours in every report, read from what is
/// printed.
/// </summary>
public sealed class SameCostsTests
{
    private const decimal Cent = 0.01m;

    private static readonly PriceBook s_prices = PriceBook.Of(ShippedRules.Knowledge);

    // All areas of the worked visits; of those without pots money says nothing.
    private static readonly (Visit Visit, VisitArea Area)[] s_areas =
    [
        .. ShippedRules
            .Knowledge.WorkedVisits.Select(worked => worked.Visit)
            .SelectMany(visit => visit.Areas.Select(area => (visit, area))),
    ];

    private static readonly Gen<(Visit Visit, VisitArea Area)> s_sized = Gen.Select(
            Gen.Int[0, s_areas.Length - 1],
            Gen.Int[1, 200_000],
            Gen.Int[60, 600],
            Gen.Bool
        )
        .Select(
            (at, pots, millimetres, isTight) =>
            {
                (Visit visit, VisitArea area) = s_areas[at];
                VisitArea sized = area.With("pots", (decimal)pots)
                    .With("pot-width", millimetres / 10m)
                    .With("spacing", isTight ? "pot-tight" : "spaced");
                return (visit with { Areas = [sized] }, sized);
            }
        );

    [Fact]
    public void Advice_and_money_print_the_same_dollars_and_hours()
    {
        int compared = 0;
        s_sized.Sample(
            drawn =>
            {
                VisitAdvice advice = ShippedRules.Advisor.Advise(drawn.Visit);
                using JsonDocument advised = Advised(advice);
                JsonElement area = advised.RootElement.GetProperty("areas")[0];
                if (MoneyJsonOf(advice, drawn.Visit) is not { } printed)
                    return;
                using JsonDocument money = printed;
                JsonElement ways = money.RootElement.GetProperty("areas")[0];
                decimal thousands = ways.GetProperty("pots").GetDecimal() / 1000;
                decimal wage = ways.GetProperty("wageUsdPerHour").GetDecimal();
                foreach (JsonElement way in ways.GetProperty("ways").EnumerateArray())
                {
                    // The same action once only, whatever the tool: a boom is another way.
                    if (way.GetProperty("way").GetString()!.EndsWith("-by-boom", StringComparison.Ordinal))
                        continue;
                    foreach (JsonElement done in way.GetProperty("actions").EnumerateArray())
                    {
                        string action = done.GetProperty("action").GetString()!;
                        if (Clear(area, action) is not { } told)
                            continue;
                        decimal uses = done.GetProperty("times").GetDecimal();
                        decimal materials = Item(way, $"materials-{action}", "usdPer1000Pots"),
                            hours = Item(way, $"labour-{action}", "hoursPer1000Pots");
                        Assert.Equal(told.GetProperty("hoursPer1000Pots").GetDecimal() * uses, hours, Near(uses));
                        Assert.Equal(
                            told.GetProperty("costUsdPer1000Pots").GetDecimal() * uses,
                            materials + (hours * wage),
                            Near(uses)
                        );
                        Assert.Equal(
                            told.GetProperty("costUsd").GetDecimal() / thousands,
                            told.GetProperty("costUsdPer1000Pots").GetDecimal(),
                            (one, other) => Math.Abs(one - other) <= 0.0001m / thousands + 0.0001m
                        );
                        Interlocked.Increment(ref compared);
                    }
                }
            },
            iter: Sizes.Of(30, 1000),
            threads: 1
        );
        Assert.True(compared > 30, $"only {compared} were compared");
    }

    [Theory]
    [InlineData("container-yard", 2_500)]
    [InlineData("container-yard", 40_000)]
    public void The_season_prints_them_with_the_plants_that_it_reckons_lost(string id, int pots)
    {
        VisitArea yard = ShippedRules
            .Demo.Areas.Single(area => area.Id == id)
            .With("pots", (decimal)pots)
            .With("pot-width", 20m)
            .With("spacing", "spaced");
        Visit visit = ShippedRules.Demo with { Areas = [yard] };
        using JsonDocument advised = Advised(ShippedRules.Advisor.Advise(visit));
        SeasonCase found = SeasonCase
            .Of(ShippedRules.Advisor, AreaCase.Alone(visit.Date, yard), new SeasonRequest())
            .Value!;
        YearPlan year = SeasonPlanner.Quick(
            found,
            ShippedRules.Knowledge,
            SeasonSearch.Prepare(found.Problem),
            TestContext.Current.CancellationToken
        );
        using var season = JsonDocument.Parse(
            SeasonJson.Of(new SeasonReport(visit, ShippedRules.Knowledge, [new AreaSeason(yard, year, [])]))
        );
        decimal lost =
            1000
            * ShippedRules.Knowledge.Usual["plants-hurt-per-10000-each-application"]
            / 10_000
            * ShippedRules.Knowledge.Prices["finished-pot"].Value
            // What a pot brings goes with the surface of its mix; the price is that of a pot of 16 cm.
            * (found.Sums.Block.WidthCm.Value / 16)
            * (found.Sums.Block.WidthCm.Value / 16);
        int compared = 0;
        JsonElement plan = season.RootElement.GetProperty("areas")[0].GetProperty("plan");
        foreach (JsonElement use in plan.GetProperty("applications").EnumerateArray())
        {
            string treatment = use.GetProperty("treatment").GetString()!;
            if (Clear(advised.RootElement.GetProperty("areas")[0], treatment) is not { } told)
                continue;
            decimal hurt = ShippedRules.Knowledge.Treatments[treatment].ReachesCrop ? lost : 0;
            Assert.InRange(
                use.GetProperty("usd").GetDecimal() - hurt - told.GetProperty("costUsdPer1000Pots").GetDecimal(),
                -Cent,
                Cent
            );
            compared++;
        }

        Assert.NotEqual(0, compared);
    }

    private static Func<decimal, decimal, bool> Near(decimal uses) =>
        (one, other) => Math.Abs(one - other) <= Cent * uses;

    private static JsonDocument Advised(VisitAdvice advice) =>
        JsonDocument.Parse(JsonReport.Of(advice, ShippedRules.Knowledge));

    private static JsonDocument? MoneyJsonOf(VisitAdvice advice, Visit visit)
    {
        MoneyCase? money = MoneyCase
            .Of(advice.Areas[0], visit.Date, ShippedRules.Knowledge, s_prices, new YearTerms(null, null))
            .Value;
        return money is null || WaysCompared.Of(money).Value is not { } compared
            ? null
            : JsonDocument.Parse(
                MoneyJson.Of(
                    new MoneyReport(
                        visit,
                        ShippedRules.Knowledge,
                        s_prices,
                        [new AreaMoney(advice.Areas[0].Area, compared, null, [])]
                    )
                )
            );
    }

    private static JsonElement? Clear(JsonElement area, string action)
    {
        foreach (JsonElement clear in area.GetProperty("clear").EnumerateArray())
        {
            if (clear.GetProperty("action").GetString() == action)
                return clear;
        }

        return null;
    }

    private static decimal Item(JsonElement way, string item, string figure) =>
        way.GetProperty("items")
            .EnumerateArray()
            .Single(one => one.GetProperty("item").GetString() == item)
            .GetProperty(figure)
            .GetDecimal();
}
