using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>
/// A container yard under the shipped knowledge: six common weeds, a moist surface, mown surroundings, a year.
/// </summary>
internal static class Yard
{
    public const double Wage = 18;

    public static WeedingNumbers Numbers { get; } = WeedingNumbers.Of(ShippedRules.Knowledge).Value!;

    /// <summary>Numbers with so much room that plants never hinder each other.</summary>
    public static WeedingNumbers Roomy { get; } =
        Numbers.With("pot-surface-cm2", 1e60).With("most-weeds-per-pot", 1e60);

    public static string[] SixWeeds { get; } =
    ["spurge-spotted", "bittercress-hairy", "woodsorrel-yellow", "groundsel-common", "eclipta", "liverwort"];

    public static WeedSite Site { get; } = new("us-southeast", Hemisphere.North, "moist", "mown");

    public static WeedingSetup Setup(params string[] weeds) =>
        new()
        {
            Weeds = [.. weeds.Select(weed => new SetupWeed(ShippedRules.Knowledge.Weeds[weed], null, null, []))],
            Site = Site,
            Start = new DateOnly(2026, 1, 1),
            Weeks = WeedTraits.WeeksInYear,
        };

    /// <summary>The year of a yard of established stock in the south-east, from the first of January.</summary>
    public static YearCase Year(YearTerms terms)
    {
        var blank = VisitArea.Blank("yard", "The yard");
        VisitArea area = blank with
        {
            Answers = blank
                .Answers.SetItem("region", new Answer.Words(WordSet.Of("north-carolina-piedmont")))
                .SetItem("place", new Answer.Words(WordSet.Of("container-yard")))
                .SetItem("stock", new Answer.Words(WordSet.Of("established"))),
        };
        var day = new DateOnly(2026, 1, 1);
        Outcome<YearCase, string> year = YearCase.Of(
            AreaReading.Of(area, day, ShippedRules.Knowledge),
            day,
            ShippedRules.Knowledge,
            PriceBook.Of(ShippedRules.Knowledge),
            terms
        );
        Assert.Empty(year.Refusals);
        return year.Value!;
    }

    public static WeedTraits Traits(string weed) =>
        WeedTraits.Of(ShippedRules.Knowledge.Weeds[weed], Site, Numbers).Value!;

    public static WeedingSeason Run(WeedingSetup setup, int interval, WeedingNumbers? numbers = null)
    {
        Outcome<WeedingPlan, string> plan = setup.Plan(numbers ?? Numbers, interval);
        Assert.Empty(plan.Refusals);
        return Run(plan.Value!);
    }

    public static WeedingSeason Run(WeedingPlan plan)
    {
        Outcome<WeedingSeason, string> run = WeedingRun.Of(plan);
        Assert.Empty(run.Refusals);
        return run.Value!;
    }
}
