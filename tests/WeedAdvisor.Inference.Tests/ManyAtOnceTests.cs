using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests;

/// <summary>Areas are shared out over the cores: whatever is made on first use must be made for all of them.</summary>
public sealed class ManyAtOnceTests
{
    private const int Workers = 4;

    // Compiled anew each time, so that every worker meets it cold.
    [Fact]
    public async Task A_fresh_advisor_asked_from_many_sides_at_once_says_what_it_says_alone()
    {
        VisitArea[] areas =
        [
            .. ShippedRules.Knowledge.WorkedVisits.SelectMany(worked => worked.Visit.Areas).Take(Workers * 2),
        ];
        string[] alone = [.. areas.Select(area => Told(ShippedRules.Advisor.Open(Case(area)).Advice))];
        int times = Sizes.Of(few: 2, many: 300);
        for (int time = 0; time < times; time++)
        {
            var advisor = Advisor.Of(ShippedRules.Knowledge);
            using var start = new Barrier(Workers);
            string[][] told = await Task.WhenAll(
                Enumerable
                    .Range(0, Workers)
                    .Select(worker =>
                        Task.Factory.StartNew(
                            () =>
                            {
                                start.SignalAndWait();
                                LiveAdvice live = advisor.Open(Case(areas[worker]));
                                return new[] { Told(live.Advice), Told(live.Change(Case(areas[worker + Workers]))) };
                            },
                            TestContext.Current.CancellationToken,
                            TaskCreationOptions.LongRunning,
                            TaskScheduler.Default
                        )
                    )
            );
            Assert.Equal(alone, told.Select(one => one[0]).Concat(told.Select(one => one[1])));
        }
    }

    private static AreaCase Case(VisitArea area) => AreaCase.Alone(RandomVisits.Day, area);

    private static string Told(AreaAdvice advice) =>
        string.Join(
            '\n',
            advice
                .AllConclusions()
                .Select(reason => $"{reason.Judgement} {reason.Text}")
                .Concat(advice.Clear.Select(one => $"{one.Action} {one.Certainty}"))
        );
}
