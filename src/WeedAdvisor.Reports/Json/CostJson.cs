using System.Text.Json;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;

namespace WeedAdvisor.Reports.Json;

/// <summary>What one use of an action costs, and what it is reckoned for, as JSON.</summary>
internal static class CostJson
{
    /// <summary>The pots or the ground of an area that costs are reckoned for.</summary>
    public static void WriteSite(Utf8JsonWriter json, CostSite site)
    {
        json.WriteStartObject("costsFor");
        json.WriteString("unit", site.Block is null ? "100-m2" : "pots");
        json.WriteFigure("groundM2", site.GroundM2);
        json.WriteFigure("pots", (decimal?)site.Block?.Pots.Value);
        json.WriteFigure("potWidthCm", site.Block?.WidthCm.Value);
        json.WriteFigure("apartCm", site.Block?.ApartCm.Value);
        json.WriteBoolean("potsAssumed", site.Block?.Pots.From == Origin.Assumed);
        json.WriteBoolean("potWidthAssumed", site.Block?.WidthCm.From == Origin.Assumed);
        json.WriteBoolean("apartAssumed", site.Block?.ApartCm.From == Origin.Assumed);
        json.WriteEndObject();
    }

    /// <summary>The cost of one use; null figures when it is not known.</summary>
    public static void Write(Utf8JsonWriter json, AdvisedCost? cost)
    {
        json.WriteFigure("costUsd", cost?.Usd);
        json.WriteFigure("hours", cost?.Hours);
        json.WriteFigure("costUsdPer1000Pots", cost?.UsdPerUnit);
        json.WriteFigure("hoursPer1000Pots", cost?.HoursPerUnit);
        json.WriteBoolean("costGrowsWithPots", cost?.GrowsWithPots == true);
        json.WriteText("tool", cost?.Cost.Tool);
        json.WriteText("smallestPack", cost?.Cost.Pack?.Holds);
        json.WriteFigure("smallestPackUsd", cost?.Cost.Pack?.Usd);
        json.WriteList("materials", cost?.Cost.Materials ?? [], line => WriteLine(json, line));
        json.WriteList("work", cost?.Cost.Work ?? [], line => WriteLine(json, line));
    }

    private static void WriteLine(Utf8JsonWriter json, CostLine line)
    {
        json.WriteString("line", line.Id);
        json.WriteString("name", line.Name);
        Span amount = line.Amount;
        json.WriteFigure("low", amount.Low);
        json.WriteFigure("high", amount.High);
        json.WriteString("working", line.Working);
    }
}
