using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Blocks;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Costs;

/// <summary>What one use of a shipped action costs for a block of pots.</summary>
internal static class CostOf
{
    /// <summary>The shipped prices.</summary>
    public static PriceBook Shipped { get; } = PriceBook.Of(ShippedRules.Knowledge);

    public static PotBlock Block(int pots, decimal widthCm, decimal apartCm) =>
        new(
            new Told<int>(pots, Origin.Answer),
            new Told<decimal>(widthCm, Origin.Answer),
            new Told<decimal>(apartCm, Origin.Answer)
        );

    /// <summary>1000 pots of the width and spacing that records count for.</summary>
    public static PotBlock Usual { get; } = Block(1000, 16, 30);

    public static Outcome<ActionCost, string> Try(
        string action,
        PotBlock? block,
        WordSet? equipment = null,
        string? tool = null,
        PriceBook? prices = null,
        string? ground = "pots"
    ) =>
        ActionCost.Of(
            ShippedRules.Knowledge.ActionOf(action)!,
            new CostSite(block, block is null ? ground : "pots"),
            prices ?? Shipped,
            equipment ?? WordSet.Empty,
            tool
        );

    public static ActionCost Action(
        string action,
        PotBlock? block,
        WordSet? equipment = null,
        string? tool = null,
        PriceBook? prices = null
    )
    {
        Outcome<ActionCost, string> cost = Try(action, block, equipment, tool, prices);
        Assert.Empty(cost.Refusals);
        return cost.Value!;
    }

    public static CostLine Line(this ActionCost cost, string id) => cost.Work.Single(line => line.Id == id);

    public static Price Own(string id, decimal value, string unit) => Money.Yards.Price(id, value, unit);
}
