using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>
/// Every unit that can be typed, with its exact size. US units by their definitions in NIST Handbook 44, Appendix C:
/// the inch is 25.4 mm, the acre 43 560 square feet (international foot), the US gallon 231 cubic inches, the
/// avoirdupois pound 0.453 592 37 kg. The bar is 100 000 Pa; the psi is a pound-force (standard gravity 9.806 65 m/s²)
/// on a square inch.
/// </summary>
public static class UnitTable
{
    private const decimal Inch = 0.0254m;
    private const decimal Foot = 12 * Inch;
    private const decimal Yard = 3 * Foot;
    private const decimal Mile = 5280 * Foot;
    private const decimal SquareFoot = Foot * Foot;
    private const decimal Acre = 43560 * SquareFoot;
    private const decimal CubicInch = Inch * Inch * Inch;
    private const decimal Gallon = 231 * CubicInch;
    private const decimal FluidOunce = Gallon / 128;
    private const decimal Pound = 0.45359237m;
    private const decimal StandardGravity = 9.80665m;
    private const decimal Litre = 0.001m;
    private const decimal Gram = 0.001m;

    private static readonly ImmutableArray<Entry> s_entries =
    [
        new("mm", Dimension.Distance, 0.001m),
        new("cm", Dimension.Distance, 0.01m),
        new("m", Dimension.Distance, 1, "metre", "metres", "meter", "meters"),
        new("km", Dimension.Distance, 1000),
        new("in", Dimension.Distance, Inch, "inch", "inches"),
        new("ft", Dimension.Distance, Foot, "foot", "feet"),
        new("yd", Dimension.Distance, Yard, "yard", "yards"),
        new("mi", Dimension.Distance, Mile, "mile", "miles"),
        new("cm2", Dimension.Area, 0.0001m, "cm²"),
        new("m2", Dimension.Area, 1, "m²", "sqm", "sq-m"),
        new("ha", Dimension.Area, 10000, "hectare", "hectares"),
        new("in2", Dimension.Area, Inch * Inch, "in²", "sq-in"),
        new("ft2", Dimension.Area, SquareFoot, "ft²", "sqft", "sq-ft"),
        new("yd2", Dimension.Area, Yard * Yard, "yd²", "sq-yd"),
        new("sq-rod", Dimension.Area, Acre / 160),
        new("acre", Dimension.Area, Acre, "acres", "ac", "a"),
        new("mL", Dimension.Volume, Litre / 1000, "millilitre", "millilitres"),
        new("L", Dimension.Volume, Litre, "litre", "litres", "liter", "liters"),
        new("m3", Dimension.Volume, 1, "m³"),
        new("tsp", Dimension.Volume, FluidOunce / 6),
        new("tbsp", Dimension.Volume, FluidOunce / 2),
        new("fl-oz", Dimension.Volume, FluidOunce, "floz", "fl.oz"),
        new("cup", Dimension.Volume, Gallon / 16, "cups"),
        new("pt", Dimension.Volume, Gallon / 8, "pint", "pints"),
        new("qt", Dimension.Volume, Gallon / 4, "quart", "quarts"),
        new("gal", Dimension.Volume, Gallon, "gallon", "gallons"),
        new("in3", Dimension.Volume, CubicInch, "in³", "cu-in"),
        new("ft3", Dimension.Volume, Foot * Foot * Foot, "ft³", "cu-ft"),
        new("yd3", Dimension.Volume, Yard * Yard * Yard, "yd³", "cu-yd"),
        new("acre-ft", Dimension.Volume, Acre * Foot),
        new("mg", Dimension.Weight, Gram / 1000),
        new("g", Dimension.Weight, Gram, "gram", "grams"),
        new("kg", Dimension.Weight, 1),
        new("oz", Dimension.Weight, Pound / 16, "ounce", "ounces"),
        new("lb", Dimension.Weight, Pound, "lbs", "pound", "pounds"),
        new("ton", Dimension.Weight, 2000 * Pound),
        new("s", Dimension.Duration, 1, "sec", "second", "seconds"),
        new("min", Dimension.Duration, 60, "minute", "minutes"),
        new("h", Dimension.Duration, 3600, "hour", "hours", "hr"),
        new("mph", Dimension.Speed, Mile / 3600),
        new("gpm", Dimension.Flow, Gallon / 60),
        new("Pa", Dimension.Pressure, 1),
        new("kPa", Dimension.Pressure, 1000),
        new("bar", Dimension.Pressure, 100000),
        new("psi", Dimension.Pressure, Pound * StandardGravity / (Inch * Inch)),
        new("pot", Dimension.Pots, 1, "pots"),
        new("%", Dimension.None, 0.01m, "percent"),
        new("ppm", Dimension.Strength, 0.001m),
    ];

    private static readonly FrozenDictionary<string, Unit> s_units = Spellings()
        .ToFrozenDictionary(spelling => spelling.Key, spelling => spelling.Value, StringComparer.OrdinalIgnoreCase);

    /// <summary>Symbols of the units, without the quotients.</summary>
    public static ImmutableArray<string> Symbols { get; } = [.. s_entries.Select(entry => entry.Symbol)];

    /// <summary>The unit of a symbol known to be good.</summary>
    /// <exception cref="ArgumentException">There is no such unit.</exception>
    public static Unit Of(string symbol) =>
        Find(symbol) ?? throw new ArgumentException($"no unit '{symbol}'", nameof(symbol));

    /// <summary>
    /// The unit of a symbol as a person types it, such as <c>ft</c>, <c>lb/acre</c> or <c>oz/100ft2</c>; null when
    /// there is none.
    /// </summary>
    public static Unit? Find(string symbol)
    {
        string[] parts = symbol.Split('/');
        if (!s_units.TryGetValue(parts[0].Trim(), out Unit? unit))
            return null;
        foreach (string part in parts.Skip(1))
        {
            if (Below(part.Trim()) is not { } below)
                return null;
            unit = Unit.Per(unit, below.Count, below.Unit);
        }

        return unit;
    }

    /// <summary>The symbol nearest to one that is not a unit; null when none is near.</summary>
    public static string? Nearest(string symbol)
    {
        string[] parts = symbol.Split('/');
        for (int i = 0; i < parts.Length; i++)
        {
            string bare = parts[i].Trim().TrimStart([.. "0123456789 "]);
            if (s_units.ContainsKey(bare))
                continue;
            if (NearestWord.Of(bare, s_units.Keys) is not { } near)
                return null;
            parts[i] = parts[i][..(parts[i].Length - bare.Length)] + s_units[near].Symbol;
        }

        return string.Join('/', parts);
    }

    private static (int Count, Unit Unit)? Below(string part)
    {
        string bare = part.TrimStart([.. "0123456789"]).TrimStart(' ', '-');
        string number = part[..part.TakeWhile(char.IsAsciiDigit).Count()];
        int count = 1;
        bool good =
            number.Length == 0
            || (int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out count) && count > 0);
        return good && s_units.TryGetValue(bare, out Unit? unit) ? (count, unit) : null;
    }

    private static IEnumerable<KeyValuePair<string, Unit>> Spellings()
    {
        foreach (Entry entry in s_entries)
        {
            var unit = new Unit(entry.Symbol, entry.Dimension, entry.Factor);
            foreach (string spelling in entry.AlsoTyped.Prepend(entry.Symbol))
                yield return KeyValuePair.Create(spelling, unit);
        }
    }

    private sealed record Entry(string Symbol, Dimension Dimension, decimal Factor, params string[] AlsoTyped);
}
