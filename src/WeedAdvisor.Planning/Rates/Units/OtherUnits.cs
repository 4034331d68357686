using System.Collections.Frozen;

namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>The system to which a unit belongs.</summary>
public enum UnitFamily
{
    /// <summary>Both: a time, a share, a number of pots.</summary>
    Neither,

    /// <summary>Metric.</summary>
    Metric,

    /// <summary>That of the United States.</summary>
    Us,
}

/// <summary>Which unit of the other system people use where one has this unit.</summary>
public static class OtherUnits
{
    // What is put on ground or into water is told in units that people use together, not in those of its parts.
    private static readonly FrozenDictionary<string, string> s_whole = new Dictionary<string, string>
    {
        ["g/m2"] = "lb/1000ft2",
        ["lb/1000ft2"] = "g/m2",
        ["oz/1000ft2"] = "g/m2",
        ["oz/100ft2"] = "g/m2",
        ["mL/100m2"] = "fl-oz/1000ft2",
        ["fl-oz/1000ft2"] = "mL/100m2",
        ["mL/1000ft2"] = "mL/100m2",
        ["gal/1000ft2"] = "L/100m2",
        ["pt/acre"] = "L/ha",
        ["qt/acre"] = "L/ha",
        ["fl-oz/acre"] = "mL/ha",
        ["lb/gal"] = "g/L",
        ["lb/100gal"] = "g/L",
        ["pt/100gal"] = "mL/L",
        ["km/h"] = "mph",
        ["m/min"] = "ft/min",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> s_simple = new Dictionary<string, string>
    {
        ["mm"] = "in",
        ["cm"] = "in",
        ["m"] = "ft",
        ["km"] = "mi",
        ["cm2"] = "in2",
        ["m2"] = "ft2",
        ["ha"] = "acre",
        ["mL"] = "fl-oz",
        ["L"] = "gal",
        ["m3"] = "yd3",
        ["mg"] = "oz",
        ["g"] = "oz",
        ["kg"] = "lb",
        ["Pa"] = "psi",
        ["kPa"] = "psi",
        ["bar"] = "psi",
        ["in"] = "cm",
        ["ft"] = "m",
        ["yd"] = "m",
        ["mi"] = "km",
        ["in2"] = "cm2",
        ["ft2"] = "m2",
        ["yd2"] = "m2",
        ["sq-rod"] = "m2",
        ["acre"] = "ha",
        ["tsp"] = "mL",
        ["tbsp"] = "mL",
        ["fl-oz"] = "mL",
        ["cup"] = "mL",
        ["pt"] = "L",
        ["qt"] = "L",
        ["gal"] = "L",
        ["in3"] = "L",
        ["ft3"] = "L",
        ["yd3"] = "m3",
        ["acre-ft"] = "m3",
        ["oz"] = "g",
        ["lb"] = "kg",
        ["ton"] = "kg",
        ["mph"] = "km/h",
        ["gpm"] = "L/min",
        ["psi"] = "bar",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The system of a unit; a quotient that holds a metric unit is metric.</summary>
    public static UnitFamily FamilyOf(Unit unit) =>
        UnitSystem.IsMetric(new Quantity(1, unit)) ? UnitFamily.Metric
        : s_whole.ContainsKey(unit.Symbol) || unit.Symbol.Split('/').Any(part => s_simple.ContainsKey(Bare(part)))
            ? UnitFamily.Us
        : UnitFamily.Neither;

    /// <summary>The unit of the other system; null for one that both use.</summary>
    public static Unit? Of(Unit unit)
    {
        if (FamilyOf(unit) == UnitFamily.Neither)
            return null;
        string symbol = s_whole.GetValueOrDefault(unit.Symbol)
            ?? string.Join('/', unit.Symbol.Split('/').Select(part => s_simple.GetValueOrDefault(Bare(part), part)));
        return UnitTable.Of(symbol);
    }

    // A quotient may count what stands below, such as 1000 ft2; the other system counts one of its own.
    private static string Bare(string part) => part.TrimStart([.. "0123456789"]);
}
