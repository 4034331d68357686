using CsCheck;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Tests.Money;

public class CropLossTests
{
    [Fact]
    public void More_weeds_hurt_more_pots_but_never_more_than_there_are() =>
        Gen.Select(Gen.Double[0, 1e6], Gen.Double[0.01, 1e6])
            .Sample(
                (weeds, more) =>
                {
                    Assert.True(CropLoss.PotsHurt(weeds + more) >= CropLoss.PotsHurt(weeds));
                    Assert.InRange(CropLoss.PotsHurt(weeds), 0, Math.Min(1000, weeds + 1e-9));
                }
            );

    [Fact]
    public void No_weeds_hurt_no_pots() => Assert.Equal(0, CropLoss.PotsHurt(0));
}
