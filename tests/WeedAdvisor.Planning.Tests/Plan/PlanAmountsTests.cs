using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>What the uses and covers of a plan take, held against sums done here.</summary>
public sealed class PlanAmountsTests
{
    private static readonly PlanCase s_case = PlanCase
        .Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, Years.DemoYard), new PlanRequest { Pots = 40_000 })
        .Value!;

    public static TheoryData<string> Treatments => [.. s_case.Season!.Treatments.Select(treatment => treatment.Id)];

    [Theory]
    [MemberData(nameof(Treatments))]
    public void Product_is_ground_times_rate_and_tanks_hold_no_more_than_that(string treatment)
    {
        UseAmounts use = Use(treatment);
        Assert.Equal(use.NoProduct is null, !use.Ranges.IsEmpty);
        foreach (ProductRange range in use.Ranges)
        {
            bool isWeighed = range.Product.Low.Dimension == Dimension.Weight;
            (string area, string amount) = isWeighed ? ("kg/ha", "kg") : ("L/ha", "L");
            foreach ((Quantity rate, Quantity product) in Ends(range))
                Assert.Equal(rate.In(area) * use.GroundM2 / 10_000, product.In(amount), 9);
        }

        if (use.Tanks is not { } tanks)
            return;
        decimal spray = use.SprayLitresHa!.Value * use.GroundM2 / 10_000,
            full = Math.Floor(spray / use.TankLitres!.Value);
        Assert.Equal(full, tanks["full-tanks"].Value.Value);
        Quantity all = use.Ranges[0].Product.Low;
        Assert.Equal(all.InBase, tanks["all-product"].Value.InBase, 9);
    }

    // 1 mm on 1 m² is a litre.
    [Theory]
    [MemberData(nameof(Treatments))]
    public void Water_is_depth_times_the_ground_of_the_beds(string treatment)
    {
        Treatment record = ShippedRules.Knowledge.Treatments[treatment];
        UseAmounts use = Use(treatment);
        Assert.Equal(record.WaterInMm?.Low * s_case.Year.Costed.GroundM2, use.WaterLitres?.Low);
        Assert.Equal(record.WaterInMm?.High * s_case.Year.Costed.GroundM2, use.WaterLitres?.High);
    }

    [Fact]
    public void A_cover_is_the_surface_of_round_pots_times_its_depth()
    {
        Practice[] covers = [.. s_case.Measures.Where(one => CoverAmount.Of(s_case.Year, one) is not null)];
        Assert.NotEmpty(covers);
        double radius = (double)s_case.Year.Block.WidthCm.Value / 200;
        Assert.All(covers, cover =>
        {
            CoverAmount amount = CoverAmount.Of(s_case.Year, cover)!;
            double surface = Math.PI * radius * radius * 40_000;
            Assert.Equal(surface * (double)amount.DepthCm.High / 100, (double)amount.CubicM.High, 3);
            Assert.Equal(surface * (double)amount.DepthCm.Low / 100, (double)amount.CubicM.Low, 3);
        });
    }

    [Fact]
    public void A_dose_cut_to_three_figures_is_never_more_and_hardly_less() =>
        Gen.Decimal[0.001m, 100_000m]
            .Sample(
                value =>
                {
                    decimal cut = Figures.Down(value, 3);
                    Assert.InRange(cut, value * 0.99m, value * 1.000000000001m);
                    Assert.Equal(cut, Figures.Rounded(cut, 3));
                },
                iter: Sizes.Of(few: 1000, many: 1_000_000)
            );

    [Fact]
    public void The_hours_of_the_parts_of_the_year_are_the_hours_of_its_rounds()
    {
        Way way = WayCosting.Of(s_case.Year, s_case.Today).Value!;
        var parts = RoundHours.Of(s_case.Year, way);
        Assert.Equal(way.Season.Rounds.Length, parts.Sum(part => part.Rounds));
        Assert.Equal(3, parts.Length);
        Assert.Equal(way.Season.Rounds.Max(round => round.Hours) * 40, (double)parts.Max(part => part.LongestHours), 6);
    }

    private static UseAmounts Use(string treatment) =>
        UseAmounts.Of(s_case.Year, new PlannedUse(treatment, new DayRun(Years.DemoDay, Years.DemoDay), false), []);

    private static IEnumerable<(Quantity Rate, Quantity Product)> Ends(ProductRange range) =>
        [(range.Rate.Low, range.Product.Low), (range.Rate.High, range.Product.High)];
}
