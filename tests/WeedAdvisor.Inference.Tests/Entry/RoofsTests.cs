using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Entry;

/// <summary>
/// The roofs of a visit are found once; that leaves nothing out that an area by itself would have seen.
/// </summary>
public sealed class RoofsTests
{
    [Fact]
    public void A_visit_says_of_each_area_what_the_area_says_beside_all_others() =>
        new RandomVisits(ShippedRules.Knowledge).Case.Sample(
            drawn =>
            {
                ImmutableArray<VisitArea> areas =
                [
                    .. drawn.Others.Prepend(drawn.Area).Select((area, i) => area with { Id = $"a{i}" }),
                ];
                var visit = new Visit("v", null, drawn.Date, null, areas);
                VisitAdvice together = ShippedRules.Advisor.Advise(visit);
                for (int i = 0; i < areas.Length; i++)
                    Assert.Equal(Said(ShippedRules.On(AreaCase.Of(visit, i))), Said(together.Areas[i]));
            },
            iter: Sizes.Of(20, 500)
        );

    private static string Said(AreaAdvice advice) =>
        string.Join(
            '\n',
            advice
                .AllConclusions()
                .Select(one => $"{one.Judgement} {one.Action} {one.IsCertain} {one.Text}")
                .Concat(advice.Gaps.Select(gap => gap.Text))
        );
}
