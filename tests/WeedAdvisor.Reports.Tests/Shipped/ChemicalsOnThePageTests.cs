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

    [Theory]
    [InlineData("crop-in-flush", "likely Isoxaben + dithiopyr granules. Rather not now either, for the same reason.")]
    [InlineData(
        "creeping-woodsorrel-in-azaleas",
        "likely Isoxaben + trifluralin granules. Rather not now either, for the same reason."
    )]
    public void Nobody_is_hurried_to_what_the_page_holds_against_others(string visit, string said) =>
        Assert.Contains(said, Page(visit), StringComparison.Ordinal);

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

    // What is known to injure a crop, and to kill grasses, as their records say with their sources.
    [Theory]
    [InlineData("hollies", "Oxadiazon: yes, once the weeds are off. It stops seed, nothing that stands: ")]
    [InlineData("hollies", "Halosulfuron-methyl: no. It is known to injure Hollies.")]
    [InlineData(
        "hollies",
        "Chlorthal-dimethyl: no, it may not be used any more. In the United States since 2024-08-07"
    )]
    [InlineData("hollies", "And not held here, ask: Old can.")]
    [InlineData(
        "floor",
        "Glyphosate on floors of an empty house: not now, at the earliest when every wanted plant is out"
    )]
    [InlineData("floor", "Acetic acid: no. Trapped vapour and residue hurt crops and people, for months in the worst")]
    [InlineData("grasses", "Fluazifop-P-butyl: no. It kills grasses, and Fountain grasses")]
    [InlineData("grasses", "Prodiamine granules: not before you tell the day of potting and how the pots stand.")]
    public void What_lies_in_the_store_is_answered_by_name(string area, string said) =>
        Assert.Contains(said, Page("may-i-use-it", area), StringComparison.Ordinal);

    [Fact]
    public void Where_none_may_be_used_now_the_reason_that_counts_stands_there()
    {
        string page = Page("no-chemical-by-the-school");
        Assert.Contains("NO CHEMICAL MAY BE USED HERE NOW", page, StringComparison.Ordinal);
        Assert.Contains("Triclopyr: not now, at the earliest when nobody is there", page, StringComparison.Ordinal);
        Assert.Contains("Homes, a school or a path lie next door", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Those_that_a_grower_would_reach_for_are_named_with_what_they_do_to_the_crop() =>
        Assert.Contains(
            "Not oxyfluorfen or halosulfuron-methyl: It is known to injure Hollies.",
            Page("may-i-use-it", "hollies", withStore: false),
            StringComparison.Ordinal
        );

    private static string Page(string id, string? area = null, bool withStore = true)
    {
        Visit visit = ShippedRules.Visit(id);
        if (area is not null)
            visit = visit with { Areas = [.. visit.Areas.Where(one => one.Id == area)] };
        if (!withStore)
            visit = visit with
            {
                Areas = [.. visit.Areas.Select(one => one with { Answers = one.Answers.Remove("in-hand") })],
            };
        string text = TextReport.Of(ShippedRules.Advisor.Advise(visit), ShippedRules.Knowledge, new TextLayout());
        return string.Join(' ', text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
    }
}
