using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// Advice stands in the order of the work. A layer or a preventive wants a clean surface (hewson-2012,
/// ncsu-propagation): while weeds are up the cleaning stands first. The oracle asks what was seen and what the records
/// say, not what the rules concluded.
/// </summary>
public class OrderOfWorkTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void No_action_of_a_later_time_stands_before_one_of_an_earlier() =>
        Everywhere(advice =>
            Assert.Equal(advice.Clear.Select(one => one.Horizon).Order(), advice.Clear.Select(one => one.Horizon))
        );

    [Fact]
    public void No_cover_and_no_preventive_stands_before_the_cleaning_it_needs()
    {
        int looked = 0;
        Everywhere(advice =>
        {
            if (advice.Area.Weeds is not { } weeds || !weeds.Any(IsUp))
                return;
            ClearAction[] can = [.. advice.Clear.Where(one => one.NotToday.IsEmpty && !one.LacksTool)];
            int[] pulling = [.. can.Where(one => IsPulling(one.Action)).Select(one => one.Rank)];
            foreach (ClearAction second in can.Where(one => StopsSeedOnly(one.Action)))
            {
                looked++;
                if (pulling.Length > 0)
                    Assert.True(second.Rank > pulling.Max(), $"{second.Action} stands before the pulling");
                else if (!can.Any(one => WorksOnStanding(one.Action)))
                    Assert.True(second.Horizon >= Horizon.ThisSeason, $"{second.Action} goes over weeds this week");
            }
        });
        Assert.True(looked > 100, $"only {looked} actions showed it");
    }

    [Fact]
    public void Of_what_does_one_job_at_one_time_one_line_is_made_and_of_nothing_else() =>
        Everywhere(advice =>
        {
            foreach (var line in advice.Clear.GroupBy(one => one.Rank))
            {
                if (line.Count() > 1)
                    Assert.Single(line.Select(one => (one.Horizon, JobOf(one))).Distinct());
            }

            var jobs = advice.Clear.Where(one => one.OneOf is not null).GroupBy(one => (one.Horizon, one.OneOf));
            Assert.All(jobs, job => Assert.Single(job.Select(one => one.Rank).Distinct()));
            Assert.Equal(
                Enumerable.Range(1, advice.Clear.Select(one => one.Rank).Distinct().Count()),
                advice.Clear.Select(one => one.Rank).Distinct()
            );
        });

    // What sheds seed does not wait for a drier surface (umass-bmp, common practice).
    [Fact]
    public void What_flowers_or_seeds_is_pulled_before_water_feed_and_air_are_looked_to() =>
        Everywhere(advice =>
        {
            string[] order = [.. advice.Clear.Select(one => one.Action)];
            int pull = Array.IndexOf(order, "pull-before-seed");
            if (pull < 0 || advice.Clear[pull].Horizon != Horizon.Today || HasMatAboutToSpread(advice))
                return;
            int starve = Array.FindIndex(order, action =>
                s_knowledge.Practices.TryGetValue(action, out Practice? one)
                && one.Kind is ("watering" or "feeding" or "air-and-spacing")
            );
            Assert.True(starve < 0 || pull < starve, string.Join(", ", order.Take(5)));
        });

    private static bool HasMatAboutToSpread(AreaAdvice advice) =>
        (advice.Area.Weeds ?? []).Any(seen =>
            seen.Stage is ("flowering" or "seeding") && s_knowledge.Weeds[seen.Weed].Kind is ("bryophyte" or "alga")
        );

    // A doubt that holds may say that two are one job here: dig or spray. Else the record says it.
    private static string? JobOf(ClearAction one) =>
        one.Because.Where(reason => reason.IsCertain)
            .Select(reason => reason.Then)
            .OfType<Consequence.Argument>()
            .Select(argument => argument.OneOf)
            .OfType<string>()
            .Order(StringComparer.Ordinal)
            .FirstOrDefault()
        ?? Works.JobOf(s_knowledge.ActionOf(one.Action)!);

    [Fact]
    public void An_action_without_a_figure_counts_no_more_than_any_with_one_at_its_time() =>
        Everywhere(advice =>
        {
            foreach (var time in advice.Clear.GroupBy(one => one.Horizon))
            {
                double[] known = [.. time.Select(one => one.Effect.Reduction ?? 0).Where(figure => figure > 0)];
                foreach (ClearAction silent in time.Where(one => one.Effect.Reduction is null && known.Length > 0))
                    Assert.Equal(silent.Certainty * known.Min(), silent.Worth, 9);
            }
        });

    [Fact]
    public void What_lacks_its_tool_stands_below_all_that_can_be_done_at_its_time() =>
        Everywhere(advice =>
        {
            foreach (var time in advice.Clear.Where(one => one.OneOf is null).GroupBy(one => one.Horizon))
            {
                ClearAction[] all = [.. time];
                int last = Array.FindLastIndex(all, one => !one.LacksTool && one.NotToday.IsEmpty);
                int first = Array.FindIndex(all, one => one.LacksTool);
                Assert.True(first < 0 || first > last, $"{time.Key}: what lacks its tool stands at {first}");
            }
        });

    private static void Everywhere(Action<AreaAdvice> holds)
    {
        foreach (AreaAdvice advice in ShippedRules.WorkedAreas)
            holds(advice);
        DrawnAdvice.OfCases.Sample((_, advice) => holds(advice), Sizes.Of(few: 150, many: 20_000));
    }

    private static bool IsUp(WeedSeen weed) =>
        weed.Stage is "seedling" or "young" or "mature" or "flowering" or "seeding";

    private static bool IsPulling(string action) =>
        action is "hand-weed-now" or "pull-before-seed" or "dig-out-roots" or "scrape-off-liverwort";

    private static bool WorksOnStanding(string action) =>
        s_knowledge.ActionOf(action) switch
        {
            Practice practice => practice.WorksOn != "seed-and-spores" && practice.When == "now",
            Treatment treatment => treatment.ActsOn.Contains("emerged"),
            _ => false,
        };

    private static bool StopsSeedOnly(string action) =>
        s_knowledge.ActionOf(action) switch
        {
            Practice practice => practice.Kind == "covering",
            Treatment treatment => treatment.ActsOn.Contains("germinating") && !treatment.ActsOn.Contains("emerged"),
            _ => false,
        };
}
