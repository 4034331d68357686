using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads what practices and treatments have in common.</summary>
internal static class ActionParts
{
    private const decimal MostMoney = 1_000_000;
    private const decimal MostHours = 10_000;
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
    public static CostDrivers? Cost(MappingReader map)
    {
        if (map.OptionalMap("cost", "a cost") is not { } cost)
            return null;
        CostDrivers drivers = Drivers(cost) with { Price = cost.OptionalWord("price", "prices") };
        cost.Finish();
        return drivers;
    }

    /// <summary>The figures of a cost.</summary>
    public static CostDrivers Drivers(MappingReader cost) =>
        new(
            cost.Range("materials-usd-per-1000-pots", 0, MostMoney),
            cost.Range("labour-hours-per-1000-pots", 0, MostHours),
            cost.Sources()
        );
}
