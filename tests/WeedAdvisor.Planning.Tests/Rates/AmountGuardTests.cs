using WeedAdvisor.Planning.Rates.Answers;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>Entries that cannot be are refused by name; they never become a number.</summary>
public sealed class AmountGuardTests
{
    /// <summary>
    /// Group, form, entries as <c>field=text</c> set apart by semicolons, field at fault, what is said.
    /// </summary>
    public static TheoryData<string, string, string, string, string> Refusals =>
        new()
        {
            { "product", "from-active", "active=2 lb/acre;strength=120 %", "strength", "at most 100 %" },
            {
                "product",
                "from-active",
                "active=2 lb/acre;strength=41 lb/gal",
                "strength",
                "check the number and its unit"
            },
            { "product", "from-active", "active=2 lb/acre;strength=0.8", "strength", "has no unit" },
            { "product", "from-active", "active=2 lb/acre;strength=1 fl-oz/gal", "strength", "write a strength in %" },
            { "product", "from-active", "active=2 lb/acre;strength=0.01 %", "active", "more than can be believed" },
            { "product", "from-active", "active=-2 lb/acre;strength=50 %", "active", "below zero" },
            {
                "product",
                "from-active",
                "active=2 lb/acre;strength=4 lb/gal;density=8.34 lb/gal",
                "density",
                "leave it blank"
            },
            { "product", "from-active", "active=2 lb/acre;strength=41 %;density=83.4 lb/gal", "density", "cannot be" },
            { "product", "to-active", "product=2 pt/acre;strength=41 %", "density", "weight of the liquid is needed" },
            { "product", "to-active", "product=2 lb/acre;strength=4 lb/gal", "strength", "must be in %" },
            { "product", "premix", "first=60 %;second=50 %;product=100 lb/acre", "second", "add up to 110 %" },
            { "product", "premix", "first=6 %;second=5 lb/gal;product=100 lb/acre", "second", "same kind of unit" },
            { "product", "premix", "first=6 %;second=5 %", "product", "enter this or 'active'" },
            { "product", "premix", "first=6 %;second=5 %;product=2 pt/acre", "product", "does not fit" },
            { "product", "acid-equivalent", "strength=5.4 lb/gal", "part", "enter this or 'form'" },
            { "product", "acid-equivalent", "strength=5.4 lb/gal;part=1.2", "part", "from 0.2 to 1" },
            { "product", "solution", "wanted=100 %;spray=1 gal", "wanted", "no solution" },
            { "product", "solution", "wanted=50 ppm;spray=1 gal;counts=active", "strength", "not entered" },
            { "product", "solution", "wanted=50 ppm;spray=1 gal;strength=4 lb/gal", "strength", "leave it blank" },
            {
                "product",
                "solution",
                "wanted=2 %;spray=1 gal;counts=active;strength=4 lb/gal",
                "percent",
                "choose 'weight'"
            },
            {
                "product",
                "on-area",
                "rate=250 lb/acre;area=600 ft2;most=200 lb/acre",
                "rate",
                "above the highest rate of the label"
            },
            { "product", "on-area", "rate=250 lb/acre;area=600 ft2;most=2 pt/acre", "most", "cannot be held against" },
            { "product", "on-area", "rate=3 in;area=600 ft2", "rate", "more than can be believed" },
            { "product", "per-pot", "rate=150 lb/acre;pot-width=10 ft", "pot-width", "more than can be believed" },
            { "product", "convert", "value=4 ft/s", "value", "does not measure this" },
            {
                "tank",
                "loads",
                "area=1 acre;spray-volume=40 gal/acre;tank=0.5 L;rate=2 pt/acre",
                "tank",
                "less than can be believed"
            },
            {
                "tank",
                "loads",
                "area=1 acre;spray-volume=40000 gal/acre;tank=4 gal;rate=2 pt/acre",
                "spray-volume",
                "more than can be"
            },
            {
                "tank",
                "loads",
                "area=1 acre;spray-volume=0.1 gal/acre;tank=4 gal;rate=2 pt/acre",
                "spray-volume",
                "less than can be"
            },
            {
                "tank",
                "loads",
                "area=900 acre;spray-volume=100 gal/acre;tank=4 gal;rate=2 pt/acre",
                "tank",
                "more than 500 tanks"
            },
            {
                "tank",
                "loads",
                "area=1 acre;spray-volume=40 gal/acre;tank=4 gal;rate=2 pt/acre;dead-volume=4 gal",
                "dead-volume",
                "cannot stay"
            },
            {
                "tank",
                "loads",
                "area=1 acre;spray-volume=2 gal/acre;tank=4 gal;rate=2 gal/acre",
                "rate",
                "as much as the whole spray"
            },
            { "tank", "loads", "area=0 acre;spray-volume=40 gal/acre;tank=4 gal;rate=2 pt/acre", "area", "it is zero" },
            { "tank", "hopper", "area=900 acre;rate=200 lb/acre;hopper=20 lb", "hopper", "more than 500 loads" },
            { "tank", "order", "tank=50 gal;first=GR", "first", "no word 'GR'" },
            { "area", "ground", "shape=circle;length=3 ft", "across", "not entered" },
            { "area", "ground", "length=3 ft;width=3 ft;across=3 ft", "across", "leave it blank" },
            { "area", "bed", "length=90 ft;width=30 ft;aisle-share=100 %", "aisle-share", "less than 100 %" },
            { "area", "bed", "length=90 ft;width=30 ft;aisle-share=130 %", "aisle-share", "less than 100 %" },
            {
                "area",
                "bed",
                "length=90 ft;width=30 ft;aisles=10;aisle-width=3 ft",
                "aisle-width",
                "no room for a bed"
            },
            { "area", "bed", "length=90 ft;width=30 ft;aisles=10", "aisle-width", "not entered" },
            { "area", "pots", "spacing=6 in;area=100 ft2;pot-width=7 in", "spacing", "do not overlap" },
            { "area", "pots", "spacing=6 in", "area", "enter this or 'pots'" },
            { "area", "pots", "spacing=6 in;area=100 ft2;pots=10", "pots", "not both" },
            { "area", "missed", "spacing=6 in;pot-width=7 in", "spacing", "do not overlap" },
            { "mulch", "volume", "depth=1 in;pot-width=6 in;settling=90 %", "settling", "hardly a layer" },
            { "mulch", "volume", "depth=1 in;pot-width=6 in;area=50 ft2", "area", "not both" },
            { "mulch", "volume", "depth=10 ft;pot-width=6 in", "depth", "more than can be believed" },
            { "mulch", "depth", "volume=100 yd3;area=100 ft2", "volume", "more than can be believed" },
        };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void An_entry_that_cannot_be_is_refused(string group, string form, string entries, string field, string said)
    {
        RateProblem problem = Assert.Single(Sums.Refusal(group, form, Entries(entries)));
        Assert.Equal(field, problem.Field);
        Assert.Contains(said, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_disperses_goes_into_the_tank_before_oils_and_solutions_in_whatever_order_it_was_typed()
    {
        RateAnswer answer = Sums.Answer(
            "tank",
            "order",
            Entries("tank=50 gal;first=SL;second=EC;third=SC;fourth=WG;adjuvant=oil")
        );
        string all = string.Join('\n', answer.Notes);
        int[] places =
        [
            .. new[] { "jar test", "half", "the WG", "the SC", "the EC", "the SL", "crop oil", "Fill up" }.Select(
                text => all.IndexOf(text, StringComparison.Ordinal)
            ),
        ];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(25, answer["water-first"].Value.In("gal"));
        Assert.Equal("the WG", all[places[2]..(places[2] + 6)]);
        Assert.Equal(places[2..], places[2..].Order());
    }

    [Fact]
    public void Spray_that_just_fills_the_tanks_leaves_no_part_tank()
    {
        RateAnswer answer = Sums.Answer(
            "tank",
            "loads",
            Entries("area=1 acre;spray-volume=40 gal/acre;tank=4 gal;rate=2 pt/acre")
        );
        Assert.Equal(10, answer["full-tanks"].Value.Value);
        Assert.DoesNotContain(answer.Results, result => result.Id == "last-product");
        Assert.Equal(
            "4 gal ÷ 40 gal/acre × 2 pt/acre",
            answer.Working.Single(line => line.Label == "Product in a full tank").Arithmetic
        );
        Assert.Equal(3.2m, Math.Round(answer["full-product"].Value.In("fl-oz"), 12));
    }

    [Fact]
    public void Left_over_spray_is_never_sent_to_a_drain()
    {
        RateAnswer answer = Sums.Answer("tank", "left-over", ("left", "1 gal"), ("spray-volume", "43.56 gal/acre"));
        Assert.Equal(1000, Math.Round(answer["area"].Value.In("ft2"), 9));
        Assert.Contains(answer.Notes, note => note.StartsWith("Never pour", StringComparison.Ordinal));
    }

    [Fact]
    public void A_factor_from_memory_says_so_and_one_entered_does_not()
    {
        RateAnswer recalled = Sums.Answer(
            "product",
            "acid-equivalent",
            ("strength", "5.4 lb/gal"),
            ("form", "glyphosate-isopropylamine")
        );
        Assert.Contains("memory", recalled.Sources);
        Assert.Contains(recalled.Assumed, line => line.Contains("not confirmed", StringComparison.Ordinal));
        Assert.Equal(4.0014m, recalled["acid"].Value.In("lb/gal"));
        Assert.DoesNotContain(
            "memory",
            Sums.Answer("product", "acid-equivalent", ("strength", "50 %"), ("part", "0.8")).Sources
        );
    }

    [Fact]
    public void A_bag_that_is_begun_is_bought_whole()
    {
        RateAnswer answer = Sums.Answer("mulch", "volume", ("depth", "1 in"), ("area", "324 ft2"), ("bag", "2 ft3"));
        Assert.Equal(14, answer["bags"].Value.Value);
        Assert.Equal(1, Math.Round(answer["volume"].Value.In("yd3"), 12));
    }

    private static (string Field, string Typed)[] Entries(string entries) =>
        [.. entries.Split(';').Select(entry => entry.Split('=')).Select(parts => (parts[0], parts[1]))];
}
