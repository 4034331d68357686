using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>
/// No weed is passed over in silence: an action whose record or rule names it, its kind or its way of life meets it, or
/// it is said to be left, with why. The oracle reads records and printed reasons, not what was concluded.
/// </summary>
public class EveryWeedIsMetTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void Every_weed_is_met_by_an_action_or_said_to_be_left_with_why()
    {
        int met = 0;
        Everywhere(advice =>
        {
            foreach (string id in (advice.Area.Weeds ?? []).Select(seen => seen.Weed).Distinct())
            {
                Weed weed = s_knowledge.Weeds[id];
                Gap[] left = [.. advice.Gaps.Where(gap => gap.Kind == GapKind.WeedLeft && gap.Subject == id)];
                if (IsMet(weed, advice))
                {
                    met++;
                    continue;
                }

                Gap said = Assert.Single(left);
                Assert.StartsWith($"Left for now: {weed.Name}. ", said.Text, StringComparison.Ordinal);
            }
        });
        Assert.True(met > 100, $"only {met} weeds were met");
    }

    [Fact]
    public void What_is_said_to_be_left_was_seen_and_is_said_once() =>
        Everywhere(advice =>
        {
            string[] left = [.. advice.Gaps.Where(gap => gap.Kind == GapKind.WeedLeft).Select(gap => gap.Subject!)];
            Assert.Equal(left.Distinct(), left);
            Assert.All(left, id => Assert.Contains(advice.Area.Weeds!.Value, seen => seen.Weed == id));
        });

    [Fact]
    public void In_the_worked_visits_nothing_that_is_up_is_left_while_people_may_go_in()
    {
        foreach (AreaAdvice advice in ShippedRules.WorkedAreas.Where(advice => advice.KeepOut is null))
        {
            string[] up = [.. (advice.Area.Weeds ?? []).Where(seen => seen.IsUp == true).Select(seen => seen.Weed)];
            Assert.DoesNotContain(advice.Gaps, gap => gap.Kind == GapKind.WeedLeft && up.Contains(gap.Subject));
        }
    }

    private static bool IsMet(Weed weed, AreaAdvice advice) =>
        advice.Clear.Any(one => RecordSpeaksOf(weed, one.Action) || one.Because.Any(reason => Names(reason, weed)))
        || advice.Waiting.Any(one =>
            RecordSpeaksOf(weed, one.Action) || one.For.Concat(one.Because).Any(reason => Names(reason, weed))
        );

    private static bool RecordSpeaksOf(Weed weed, string action) =>
        !weed.IsUnnamed
        && s_knowledge.ActionOf(action) switch
        {
            Practice practice => practice.Effects.Any(effect =>
                effect.ReductionPercent.High > 0
                && (effect.On == weed.Id || effect.On == weed.Kind || effect.On == "all")
            ),
            Treatment treatment => treatment.Ratings.Any(rating =>
                rating.On == weed.Id || rating.On == weed.Kind || weed.RatedAs.Contains(rating.On)
            ),
            _ => false,
        };

    private static bool Names(Reason reason, Weed weed) =>
        reason.Matched.Any(matched =>
            (matched.Pattern == "weed" && matched.Fact == weed.Name)
            || matched.Behind.Any(behind => Names(behind, weed))
        );

    private static void Everywhere(Action<AreaAdvice> holds)
    {
        foreach (AreaAdvice advice in ShippedRules.WorkedAreas)
            holds(advice);
        DrawnAdvice.OfAreas.Sample((_, advice) => holds(advice), Sizes.Of(80, 10_000));
    }
}
