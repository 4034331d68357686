using CsCheck;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>Laws that hold for every entry.</summary>
public sealed class CalibrationLawTests
{
    private static readonly Gen<decimal> s_number = Gen.Int[1, 100_000].Select(number => number / 100m);
    private static readonly Gen<decimal> s_pace = Gen.Int[50, 300].Select(number => number / 100m);

    [Fact]
    public void There_and_back_is_where_it_began()
    {
        Unit[] units = [.. UnitTable.Symbols.Select(UnitTable.Of)];
        Gen.Select(s_number, Gen.OneOf([.. units.Select(Gen.Const)]), Gen.OneOf([.. units.Select(Gen.Const)]))
            .Where((_, from, to) => from.Dimension == to.Dimension)
            .Sample(
                (number, from, to) =>
                {
                    decimal back = new Quantity(number, from).To(to).To(from).Value;
                    Assert.InRange(back / number, 1 - 1e-9m, 1 + 1e-9m);
                }
            );
    }

    [Fact]
    public void Twice_the_speed_is_half_the_volume() =>
        s_pace.Sample(pace =>
        {
            decimal slow = Volume(
                "nozzle-flow",
                ("caught", "40 fl-oz"),
                ("spacing", "20 in"),
                ("speed", Text(pace, "mph"))
            );
            decimal fast = Volume(
                "nozzle-flow",
                ("caught", "40 fl-oz"),
                ("spacing", "20 in"),
                ("speed", Text(2 * pace, "mph"))
            );
            Same(slow, 2 * fast);
        });

    [Fact]
    public void A_change_of_speed_agrees_with_the_flow_at_that_speed() =>
        Gen.Select(s_pace, s_pace)
            .Sample(
                (first, second) =>
                {
                    decimal before = Volume(
                        "nozzle-flow",
                        ("caught", "40 fl-oz"),
                        ("spacing", "20 in"),
                        ("speed", Text(first, "mph"))
                    );
                    decimal after = Volume(
                        "nozzle-flow",
                        ("caught", "40 fl-oz"),
                        ("spacing", "20 in"),
                        ("speed", Text(second, "mph"))
                    );
                    decimal changed = Volume(
                        "change-of-speed",
                        ("volume", Text(before, "gal/acre")),
                        ("speed", Text(first, "mph")),
                        ("new-speed", Text(second, "mph"))
                    );
                    Assert.InRange(changed / after, 0.9999m, 1.0001m);
                }
            );

    [Fact]
    public void Four_times_the_pressure_is_twice_the_flow_and_back() =>
        Gen.Int[10, 200]
            .Sample(psi =>
            {
                RateAnswer more = Sums.Answer(
                    "sprayer",
                    "change-of-pressure",
                    ("output", "0.4 gpm"),
                    ("pressure", Text(psi, "psi")),
                    ("new-pressure", Text(4 * psi, "psi"))
                );
                Same(0.8m, more["flow"].Value.In("gpm"));
                RateAnswer back = Sums.Answer(
                    "sprayer",
                    "change-of-pressure",
                    ("output", "0.8 gpm"),
                    ("pressure", Text(4 * psi, "psi")),
                    ("new-output", "0.4 gpm")
                );
                Same(psi, back["pressure"].Value.In("psi"));
            });

    [Fact]
    public void The_flow_needed_for_a_volume_gives_that_volume() =>
        Gen.Select(Gen.Int[5, 200], s_pace)
            .Sample(
                (gallons, pace) =>
                {
                    RateAnswer need = Sums.Answer(
                        "sprayer",
                        "flow-needed",
                        ("volume", Text(gallons, "gal/acre")),
                        ("speed", Text(pace, "mph")),
                        ("width", "20 in")
                    );
                    decimal volume = Volume(
                        "nozzle-flow",
                        ("caught", Text(need["catch"].Value.In("fl-oz"), "fl-oz")),
                        ("speed", Text(pace, "mph")),
                        ("spacing", "20 in")
                    );
                    Assert.InRange(volume / gallons, 0.9999m, 1.0001m);
                }
            );

    [Fact]
    public void The_volume_goes_with_the_catch() =>
        Gen.Select(Gen.Int[1, 500], Gen.Int[2, 9])
            .Sample(
                (ounces, times) =>
                    Same(
                        times
                            * Volume(
                                "test-strip",
                                ("caught", Text(ounces, "fl-oz")),
                                ("course", "57 ft"),
                                ("width", "6 ft")
                            ),
                        Volume(
                            "test-strip",
                            ("caught", Text(times * ounces, "fl-oz")),
                            ("course", "57 ft"),
                            ("width", "6 ft")
                        )
                    )
            );

    [Fact]
    public void Granules_for_two_areas_are_those_for_both_together() =>
        Gen.Select(Gen.Int[1, 5000], Gen.Int[1, 5000])
            .Sample((one, other) => Same(Whole(one, 2) + Whole(other, 2), Whole(one + other, 2)));

