using CsCheck;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>Laws that the sums about products, tanks, areas and mulch keep for any entries.</summary>
public sealed class AmountLawTests
{
    private static readonly Gen<decimal> s_percent = Gen.Int[10, 1000].Select(tenths => tenths / 10m);
    private static readonly Gen<decimal> s_rate = Gen.Int[1, 2000].Select(hundredths => hundredths / 100m);
    private static readonly Gen<decimal> s_perGallon = Gen.Int[5, 100].Select(tenths => tenths / 10m);
    private static readonly Gen<string> s_pattern = Among("square", "offset");

    [Fact]
    public void Product_for_an_active_brings_that_active_back() =>
        Gen.Select(s_rate, Gen.OneOf(s_percent.Select(Percent), s_perGallon.Select(PerGallon)))
            .Sample(
                (rate, strength) =>
                {
                    RateAnswer there = Sums.Answer(
                        "product",
                        "from-active",
                        ("active", Typed(rate, "lb/acre")),
                        ("strength", strength)
                    );
                    Quantity product = there["product-per-area"].Value;
                    RateAnswer back = Sums.Answer(
                        "product",
                        "to-active",
                        ("product", Typed(Math.Round(product.Value, 9), product.Unit.Symbol)),
                        ("strength", strength)
                    );
                    Assert.Equal((double)rate, (double)back["active"].Value.In("lb/acre"), 1e-6);
                }
            );

    [Fact]
    public void Tanks_add_up_to_the_spray_and_the_product_of_the_whole_area() =>
        Gen.Select(Gen.Int[500, 200000], Gen.Int[5, 100], Gen.Int[2, 100], Among("pt/acre", "lb/acre"), Gen.Int[0, 7])
            .Sample(
                (area, volume, tank, unit, dead) =>
                {
                    RateAnswer answer = Sums.Answer(
                        "tank",
                        "loads",
                        ("area", Typed(area, "ft2")),
                        ("spray-volume", Typed(volume, "gal/acre")),
                        ("tank", Typed(tank, "gal")),
                        ("rate", "2 " + unit),
                        ("dead-volume", Typed(dead / 4m, "qt"))
                    );
                    decimal spray = (area / 43560m * volume) + (dead / 16m);
                    string weighed = unit == "pt/acre" ? "pt" : "lb";
                    Assert.Equal((double)spray, (double)Sum(answer, "spray", "gal"), 1e-9);
                    Assert.Equal((double)(spray / volume * 2), (double)Sum(answer, "product", weighed), 1e-9);
                    Assert.Equal((double)(spray / volume * 2), (double)answer["all-product"].Value.In(weighed), 1e-9);
                }
            );

    [Fact]
    public void Hopper_loads_add_up_to_all_the_product() =>
        Gen.Select(Gen.Int[500, 200000], Gen.Int[50, 300], Gen.Int[5, 80])
            .Sample(
                (area, rate, hopper) =>
                {
                    RateAnswer answer = Sums.Answer(
                        "tank",
                        "hopper",
                        ("area", Typed(area, "ft2")),
                        ("rate", Typed(rate, "lb/acre")),
                        ("hopper", Typed(hopper, "lb"))
                    );
                    decimal last = Optional(answer, "last-load", "lb");
                    Assert.InRange(last, 0, hopper);
                    Assert.Equal(
                        area / 43560.0 * rate,
                        (double)((answer["full-loads"].Value.Value * hopper) + last),
                        1e-9
                    );
                }
            );

    [Fact]
    public void Areas_of_benches_alike_add_up_and_beds_and_aisles_make_the_whole() =>
        Gen.Select(Gen.Int[10, 900], Gen.Int[20, 90], Gen.Int[0, 9])
            .Sample(
                (length, width, count) =>
                {
                    RateAnswer many = Sums.Answer(
                        "area",
                        "ground",
                        ("length", Typed(length, "ft")),
                        ("width", Typed(width, "ft")),
                        ("count", Typed(count + 1, "").Trim())
                    );
                    Assert.Equal((double)length * width * (count + 1), (double)many["area"].Value.In("ft2"), 1e-6);
                    RateAnswer bed = Sums.Answer(
                        "area",
                        "bed",
                        ("length", Typed(length, "ft")),
                        ("width", Typed(width, "ft")),
                        ("aisles", Typed(count, "").Trim()),
                        ("aisle-width", "2 ft")
                    );
                    Quantity whole = bed["whole"].Value;
                    decimal aisles = bed["aisle-share"].Value.InBase * whole.In("ft2");
                    Assert.Equal((double)length * count * 2, (double)aisles, 1e-6);
                    Assert.Equal((double)whole.In("ft2"), (double)(bed["beds"].Value.In("ft2") + aisles), 1e-6);
                }
            );

    [Fact]
    public void The_share_between_pots_lies_between_none_and_all_and_grows_with_spacing() =>
        Gen.Select(Gen.Int[30, 400], Gen.Int[0, 400], Gen.Int[1, 50], s_pattern)
            .Sample(
                (width, gap, more, pattern) =>
                {
                    decimal near = Missed(width, width + gap, pattern),
                        far = Missed(width, width + gap + more, pattern);
                    Assert.InRange(near, 0, 100);
                    Assert.True(near < far && far < 100);
                    Assert.True(Missed(width, width + gap, "offset") < Missed(width, width + gap, "square"));
                }
            );

