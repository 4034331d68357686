using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>What the next question is said to settle is what its answers do when they are given.</summary>
public sealed class OutcomeTests
{
    [Fact]
    public void An_answer_given_brings_and_drops_what_was_said_of_it()
    {
        int said = 0;
        foreach (WorkedVisit worked in ShippedRules.Knowledge.WorkedVisits.Take(Sizes.Of(25, 1000)))
        {
            VisitAdvice told = ShippedRules.Advisor.WithOutcomes(ShippedRules.Advisor.Advise(worked.Visit));
            for (int i = 0; i < told.Areas.Length; i++)
            {
                if (told.Areas[i].NextQuestion is not { Outcomes.IsEmpty: false } next)
                    continue;
                AreaCase looked = AreaCase.Of(worked.Visit, i);
                LiveAdvice live = ShippedRules.Advisor.Open(looked);
                ImmutableArray<string> now = FirstThings.Of(live.Advice.Clear);
                foreach (AnswerOutcome outcome in next.Outcomes)
                {
                    ImmutableArray<string> then = FirstThings.Of(
                        live.Change(looked with { Area = looked.Area.With(next.Id, outcome.Answer) }).Clear
                    );
                    said++;
                    Assert.Equal(then.Except(now), outcome.Brings);
                    Assert.Equal(now.Except(then), outcome.Drops);
                    Assert.Equal(!then.Except(now).Any() && !then.SequenceEqual(now), outcome.Reorders);
                }
            }
        }

        Assert.InRange(said, 50, int.MaxValue);
    }
}
