using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// What the page of an area says of chemicals that are only named, of those barred, and of those that wait.
/// </summary>
public sealed class ChemicalsOnThePageTests
{
    // neal-2005: granules lodge in funnels of leaves.
    [Fact]
    public void A_chemical_that_is_only_named_is_named_with_what_it_does_to_this_crop() =>
        Assert.Contains(
            "The leaves of Hostas and daylilies funnel granules into the crown.",
            Page("hostas-and-granules"),
            StringComparison.Ordinal
        );

    // By the months of the weeds' records: common chickweed comes up from September in the south-east.
    [Fact]
    public void On_a_clean_block_prevention_comes_first_with_its_last_day()
    {
        string page = Page("clean-yard-in-august");
        Assert.Contains(
            "Prevention comes first here. By 31 August 2026: common chickweed",
            page,
            StringComparison.Ordinal
        );
        Assert.Contains("1. Isoxaben, sprayed", page, StringComparison.Ordinal);
    }

    // 40 CFR 170.405; that neighbours are told is a policy of this adviser.
    [Fact]
    public void Who_lives_next_door_stands_with_the_spray_that_is_named() =>
        Assert.Contains(
            "Spray only with the wind away from the neighbours",
            Page("yard-beside-a-school"),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("yard-near-melbourne")]
    [InlineData("yard-on-the-canterbury-plains")]
    public void Where_no_register_is_held_that_is_the_reason_told_first(string visit) =>
        Assert.Contains(
            "Barred, 55 of 72: No register of this country is held here: buy nothing on the word of this page.",
            Page(visit),
            StringComparison.Ordinal
        );

    [Fact]
    public void What_is_too_early_for_soft_leaves_is_told_with_that_reason()
    {
        string page = Page("roses-in-bud");
        Assert.Contains("Rather not now: Oxadiazon granules", page, StringComparison.Ordinal);
        Assert.Contains("Buds are breaking or leaves are soft.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Little speaks for", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_waits_is_told_with_the_likely_choice() =>
        Assert.Contains(
            "Once you tell whether it ships soon: likely ",
            Page("hydrangeas-in-the-yard"),
            StringComparison.Ordinal
        );

    [Fact]
    public void The_next_potting_stands_with_its_day() =>
        Assert.Contains("At the next potting, 5 May: ", Page("what-comes-next"), StringComparison.Ordinal);

    private static string Page(string id)
    {
        Visit visit = ShippedRules.Visit(id);
        string text = TextReport.Of(ShippedRules.Advisor.Advise(visit), ShippedRules.Knowledge, new TextLayout());
        return string.Join(' ', text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
    }
}
