using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads what practices and treatments have in common.</summary>
internal static class ActionParts
{
    private const decimal MostMoney = 1_000_000;
    private const decimal MostHours = 10_000;
    private const decimal DeepestCm = 100;
    private const string Materials = "materials-usd-per-1000-pots";
    private const string Labour = "labour-hours-per-1000-pots";
    private const string Depth = "depth-cm";
    private const string Work = "work";
    private const int LongestName = 60;

    /// <summary>The short name, which has to fit a line of the screen.</summary>
    public static string Name(MappingReader map)
    {
        string name = map.Text("name");
        if (name.Length > LongestName)
            map.Context.Report(map.Node, $"a name of {name.Length} letters", $"at most {LongestName} letters");
        return name;
    }

    /// <summary>
    /// The stock with which it can be done; a record that leaves it empty would be barred by no rule on stock.
    /// </summary>
    public static WordSet StockStages(MappingReader map)
    {
        WordSet stages = map.WordSet("stock-stages", "answers:stock");
        if (stages.Count == 0 && map.Has("stock-stages"))
            map.Context.Report(map.Node, "no word under 'stock-stages'", "at least one answer to 'stock'");
        return stages;
    }

    /// <summary>What the action costs, or null.</summary>
    /// <param name="map">The record.</param>
    /// <param name="hasTool">Whether a tool may say how long it takes, so that no labour need stand there.</param>
    public static CostDrivers? Cost(MappingReader map, bool hasTool)
    {
        if (map.OptionalMap("cost", "a cost") is not { } cost)
            return null;
        Span? depth = cost.OptionalRange(Depth, 0, DeepestCm);
        string? work = cost.OptionalWord(Work, $"words:{string.Join('|', WorkingTimeIds.PerPot)}");
        var drivers = new CostDrivers(
            cost.OptionalRange(Materials, 0, MostMoney),
            cost.OptionalRange(Labour, 0, MostHours),
            cost.Sources()
        )
        {
            Price = cost.OptionalWord("price", "prices"),
            DepthCm = depth,
            Work = work,
            GrowsWith = CostGrowthWords.Of(cost.OptionalWord("grows-with", CostGrowthWords.Notation)),
        };
        CheckCost(cost, drivers, hasTool);
        cost.Finish();
        return drivers;
    }

    // Each half of a cost is said once: by a figure, or by what the figure follows from.
    private static void CheckCost(MappingReader cost, CostDrivers drivers, bool hasTool)
    {
        if (!cost.Has(Labour) && !cost.Has(Work) && !(hasTool && cost.Has(Materials)))
            cost.Context.Report(
                cost.Node,
                "a cost that does not say how long it takes",
                hasTool ? $"'{Labour}' or '{Materials}'" : $"'{Labour}' or '{Work}'"
            );
        foreach ((string figure, string follows) in new[] { (Materials, Depth), (Labour, Work) })
        {
            if (cost.Has(figure) && cost.Has(follows))
                cost.Context.Report(cost.Optional(follows)!, $"'{follows}' beside '{figure}'", "one or the other");
        }

        if (cost.Has(Depth) && drivers.Price is null)
            cost.Context.Report(cost.Optional(Depth)!, $"'{Depth}' without 'price'", "the price of a cubic metre");
    }

    /// <summary>The figures of a cost.</summary>
    public static CostDrivers Drivers(MappingReader cost) =>
        new(cost.Range(Materials, 0, MostMoney), cost.Range(Labour, 0, MostHours), cost.Sources());
}
