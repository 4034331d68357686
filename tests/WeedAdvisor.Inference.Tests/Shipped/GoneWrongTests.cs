using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>What to do when a use has already gone wrong.</summary>
public sealed class GoneWrongTests
{
    [Fact]
    public void What_to_do_is_told_in_the_order_of_doing_it_before_all_else()
    {
        Visit visit = ShippedRules.Visit("a-use-gone-wrong");
        AreaAdvice closed = ShippedRules.Advisor.Advise(visit).Areas.Single(area => area.Area.Id == "closed-house");
        Assert.Equal(
            [
                "stop-and-keep-people-first",
                "air-what-stands-under-a-roof",
                "wash-off-while-it-is-wet",
                "watch-hold-back-test-and-write-down",
            ],
            closed.Cautions.Take(4).Select(caution => caution.Because.Judgement)
        );
    }
}