    [Fact]
    public void The_doses_of_crossing_passes_make_the_whole_rate() =>
        Gen.Select(Gen.Int[20, 500], Gen.Int[2, 8])
            .Sample(
                (pounds, doses) =>
                {
                    RateAnswer answer = Sums.Answer(
                        "spreader",
                        "crossing-passes",
                        ("wanted", Text(pounds, "lb/acre")),
                        ("area", "2000 ft2"),
                        ("doses", FormattableString.Invariant($"{doses}"))
                    );
                    Same(pounds, doses * answer["rate-of-a-dose"].Value.In("lb/acre"));
                    Same(answer["whole"].Value.In("oz"), doses * answer["dose"].Value.In("oz"));
                }
            );

    [Fact]
    public void A_spreader_that_gives_the_weight_of_the_course_has_the_rate_wanted() =>
        Gen.Int[20, 500]
            .Sample(pounds =>
            {
                RateAnswer course = Sums.Answer(
                    "spreader",
                    "course",
                    ("swath", "8 ft"),
                    ("wanted", Text(pounds, "lb/acre"))
                );
                RateAnswer found = Sums.Answer(
                    "spreader",
                    "weighed",
                    ("before", Text(course["weight"].Value.In("oz"), "oz")),
                    ("after", "0 oz"),
                    ("course", Text(course["course"].Value.In("ft"), "ft")),
                    ("swath", "8 ft"),
                    ("wanted", Text(pounds, "lb/acre"))
                );
                Assert.InRange(found["rate"].Value.In("lb/acre") / pounds, 0.9999m, 1.0001m);
                Assert.InRange(found["off"].Value.In("%"), -0.01m, 0.01m);
            });

    [Fact]
    public void Evenness_does_not_depend_on_how_much_was_spread_nor_on_the_order() =>
        Gen.Select(Gen.Int[0, 500].List[3, 12], Gen.Int[2, 9])
            .Where((pans, _) => pans.Any(pan => pan > 0))
            .Sample(
                (pans, times) =>
                {
                    decimal once = Variation(pans);
                    Assert.Equal(once, Variation(pans.Select(pan => pan * times)), 12);
                    Assert.Equal(once, Variation(pans.Order()), 12);
                    Assert.Equal(0m, Variation(pans.Select(_ => 7)));
                }
            );

    [Fact]
    public void Metric_and_US_entries_of_one_test_give_one_volume() =>
        Gen.Select(Gen.Int[1, 200], Gen.Int[20, 400])
            .Sample(
                (ounces, feet) =>
                {
                    decimal american = Volume(
                        "test-strip",
                        ("caught", Text(ounces, "fl-oz")),
                        ("course", Text(feet, "ft")),
                        ("width", "6 ft")
                    );
                    decimal metric = Volume(
                        "test-strip",
                        ("caught", Text(ounces * 29.5735295625m, "mL")),
                        ("course", Text(feet * 0.3048m, "m")),
                        ("width", "1.8288 m")
                    );
                    Assert.InRange(metric / american, 0.999999m, 1.000001m);
                }
            );

    [Fact]
    public void No_text_makes_the_reader_fall_over()
    {
        Gen<string> near = Gen.Char["0123456789./-,; ftgalo%µ²½"].Array[0, 24].Select(letters => new string(letters));
        Gen.OneOf(near, Gen.String)
            .Sample(text =>
            {
                (Quantity? one, string? problem) = QuantityReader.Read(text, null, "ft");
                Assert.True(one is null != (problem is null));
                (System.Collections.Immutable.ImmutableArray<Quantity> many, string? trouble) = QuantityReader.ReadList(
                    text,
                    null,
                    "ft"
                );
                Assert.True(many.IsDefaultOrEmpty != (trouble is null));
            });
    }

    private static decimal Volume(string form, params (string, string)[] typed) =>
        Sums.Answer("sprayer", form, typed)["volume-per-area"].Value.In("gal/acre");

    private static decimal Whole(int feet, int doses) =>
        Sums.Answer(
                "spreader",
                "crossing-passes",
                ("wanted", "150 lb/acre"),
                ("area", Text(feet, "ft2")),
                ("doses", FormattableString.Invariant($"{doses}"))
            )["whole"]
            .Value.In("oz");

    private static decimal Variation(IEnumerable<int> pans) =>
        Sums.Answer(
                "uniformity",
                "pans",
                ("caught", string.Join(", ", pans.Select(pan => FormattableString.Invariant($"{pan} g"))))
            )["variation"]
            .Value.In("%");

    private static string Text(decimal number, string unit) =>
        FormattableString.Invariant($"{Math.Round(number, 9)} {unit}");

    private static void Same(decimal expected, decimal found) => Assert.Equal(expected, found, 12);
}
