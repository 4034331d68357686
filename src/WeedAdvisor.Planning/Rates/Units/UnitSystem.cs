using System.Collections.Frozen;
using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>Tells metric units from US ones, so that an answer comes in the units in which was asked.</summary>
internal static class UnitSystem
{
    private static readonly FrozenSet<string> s_metric = FrozenSet.Create(
        StringComparer.Ordinal,
        "mm",
        "cm",
        "m",
        "km",
        "cm2",
        "m2",
        "ha",
        "mL",
        "L",
        "m3",
        "mg",
        "g",
        "kg",
        "Pa",
        "kPa",
        "bar"
    );

    /// <summary>Whether the quantity is written in a metric unit, or in a quotient that holds one.</summary>
    public static bool IsMetric(Quantity quantity) =>
        quantity.Unit.Symbol.Split('/').Any(part => s_metric.Contains(part.TrimStart([.. "0123456789"])));

    /// <summary>Units of the table by their symbols.</summary>
    public static ImmutableArray<Unit> Units(params string[] symbols) => [.. symbols.Select(UnitTable.Of)];
}
