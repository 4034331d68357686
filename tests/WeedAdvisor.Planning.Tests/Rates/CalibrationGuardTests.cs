using WeedAdvisor.Planning.Rates.Answers;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>What cannot be, or is hardly meant, gives a reason and no number.</summary>
public sealed class CalibrationGuardTests
{
    private const string Strip = "caught=40 fl-oz|course=57 ft|width=6 ft";
    private const string Nozzles = "caught=50, 51 fl-oz|speed=3 mph|spacing=20 in";
    private const string Weighed = "before=9 lb|after=6 lb|course=125 ft|swath=8 ft";
    private const string Throw = "throw=12 ft|flow=2 gpm|speed=4 mph";

    [Theory]
    [InlineData("sprayer", "speed", "course=100 ft|times=10 s", "times", "on foot?")]
    [InlineData("sprayer", "speed", "course=300 ft|times=10 s|travel=wheels", "times", "faster than anybody")]
    [InlineData("sprayer", "test-strip", Strip + "|times=5 s", "times", "on foot?")]
    [InlineData("sprayer", "test-strip", Strip + "|catch-time=60 s", "times", "needed to scale")]
    [InlineData("sprayer", "test-strip", "caught=40 fl-oz|course=57 ft|width=0 ft", "width", "it is zero")]
    [InlineData("sprayer", "test-strip", "caught=40 fl-oz|course=-57 ft|width=6 ft", "course", "below zero")]
    [InlineData("sprayer", "test-strip", "caught=40 fl-oz|course=57|width=6 ft", "course", "no unit")]
    [InlineData("sprayer", "nozzle-flow", "caught=50 fl-oz|speed=20 mph|spacing=20 in", "speed", "faster than anybody")]
    [InlineData("sprayer", "nozzle-flow", Nozzles + "|nozzles=1.5", "nozzles", "whole number")]
    [InlineData("sprayer", "flow-needed", "volume=40 gal/acre|speed=7 mph|width=20 in", "speed", "on foot?")]
    [InlineData("sprayer", "minute", "caught=1 L|walked=200 m|swath=0.5 m", "walked", "on foot?")]
    [InlineData("sprayer", "change-of-speed", "volume=20 gal/acre|speed=3 mph", "new-speed", "either")]
    [InlineData(
        "sprayer",
        "change-of-speed",
        "volume=20 gal/acre|speed=3 mph|new-speed=4 mph|new-volume=15 gal/acre",
        "new-speed",
        "either"
    )]
    [InlineData(
        "sprayer",
        "change-of-speed",
        "volume=20 gal/acre|speed=3 mph|new-volume=5 gal/acre",
        "new-volume",
        "on foot?"
    )]
    [InlineData("sprayer", "change-of-pressure", "output=0.4 gpm|pressure=40 psi", "new-pressure", "either")]
    [InlineData(
        "sprayer",
        "change-of-pressure",
        "output=0.4 gpm|pressure=40 psi|new-output=20 gal/acre",
        "new-output",
        "must measure the same"
    )]
    [InlineData(
        "sprayer",
        "change-of-pressure",
        "output=0.4 gpm|pressure=40 psi|new-output=40 gpm",
        "new-output",
        "no sprayer gives"
    )]
    [InlineData("sprayer", "boom", "nozzles=6|spacing=20 in|swath=18 in", "swath", "narrower than the nozzle spacing")]
    [InlineData("sprayer", "band", "band=50 in|row=40 in|broadcast=30 gal/acre", "band", "wider than")]
    [InlineData("sprayer", "boomless", Throw + "|overlap=12 ft", "overlap", "leaves nothing")]
    [InlineData("sprayer", "boomless", Throw + "|overlap=130 %", "overlap", "leaves nothing")]
    [InlineData("spreader", "swath", "throw=12 ft|overlap=100 %", "overlap", "leaves nothing")]
    [InlineData("spreader", "weighed", "before=6 lb|after=9 lb|course=125 ft|swath=8 ft", "after", "gets lighter")]
    [InlineData(
        "spreader",
        "weighed",
        "before=6 lb|after=96 oz|course=125 ft|swath=8 ft",
        "after",
        "nothing was spread"
    )]
    [InlineData("spreader", "weighed", Weighed + "|times=8 s", "times", "on foot?")]
    [InlineData("spreader", "course", "swath=90 ft|area=10 ft2", "area", "shorter than a quarter of the swath")]
    [InlineData("spreader", "pace", "speed=8 mph", "speed", "on foot?")]
    [InlineData("uniformity", "pans", "caught=1.6, 1.9 g", "caught", "fewer than 3 pans")]
    [InlineData("uniformity", "pans", "caught=0, 0, 0 g", "caught", "every pan is empty")]
    [InlineData("uniformity", "pans", "caught=1, -2, 3 g", "caught", "below zero")]
    [InlineData("uniformity", "pans", "caught=1, 2, 3", "caught", "no unit")]
    [InlineData("uniformity", "pans", "caught=1 g, 2 mL, 3 g", "caught", "some are weights")]
    public void A_doubtful_entry_is_refused_at_its_field(
        string group,
        string form,
        string typed,
        string field,
        string said
    )
    {
        RateProblem problem = Assert.Single(Sums.Refusal(group, form, Sums.Typed(typed)));
        Assert.Equal(field, problem.Field);
        Assert.Contains(said, problem.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sprayer", "speed", "course=100 ft|times=10 s|travel=wheels")]
    [InlineData("sprayer", "test-strip", Strip + "|times=5 s|sprayer=handgun")]
    [InlineData("spreader", "weighed", Weighed + "|times=11 s|travel=wheels")]
    public void The_same_pace_is_believed_when_nobody_walks_it(string group, string form, string typed) =>
        Assert.NotEmpty(Sums.Answer(group, form, Sums.Typed(typed)).Results);

    [Theory]
    [InlineData("20, 25 s", true)]
    [InlineData("20, 24 s", false)]
    public void Runs_whose_times_lie_apart_by_more_than_a_fifth_are_named(string times, bool isNamed)
    {
        RateAnswer answer = Sums.Answer("sprayer", "speed", ("course", "60 ft"), ("times", times));
        Assert.Equal(
            isNamed,
            answer.Assumed.Any(text => text.Contains("differ by more than 20 %", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void The_nozzles_that_are_off_are_named_by_their_place()
    {
        RateAnswer answer = Sums.Answer(
            "sprayer",
            "nozzle-flow",
            ("caught", "50, 50, 40, 50, 60 fl-oz"),
            ("speed", "3 mph"),
            ("spacing", "20 in")
        );
        Assert.Equal(2m, answer["nozzles-off"].Value.Value);
        Assert.Equal(
            [
                "Nozzle 3 gave 40 fl-oz, 20 % below the mean: blocked or damaged.",
                "Nozzle 5 gave 60 fl-oz, 20 % above the mean: worn.",
            ],
            answer.Notes.Where(note => note.StartsWith("Nozzle ", StringComparison.Ordinal))
        );
        Assert.Equal(5940m * (50m / 128) / 60, answer["volume-per-area"].Value.In("gal/acre"), 15);
    }

    [Theory]
    [InlineData("40 fl-oz", "gal/acre", "L/ha")]
    [InlineData("1 L", "L/ha", "gal/acre")]
    public void The_answer_comes_first_in_the_units_of_the_question(string caught, string first, string also)
    {
        RateResult volume = Sums.Answer(
            "sprayer",
            "test-strip",
            ("caught", caught),
            ("course", "57 ft"),
            ("width", "6 ft")
        )["volume-per-area"];
        Assert.Equal(first, volume.Value.Unit.Symbol);
        Assert.Contains(also, volume.AlsoIn.Select(unit => unit.Symbol));
    }

    [Theory]
    [InlineData("150 lb/acre", "keep this setting")]
    [InlineData("200 lb/acre", "too little")]
    [InlineData("100 lb/acre", "do not treat anything")]
    public void A_rate_found_is_judged_against_the_rate_wanted(string wanted, string said)
    {
        RateAnswer answer = Sums.Answer("spreader", "compare", ("found", "152 lb/acre"), ("wanted", wanted));
        Assert.Contains(answer.Notes, note => note.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("10, 10, 11 g", "Even:")]
    [InlineData("8, 10, 12 g", "Fair:")]
    [InlineData("5, 10, 15 g", "Uneven:")]
    public void Pans_get_a_plain_verdict(string caught, string said) =>
        Assert.StartsWith(
            said,
            Sums.Answer("uniformity", "pans", ("caught", caught)).Notes[0],
            StringComparison.Ordinal
        );
}
