using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// A layer or a preventive wants a clean surface (hewson-2012, ncsu-propagation): while weeds are up the cleaning
/// stands first. The oracle asks what was seen and what the records say, not what the rules concluded.
/// </summary>
public class CleanFirstTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void While_weeds_are_up_no_mulch_and_no_preventive_leads_the_list_where_something_cleans()
    {
        int looked = 0;
        foreach (AreaAdvice advice in WithWeedsUp())
        {
            ClearAction[] today =
            [
                .. advice.Clear.Where(one => one.NotToday.IsEmpty && one.Status == ActionStatus.Clear),
            ];
            if (!today.Any(one => IsPulling(one.Action)))
                continue;
            looked++;
            Assert.All(today.Where(one => StopsSeedOnly(one.Action)), one => Assert.NotEqual(1, one.Rank));
        }

        Assert.True(looked > 30, $"only {looked} areas showed it");
    }

    [Fact]
    public void What_wants_a_clean_surface_stands_behind_the_best_cleaning()
    {
        foreach (AreaAdvice advice in WithWeedsUp())
        {
            ClearAction[] today =
            [
                .. advice.Clear.Where(one => one.NotToday.IsEmpty && one.Status == ActionStatus.Clear),
            ];
            int[] pulling = [.. today.Where(one => IsPulling(one.Action)).Select(one => one.Rank)];
            if (pulling.Length == 0)
                continue;
            double best = today.Where(one => IsPulling(one.Action)).Max(one => one.Merit);
            int first = today.First(one => IsPulling(one.Action) && one.Merit >= best).Rank;
            Assert.All(today.Where(one => StopsSeedOnly(one.Action) && one.Merit > best && one.Rank < first), one =>
                Assert.Contains(today, other => other.Rank < one.Rank && other.Cleans && !StopsSeedOnly(other.Action))
            );
        }
    }

    private static IEnumerable<AreaAdvice> WithWeedsUp() =>
        s_knowledge
            .WorkedVisits.SelectMany(worked => ShippedRules.Advisor.Advise(worked.Visit).Areas)
            .Where(advice => advice.Area.Weeds is { } weeds && weeds.Any(IsUp));

    private static bool IsUp(WeedSeen weed) =>
        weed.Stage is "seedling" or "young" or "mature" or "flowering" or "seeding";

    private static bool IsPulling(string action) =>
        action is "hand-weed-now" or "pull-before-seed" or "dig-out-roots" or "scrape-off-liverwort";

    private static bool StopsSeedOnly(string action) =>
        s_knowledge.ActionOf(action) switch
        {
            Practice practice => practice.Kind == "covering",
            Treatment treatment => treatment.ActsOn.Contains("germinating") && !treatment.ActsOn.Contains("emerged"),
            _ => false,
        };
}
