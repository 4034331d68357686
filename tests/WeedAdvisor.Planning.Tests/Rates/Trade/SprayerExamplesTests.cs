using WeedAdvisor.Planning.Rates.Answers;

namespace WeedAdvisor.Planning.Tests.Rates.Trade;

/// <summary>
/// Worked examples printed by extension services and trainers, typed into the forms. The tolerance is what the source
/// rounded: most take 340 ft² for 1/128 acre (340.3125 ft²), and a plot of 18.5 × 18.5 ft (342.25 ft²) for the same.
/// </summary>
public sealed class SprayerExamplesTests
{
    // Id, source, form, what is typed, figure, unit, printed, tolerance.
    public static TheoryData<string, string, string, string, string, string, decimal, decimal> Examples =>
        new()
        {
            {
                "s01",
                "lsu-128",
                "test-strip",
                "caught=14 fl-oz|course=102 ft|width=40 in|times=17 s",
                "volume-per-area",
                "gal/acre",
                14m,
                0.02m
            },
            {
                "s02",
                "osu-b817",
                "test-strip",
                "caught=80 fl-oz|course=340.3125 ft|width=12 in",
                "volume-per-area",
                "gal/acre",
                80m,
                0m
            },
            {
                "s03",
                "handgun-128-slides",
                "test-strip",
                "caught=40 fl-oz|course=18.5 ft|width=18.5 ft|times=51 s|sprayer=handgun",
                "volume-per-area",
                "gal/acre",
                40m,
                0.25m
            },
            { "s07", "ncsu-backpack", "test-course", "width=6 ft", "course", "ft", 57m, 0.5m },
            { "s08", "ncsu-backpack", "test-course", "width=6 ft|plant-spacing=5 ft", "plants", "", 11m, 0m },
            { "s09", "ncsu-backpack", "speed", "course=57 ft|times=16, 18 s", "mean-time", "s", 17m, 0m },
            {
                "s10",
                "ncsu-backpack",
                "test-strip",
                "caught=7.5 fl-oz|course=340 ft|width=12 in",
                "volume-per-area",
                "gal/acre",
                7.5m,
                0.01m
            },
            {
                "s14",
                "mesa-handgun",
                "test-strip",
                "caught=150 fl-oz|course=18.5 ft|width=18.5 ft|times=75 s|sprayer=handgun",
                "volume-per-area",
                "gal/acre",
                150m,
                1m
            },
            {
                "s15",
                "list-handheld",
                "spray-on-area",
                "spray=1.5 gal|area=1000 ft2",
                "volume-per-area",
                "gal/acre",
                65.34m,
                0m
            },
            {
                "s19",
                "ncsu-turf-cal",
                "change-of-speed",
                "volume=20 gal/acre|speed=3 mph|new-speed=6 mph",
                "volume-per-area",
                "gal/acre",
                10m,
                0m
            },
            {
                // 25 m² at 200 L/ha in 50 s is 0.6 L/min: derived from the printed course, pace and volume.
                "s29",
                "knapsack-training",
                "flow-needed",
                "volume=200 L/ha|speed=2.4 km/h|width=0.75 m",
                "flow",
                "L/min",
                0.6m,
                0m
            },
        };

    /// <summary>Printed lengths of course for 1/128 acre: width in inches, feet, sources.</summary>
    public static TheoryData<decimal, decimal, string> Courses =>
        new()
        {
            { 10, 408, "lsu-128" },
            { 12, 340, "lsu-128" },
            { 14, 291, "lsu-128" },
            { 16, 255, "lsu-128" },
            { 18, 227, "lsu-128, osu-b817" },
            { 20, 204, "lsu-128, osu-b817" },
            { 22, 185, "lsu-128, osu-b817" },
            { 24, 170, "lsu-128, osu-b817" },
            { 26, 157, "lsu-128, osu-b817" },
            { 28, 146, "lsu-128, osu-b817" },
            { 30, 136, "lsu-128, osu-b817" },
            { 32, 127, "osu-b817, lsu-128" },
            { 34, 120, "osu-b817" },
            { 36, 113, "osu-b817" },
            { 38, 107, "osu-b817" },
            { 40, 102, "osu-b817, lsu-128" },
            { 72, 57, "ncsu-backpack" },
        };

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_example_comes_out_of_the_form_as_printed(
        string id,
        string source,
        string form,
        string typed,
        string figure,
        string unit,
        decimal printed,
        decimal tolerance
    )
    {
        RateAnswer answer = Sums.Answer("sprayer", form, Sums.Typed(typed));
        decimal found = unit.Length == 0 ? answer[figure].Value.Value : answer[figure].Value.In(unit);
        Assert.True(
            Math.Abs(found - printed) <= tolerance + Sums.Dust,
            $"{id} of {source}: {found} {unit}, printed {printed}"
        );
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void The_printed_table_of_courses_comes_out_when_rounded_as_its_source_rounds(
        decimal width,
        decimal feet,
        string source
    )
    {
        RateAnswer answer = Sums.Answer(
            "sprayer",
            "test-course",
            ("width", FormattableString.Invariant($"{width} in"))
        );
        decimal exact = answer["course"].Value.In("ft");
        Assert.Equal(4083.75m / width, exact, 15);
        // The sources take 340 ft² and round, or cut off, to whole feet.
        decimal theirs = exact * 340 / 340.3125m;
        Assert.True(
            feet == Math.Round(theirs, MidpointRounding.AwayFromZero) || feet == Math.Floor(theirs),
            $"{source}: {theirs}"
        );
    }

    [Theory]
    [InlineData("3 mph", 23)] // s20, ncsu-granular
    [InlineData("2 mph", 34)] // s21, ncsu-granular
    public void A_hundred_feet_at_the_usual_paces_take_the_printed_seconds(string speed, int seconds)
    {
        RateAnswer answer = Sums.Answer("spreader", "pace", ("speed", speed), ("course", "100 ft"));
        Assert.Equal(seconds, Math.Round(answer["time"].Value.In("s"), MidpointRounding.AwayFromZero));
        string took = FormattableString.Invariant($"{answer["time"].Value.In("s"):0.####} s");
        RateAnswer back = Sums.Answer("sprayer", "speed", ("course", "100 ft"), ("times", took));
        Assert.Equal(answer["time"].Value.In("s"), 100 / back["speed"].Value.In("ft/min") * 60, 3);
    }

    [Fact]
    public void The_training_course_takes_its_seconds() // s29, knapsack-training: 33.3 m at 2.4 km/h
    {
        RateAnswer answer = Sums.Answer("spreader", "pace", ("speed", "2.4 km/h"), ("course", "33.3 m"));
        Assert.Equal(50m, answer["time"].Value.In("s"), 0);
    }

    [Theory]
    [InlineData("18.5 ft", "18.5 ft", 342.25)] // handgun-128-slides, larimer, mesa-handgun, uga-handheld
    [InlineData("34 ft", "10 ft", 340)] // handgun-128-slides
    [InlineData("228 ft", "1.5 ft", 342)] // handgun-128-slides
    [InlineData("33.3 m", "0.75 m", 268.83)] // s28, knapsack-training: 24.975 m², printed 25
    public void The_printed_plots_are_within_three_quarters_of_a_per_cent_of_1_128_acre_or_as_they_are(
        string length,
        string width,
        decimal feet
    )
    {
        RateAnswer answer = Sums.Answer(
            "sprayer",
            "test-strip",
            ("caught", "1 fl-oz"),
            ("course", length),
            ("width", width)
        );
        Assert.Equal(43560m / 128 / feet, answer["volume-per-area"].Value.In("gal/acre"), 4);
    }
}
