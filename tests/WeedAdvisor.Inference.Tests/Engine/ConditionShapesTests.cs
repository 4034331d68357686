using WeedAdvisor.Inference.Engine;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Engine;

public class ConditionShapesTests
{
    [Fact]
    public void No_shipped_judgement_has_more_patterns_than_a_native_program_knows_shapes_for() =>
        Assert.All(ShippedRules.Knowledge.Judgements, judgement =>
            Assert.InRange(judgement.When.Length, 1, ConditionShapes.MostFacts)
        );
}
