using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// What stands in the gravel or soil beside the pots is worked on there (common practice): no pot is knocked out,
/// repotted or thrown away for it.
/// </summary>
public sealed class WhereWeedsStandTests
{
    private static readonly string[] s_forPots = ["repot-clean", "discard-infested"];

    [Fact]
    public void A_weed_beside_the_pots_is_taken_out_of_the_gravel_and_no_pot_is_opened()
    {
        AreaAdvice advice = Pad(WeedSeen.InGround);
        Assert.Equal("lift-the-gravel-over-tubers", advice.Clear[0].Action);
        Assert.Equal("pad", advice.Reading.Ground);
        Assert.DoesNotContain(advice.Clear, one => s_forPots.Contains(one.Action) || one.Action == "dig-out-roots");
    }

    [Theory]
    [InlineData(WeedSeen.InPots)]
    [InlineData(null)]
    public void A_weed_in_the_pots_or_nobody_says_where_is_taken_out_of_the_pots(string? stands)
    {
        AreaAdvice advice = Pad(stands);
        Assert.Equal("pots", advice.Reading.Ground);
        Assert.Contains(advice.Clear, one => one.Action == "dig-out-roots");
    }

    [Fact]
    public void One_weed_in_the_pots_keeps_the_work_in_the_pots()
    {
        VisitArea pad = Area();
        WeedSeen beside = pad.Weeds!.Value[0] with { Stands = WeedSeen.InGround };
        var inPots = new WeedSeen("spurge-spotted", "young", 5) { Stands = WeedSeen.InPots };
        AreaAdvice advice = Advise(pad with { Weeds = [beside, inPots] });
        Assert.Equal("pots", advice.Reading.Ground);
        Assert.Contains(advice.Clear, one => one.Action == "lift-the-gravel-over-tubers");
    }

    private static AreaAdvice Pad(string? stands)
    {
        VisitArea pad = Area();
        return Advise(pad with { Weeds = [pad.Weeds!.Value[0] with { Stands = stands }] });
    }

    private static VisitArea Area() => ShippedRules.Visit("nutsedge-under-a-gravel-pad").Areas[0];

    private static AreaAdvice Advise(VisitArea area) =>
        ShippedRules.Advisor.Open(AreaCase.Alone(new DateOnly(2026, 7, 8), area)).Advice;
}
