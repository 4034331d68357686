using System.Globalization;
using CsCheck;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Tests.Units;

/// <summary>A quantity as a document holds it: written in a sentence, or as a part of its own.</summary>
/// <param name="Numbers">One number, or the two ends of a range, as written.</param>
/// <param name="Unit">The unit as written.</param>
/// <param name="IsPart">Whether it is a part of its own.</param>
internal sealed record DrawnQuantity(string[] Numbers, string Unit, bool IsPart)
{
    // The size of each unit by the exact definitions of NIST SP 811, Appendix B: the inch is 25.4 mm, the pound
    // 0.45359237 kg, the US gallon 3.785411784 L, the acre (international foot) 4046.8564224 m2.
    private static readonly Dictionary<string, (bool IsMetric, string Kind, double Size)> s_sizes = new()
    {
        ["mm"] = (true, "length", 0.001),
        ["cm"] = (true, "length", 0.01),
        ["m"] = (true, "length", 1),
        ["km"] = (true, "length", 1000),
        ["in"] = (false, "length", 0.0254),
        ["ft"] = (false, "length", 0.3048),
        ["mi"] = (false, "length", 1609.344),
        ["m²"] = (true, "area", 1),
        ["ft²"] = (false, "area", 0.09290304),
        ["acre"] = (false, "area", 4046.8564224),
        ["ha"] = (true, "area", 10000),
        ["kg"] = (true, "weight", 1),
        ["lb"] = (false, "weight", 0.45359237),
        ["L"] = (true, "volume", 1),
        ["gal"] = (false, "volume", 3.785411784),
        ["kg/ha"] = (true, "rate", 1 / 10000.0),
        ["lb/acre"] = (false, "rate", 0.45359237 / 4046.8564224),
        ["L/ha"] = (true, "spray", 1 / 10000.0),
        ["gal/acre"] = (false, "spray", 3.785411784 / 4046.8564224),
        ["km/h"] = (true, "speed", 1 / 3.6),
        ["mph"] = (false, "speed", 1609.344 / 3600),
    };

    private static readonly string[] s_inText =
    [
        "mm",
        "cm",
        "m",
        "km",
        "ft",
        "m²",
        "ft²",
        "kg/ha",
        "lb/acre",
        "km/h",
        "mph",
    ];

    private static readonly string[] s_asPart =
    [
        "cm",
        "m",
        "ft",
        "in",
        "acre",
        "ha",
        "kg",
        "lb",
        "L",
        "gal",
        "kg/ha",
        "lb/acre",
        "L/ha",
        "gal/acre",
    ];

    private static readonly Gen<string> s_number = Gen.Select(Gen.Int[1, 9999], Gen.Int[0, 3])
        .Select((digits, places) => (digits / (decimal)Math.Pow(10, places)).ToString(CultureInfo.InvariantCulture));

    /// <summary>One drawn at random.</summary>
    public static Gen<DrawnQuantity> Any { get; } =
        Gen.OneOf(
            Gen.Select(s_number.Array[1, 2], Gen.Int[0, s_inText.Length - 1])
                .Select((numbers, at) => new DrawnQuantity(numbers, s_inText[at], false)),
            Gen.Select(s_number, Gen.Int[0, s_asPart.Length - 1])
                .Select((number, at) => new DrawnQuantity([number], s_asPart[at], true))
        );

    /// <summary>Whether its unit is metric.</summary>
    public bool IsMetric => s_sizes[Unit].IsMetric;

    /// <summary>The line that holds it, between words that hold none.</summary>
    public Line Line =>
        IsPart
            ? Line.Of($"with {new Measured([Quantity.Of(Value(0), Unit)], 4)} of it")
            : Line.FromString($"with {string.Join(" to ", Numbers)} {Unit} of it");

    /// <summary>Whether it is told by these numbers and unit, in a system, no more exactly than it is known.</summary>
    public bool IsToldBy(string[] numbers, string unit, bool metric)
    {
        if (!s_sizes.TryGetValue(unit, out var told) || told.Kind != s_sizes[Unit].Kind || told.IsMetric != metric)
            return false;
        return numbers.Length == Numbers.Length
            && numbers.Select((number, at) => IsNear(number, at, unit)).All(isNear => isNear);
    }

    private bool IsNear(string number, int at, string unit)
    {
        double wanted = (double)Value(at) * s_sizes[Unit].Size / s_sizes[unit].Size;
        double found = double.Parse(number, NumberStyles.Number, CultureInfo.InvariantCulture);
        if (unit == Unit && !IsPart)
            return Math.Abs(found - wanted) < 1e-9 * wanted;

        // As exact as the figure written, no more: half a step of its last digit, a fiftieth for what is measured with
        // a rule, never more than a twentieth; a part of its own has four figures.
        double half = 0.5 * Math.Pow(10, -Places(Numbers[at])) * s_sizes[Unit].Size / s_sizes[unit].Size;
        double within = IsPart
            ? wanted < 1000
                ? 0.0005 * wanted
                : 0.5
            : Math.Max(Math.Min(half, 0.05 * wanted), s_sizes[Unit].Kind == "rate" ? 0 : 0.02 * wanted);
        int digits = number.Where(char.IsAsciiDigit).SkipWhile(digit => digit == '0').Count();
        int written = Numbers[at].Where(char.IsAsciiDigit).SkipWhile(digit => digit == '0').Count();
        bool isNoMoreExact = IsPart || found >= 1000 || digits <= Math.Max(3, written + 1);
        return isNoMoreExact && Math.Abs(found - wanted) <= within * 1.0001;
    }

    private static int Places(string number) => number.Split('.') is [_, var behind] ? behind.Length : 0;

    private decimal Value(int at) => decimal.Parse(Numbers[at], CultureInfo.InvariantCulture);
}