    [Fact]
    public void The_area_that_pots_need_takes_just_those_pots() =>
        Gen.Select(Gen.Int[50, 900], Gen.Int[1, 5000], s_pattern)
            .Sample(
                (spacing, pots, pattern) =>
                {
                    RateAnswer needed = Sums.Answer(
                        "area",
                        "pots",
                        ("spacing", Typed(spacing, "mm")),
                        ("pattern", pattern),
                        ("pots", Typed(pots, "").Trim())
                    );
                    decimal area = Math.Round(needed["area"].Value.In("m2"), 9) + 0.000000001m;
                    RateAnswer taken = Sums.Answer(
                        "area",
                        "pots",
                        ("spacing", Typed(spacing, "mm")),
                        ("pattern", pattern),
                        ("area", Typed(area, "m2"))
                    );
                    Assert.Equal(pots, taken["pots"].Value.Value);
                }
            );

    [Fact]
    public void Mulch_is_in_step_with_depth_and_a_depth_comes_back_from_its_volume() =>
        Gen.Select(Gen.Int[2, 200], Gen.Int[2, 5], Gen.Int[5, 5000], Gen.Int[0, 40])
            .Sample(
                (depth, times, area, settling) =>
                {
                    decimal one = Mulch(depth, area, settling),
                        more = Mulch(depth * times, area, settling);
                    Assert.Equal((double)(one * times), (double)more, 1e-6);
                    RateAnswer back = Sums.Answer(
                        "mulch",
                        "depth",
                        ("volume", Typed(Math.Round(one, 9), "m3")),
                        ("area", Typed(area, "m2")),
                        ("settling", Typed(settling, "%"))
                    );
                    Assert.Equal(depth, (double)back["depth"].Value.In("mm"), 1e-3);
                }
            );

    [Fact]
    public void Actives_of_a_premix_come_in_proportion_to_their_strengths() =>
        Gen.Select(Gen.Int[1, 300], Gen.Int[1, 300], Gen.Int[1, 300], Gen.Int[10, 500])
            .Sample(
                (first, second, third, rate) =>
                {
                    RateAnswer answer = Sums.Answer(
                        "product",
                        "premix",
                        ("first", Percent(first / 10m)),
                        ("second", Percent(second / 10m)),
                        ("third", Percent(third / 10m)),
                        ("product", Typed(rate, "lb/acre"))
                    );
                    decimal one = answer["first"].Value.InBase;
                    Assert.Equal((double)second / first, (double)(answer["second"].Value.InBase / one), 1e-9);
                    Assert.Equal((double)third / first, (double)(answer["third"].Value.InBase / one), 1e-9);
                    Assert.Equal(rate * first / 1000.0, (double)answer["first"].Value.In("lb/acre"), 1e-9);
                }
            );

    [Fact]
    public void What_is_measured_out_never_passes_the_amount_and_misses_it_by_less_than_a_mark() =>
        Gen.Select(Gen.Int[1, 1_000_000_000], Among("mg", "oz", "g", "lb", "fl-oz", "mL", "gal"))
            .Sample(
                (thousandths, unit) =>
                {
                    Quantity amount = Quantity.Of(thousandths / 1000m, unit);
                    foreach (Quantity shown in MeasuringOut.Of(amount))
                    {
                        Assert.True(shown.InBase <= amount.InBase * 1.00000000001m, $"{shown} of {amount}");
                        Assert.True(shown.InBase > amount.InBase / 2, $"{shown} of {amount}");
                    }
                }
            );

    [Theory]
    [InlineData("9.87 g", "9.8 g", "0.3 oz")]
    [InlineData("10.9 g", "10 g", "0.3 oz")]
    [InlineData("0.48 g", "0.4 g", "")]
    [InlineData("0.04 g", "", "")]
    [InlineData("2.06612 lb", "937 g", "2 lb")]
    [InlineData("0.5 fl-oz", "14 mL", "0.5 fl-oz")]
    [InlineData("7.9 mL", "7.9 mL", "1.5 tsp")]
    [InlineData("1 gal", "3750 mL", "1 gal")]
    public void A_scale_or_a_jug_shows_the_mark_just_under(string typed, string metric, string us)
    {
        Quantity amount = QuantityReader.Read(typed, null, "").Value!.Value;
        string[] shown = [.. MeasuringOut.Of(amount).Select(one => one.ToString())];
        string[] expected = [.. new[] { metric, us }.Where(text => text.Length > 0)];
        Assert.Equal(expected, shown);
    }

    [Fact]
    public void Only_weights_and_volumes_are_measured_out()
    {
        Assert.Throws<ArgumentException>(() => MeasuringOut.Of(Quantity.Of(1, "ft2")));
        Assert.Throws<ArgumentException>(() => MeasuringOut.Of(Quantity.Of(-1, "g")));
        Assert.Empty(MeasuringOut.Of(Quantity.Of(0, "g")));
    }

    private static Gen<string> Among(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static decimal Missed(int width, int spacing, string pattern) =>
        Sums.Answer(
                "area",
                "missed",
                ("pot-width", Typed(width, "mm")),
                ("spacing", Typed(spacing, "mm")),
                ("pattern", pattern)
            )["missed"]
            .Value.In("%");

    private static decimal Mulch(int depth, int area, int settling) =>
        Sums.Answer(
                "mulch",
                "volume",
                ("depth", Typed(depth / 2m, "mm")),
                ("area", Typed(area, "m2")),
                ("settling", Typed(settling, "%"))
            )["volume"]
            .Value.In("m3") * 2;

    private static decimal Sum(RateAnswer answer, string what, string unit) =>
        (answer["full-tanks"].Value.Value * Optional(answer, $"full-{what}", unit))
        + Optional(answer, $"last-{what}", unit);

    private static decimal Optional(RateAnswer answer, string id, string unit) =>
        answer.Results.SingleOrDefault(result => result.Id == id)?.Value.In(unit) ?? 0;

    private static string Percent(decimal value) => Typed(value, "%");

    private static string PerGallon(decimal value) => Typed(value, "lb/gal");

    private static string Typed(decimal value, string unit) => FormattableString.Invariant($"{value} {unit}");
}
