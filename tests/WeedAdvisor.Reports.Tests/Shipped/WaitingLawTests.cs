using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// What waits for an answer is a promise: the answer keeps it, bars it, or says why nothing came of it.
/// </summary>
public sealed class WaitingLawTests
{
    private const int Columns = 240;

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void No_answer_turns_a_named_promise_into_silence()
    {
        int looked = 0;
        Gen.Select(new RandomVisits(s_knowledge).Case, new RandomVisits(s_knowledge).Area)
            .Sample(
                (drawn, answers) =>
                {
                    LiveAdvice live = ShippedRules.Advisor.Open(drawn);
                    WaitingAction[] promised = [.. live.Advice.Waiting];
                    HashSet<string> asked =
                    [
                        .. promised
                            .SelectMany(one => one.Needs)
                            .Where(need => need.Kind == NeedKind.Question)
                            .Select(need => need.Id),
                    ];
                    VisitArea answered = Answered(drawn.Area, asked, answers);
                    AreaAdvice then = live.Change(drawn with { Area = answered });
                    string text = TextOf(then);
                    foreach (WaitingAction one in promised)
                    {
                        looked++;
                        string name = s_knowledge.ActionOf(one.Action)!.Name;
                        Assert.True(
                            then.StatusOf(one.Action) != ActionStatus.NotAdvised
                                || text.Contains(name, StringComparison.Ordinal),
                            $"{one.Action} waited for {one.Needs[0].Id} and perhaps more, and nobody "
                                + "says what became of it"
                        );
                    }
                },
                iter: Sizes.Of(40, 2000),
                threads: 1
            );
        Assert.True(looked > 100, $"only {looked} promises were looked at");
    }

    [Fact]
    public void What_waits_is_told_in_the_order_in_which_it_would_stand() =>
        DrawnAdvice.OfCases.Sample(
            (_, advice) =>
            {
                WaitingAction[] waiting = [.. advice.Waiting];
                foreach ((WaitingAction before, WaitingAction after) in waiting.Zip(waiting.Skip(1)))
                {
                    Assert.True(before.Horizon <= after.Horizon);
                    if (before.Horizon == after.Horizon)
                        Assert.True(before.Promise >= after.Promise - 1e-9);
                }
            },
            Sizes.Of(60, 5000)
        );

    [Fact]
    public void A_practice_waits_for_nothing_that_would_only_make_it_useless()
    {
        DrawnAdvice.OfCases.Sample(
            (_, advice) =>
            {
                foreach (WaitingAction one in advice.Waiting)
                {
                    if (s_knowledge.ActionOf(one.Action) is not Practice || !one.For.Any(reason => reason.IsCertain))
                        continue;
                    Assert.Contains(one.Because, IsMoreThanUseless);
                }
            },
            Sizes.Of(60, 5000)
        );
    }

    private static bool IsMoreThanUseless(Reason reason) =>
        reason.Then is Consequence.Bar { Severity: Severity.Prohibited }
        || reason.Needs.Any(need => need.Id is "place" or "cover" or "stock");

    // Takes the answers of another area for what is asked, as far as that one has them.
    private static VisitArea Answered(VisitArea area, HashSet<string> asked, VisitArea other) =>
        area with
        {
            Answers = area.Answers.SetItems(other.Answers.Where(answer => asked.Contains(answer.Key))),
            Weeds = asked.Contains("weeds") ? other.Weeds ?? area.Weeds : area.Weeds,
            Past = asked.Contains("past") ? other.Past ?? area.Past : area.Past,
        };

    private static string TextOf(AreaAdvice area)
    {
        var visit = new Visit("drawn", null, RandomVisits.Day, null, [area.Area]);
        string page = DocumentText.Of(
            AdviceDocument.Of(new VisitAdvice(s_knowledge.Stamp, visit, [area]), s_knowledge, full: true),
            Columns
        );
        return string.Join(' ', page.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
