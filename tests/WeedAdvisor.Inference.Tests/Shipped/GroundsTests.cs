using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>What an answer that says more of a place may never clear, with the rules that ship.</summary>
public sealed class GroundsTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly RandomVisits s_visits = new(s_knowledge);

    // udel-drift; homes and schools: a policy of this adviser. Two neighbours are never less than one of them.
    [Theory]
    [InlineData("homes-or-school")]
    [InlineData("sensitive-crop")]
    public void Beside_people_and_a_crop_nothing_is_clear_that_is_not_clear_beside_either(string one) =>
        ClearsNoMore("neighbours", "people-and-crop", one);

    // kent-de, pnw-gh-floors: a house counts as empty only when every wanted plant that shares its air is out.
    [Fact]
    public void Beside_a_full_bay_that_is_joined_nothing_is_clear_that_is_not_clear_among_plants() =>
        ClearsNoMore("plants-in-house", "in-a-joined-bay", "some");

    // pnw-containers, neal-2005: what has to be washed in is no safer choice where it can't be.
    [Fact]
    public void Without_even_water_nothing_is_clear_that_is_not_clear_with_it() =>
        ClearsNoMore("waters-in-evenly", "no", "yes");

    private static void ClearsNoMore(string question, string said, string other) =>
        s_visits.Area.Sample(
            area => Assert.Subset(Clear(area.With(question, other)), Clear(area.With(question, said))),
            iter: Sizes.Of(30, 1000)
        );

    private static HashSet<string> Clear(VisitArea area) =>
        [
            .. ShippedRules
                .On(AreaCase.Alone(RandomVisits.Day, area))
                .Clear.Select(one => one.Action)
                .Where(s_knowledge.Treatments.ContainsKey),
        ];
}
