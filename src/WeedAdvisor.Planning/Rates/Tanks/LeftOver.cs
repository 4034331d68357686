using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Tanks;

/// <summary>The area that left-over spray needs: volume ÷ spray volume.</summary>
internal static class LeftOver
{
    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "tank",
            "left-over",
            "Where left-over spray may go",
            "How much labelled ground the spray left in the tank would still need. Better is to mix less.",
            [
                new("left", "Spray left over", Field.Liquid(), "Read it off the tank, or drain and measure it."),
                new("spray-volume", "Spray volume", TankField.SprayVolume(), "As it was sprayed."),
            ],
            Work
        )
        {
            Example = Field.Example(("left", "1 gal"), ("spray-volume", "40 gal/acre")),
        };

    /// <summary>Where left-over spray may go and where it never may.</summary>
    public static ImmutableArray<string> Places { get; } =
    [
        "Left-over spray goes where the label says. As a rule that is a site on the label that has not had its full "
            + "rate this time.",
        "Rinse the tank with clean water three times and spray the rinse water on such a site as well.",
        "Never pour spray or rinse water into a drain, ditch, pond or well, nor on gravel that drains to one.",
    ];

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity left = inputs.Measure("left"),
            sprayed = inputs.Measure("spray-volume");
        bool isUs = sprayed.Unit.Symbol is not "L/ha";
        Quantity onGround = sheet.Convert("Spray volume", sprayed, isUs ? "gal/1000ft2" : "L/ha");
        Quantity volume = sheet.Convert("Spray left over", left, isUs ? "gal" : "L");
        Quantity area = sheet.Line("Area it needs", $"{volume} ÷ {onGround}", volume / onGround, isUs ? "ft2" : "m2");
        return new RateAnswer
        {
            Results = [new("area", "Labelled ground that it needs", area, [UnitTable.Of(isUs ? "m2" : "ft2")])],
            Working = sheet.Lines,
            Notes = Places,
            Assumed = ["The spray is as it was mixed, not thinned."],
            Cautions =
            [
                "Never spray ground twice to empty a tank: both passes together must stay at or below the label's "
                    + "rate.",
                "Count it towards the most in a year of that ground.",
                "Keep no spray over night: it settles, clogs and may lose or change its strength.",
            ],
            Sources = ["common-practice"],
        };
    }
}
