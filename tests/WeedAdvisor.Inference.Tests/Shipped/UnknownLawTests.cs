using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>Not known means not known everywhere: who tells less is never told that more is clear.</summary>
public sealed class UnknownLawTests
{
    private const int TakenEach = 6;

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void Taking_anything_away_never_makes_clear_what_was_not() =>
        Gen.Select(new RandomVisits(s_knowledge).Case, Gen.Int[0, 10_000].Array[TakenEach])
            .Sample(
                (all, picks) =>
                {
                    LiveAdvice live = ShippedRules.Advisor.Open(all);
                    AreaAdvice full = live.Advice;
                    ImmutableArray<Taken> taken =
                    [
                        .. Taken.From(all).Where(one => !SettlesAContradiction(all, one) && !IsOfWhatIsUsual(one)),
                    ];
                    if (taken.IsEmpty)
                        return;
                    foreach (int pick in picks)
                    {
                        Taken one = taken[pick % taken.Length];
                        string[] broken = [.. Broken(full, live.Change(one.Less), one)];
                        Assert.True(broken.Length == 0, string.Join('\n', broken.Append(Describe.Of(all))));
                    }
                },
                iter: Sizes.Of(25, 2000)
            );

    [Fact]
    public void Taking_an_earlier_use_or_any_field_of_it_away_never_makes_clear_what_was_not() =>
        new RandomVisits(s_knowledge).Case.Sample(
            drawn =>
            {
                AreaCase all = WithoutFalseNo(drawn);
                LiveAdvice live = ShippedRules.Advisor.Open(all);
                AreaAdvice full = live.Advice;
                foreach (Taken one in Taken.From(all).Where(one => one.Question == "past"))
                {
                    string[] broken = [.. Broken(full, live.Change(one.Less), one)];
                    Assert.True(broken.Length == 0, string.Join('\n', broken.Append(Describe.Of(all))));
                }
            },
            iter: Sizes.Of(25, 2000)
        );

    // The others stay listed, so what hangs on the list as a whole may change; that nobody may go in does not.
    [Fact]
    public void Taking_the_uses_of_the_last_week_off_the_list_sends_nobody_in() =>
        new RandomVisits(s_knowledge)
            .Case.Where(drawn => WasUsedLately(drawn.Area))
            .Sample(
                drawn =>
                {
                    AreaCase all = WithoutFalseNo(drawn);
                    LiveAdvice live = ShippedRules.Advisor.Open(all);
                    AreaAdvice full = live.Advice;
                    ImmutableArray<PastApplication> older = [.. all.Area.Past!.Value.Where(use => !IsLately(use))];
                    AreaAdvice less = live.Change(all with { Area = all.Area with { Past = older } });
                    string[] sent =
                    [
                        .. s_knowledge
                            .Practices.Values.Where(practice => practice.Entry == EntryNeed.Worker)
                            .Select(practice => practice.Id)
                            .Where(id => WasHeldBack(full, id) && less.StatusOf(id) == ActionStatus.Clear),
                    ];
                    Assert.True(sent.Length == 0, string.Join('\n', sent.Append(Describe.Of(all))));
                },
                iter: Sizes.Of(25, 2000)
            );

    // Nobody who tells a use of these days can also have said that nothing was put on.
    private static AreaCase WithoutFalseNo(AreaCase all)
    {
        bool isUsed = WasUsedLately(all.Area) || all.Others.Any(WasUsedLately);
        return isUsed ? new AreaCase(all.Date, Yes(all.Area), [.. all.Others.Select(Yes)]) : all;

        static VisitArea Yes(VisitArea area) =>
            Says(area, "put-on-lately", "no") ? area.With("put-on-lately", "yes") : area;
    }

    private static IEnumerable<string> Broken(AreaAdvice full, AreaAdvice less, Taken taken) =>
        less
            .Clear.Where(clear =>
                full.StatusOf(clear.Action) == ActionStatus.ClearUnless
                    ? clear.Status == ActionStatus.Clear
                    : WasHeldBack(full, clear.Action) && !Waits(clear, taken) && !IsRoundAgain(full, clear, taken)
            )
            .Select(clear =>
                $"{clear.Action} was {full.StatusOf(clear.Action)}; without {taken.What} it is {clear.Status} "
                + $"[{string.Join(' ', clear.Unless.Select(need => need.Id))}]"
            );

    // How often it is weeded is not asked of a store, a strip or a bank, and told there it does not count; once nobody
    // says that it is one, it counts again, for the rounds alone.
    private static bool IsRoundAgain(AreaAdvice full, ClearAction clear, Taken taken) =>
        taken.What == "place"
        && clear.Action == "hand-weeding-rounds"
        && ((string[])["noncrop-strip", "water-edge", "pot-store"]).Any(place => Says(full.Area, "place", place));

    // What nothing spoke for may become clear by what is taken for usual; all else may not.
    private static bool WasHeldBack(AreaAdvice full, string action) =>
        full.StatusOf(action) switch
        {
            ActionStatus.Clear => false,
            ActionStatus.NotAdvised => full.NotAdvised.Any(one => one.Action == action && !one.For.IsEmpty),
            _ => true,
        };

    private static bool Waits(ClearAction clear, Taken taken) =>
        clear.Status == ActionStatus.ClearUnless && clear.Unless.Any(need => need.Id == taken.Question);

    // Who takes back that no weed is to come expects what is usual; what that does, and that it does no more than if it
    // were told, ComingWeedsTests show.
    private static bool IsOfWhatIsUsual(Taken taken) => taken.Question == "expected-weeds";

    // Of two answers that contradict each other one is wrong; who takes it back has settled that, and told more: crops
    // where no stock stands, what was put on this week where it is said that nothing was, here or in this house.
    private static bool SettlesAContradiction(AreaCase all, Taken taken) =>
        (taken is { What: "crops" } && Says(all.Area, "stock", "none-present"))
        || (
            taken is { Question: "comes-next" or "comes-next-on", Owner: var seller }
            && Says(seller, "shipping-soon", "no")
            && Says(seller, "comes-next", "sale")
        )
        || (
            taken.Question == "put-on-lately"
            && taken.Owner != all.Area
            && Says(all.Area, "put-on-lately", "no")
            && Says(taken.Owner, "put-on-lately", "yes")
        )
        || (
            taken is { Question: "put-on-lately", Owner: var owner }
            && owner == all.Area
            && Says(owner, "put-on-lately", "no")
            && (WasUsedLately(owner) || all.Others.Any(WasUsedLately))
        )
        || (
            taken.What.EndsWith("past", StringComparison.Ordinal)
            && WasUsedLately(taken.Owner)
            && (Says(all.Area, "put-on-lately", "no") || Says(taken.Owner, "put-on-lately", "no"))
        );

    private static bool WasUsedLately(VisitArea area) => (area.Past ?? []).Any(IsLately);

    private static bool IsLately(PastApplication use) =>
        use.Date is null || use.Date >= RandomVisits.Day.AddDays(-PutOnLately.Days);

    private static bool Says(VisitArea area, string question, string word) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words && words.Value.Contains(word);
}
