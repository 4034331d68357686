using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Tests.Rates.Trade;

/// <summary>
/// Every unit against its definition, typed here from NIST Handbook 44 Appendix C (US measures) and NIST SP 811
/// (factors, SI prefixes), not taken from the table under test.
/// </summary>
public sealed class UnitFactorTests
{
    // Symbol, base units (m, m², m³, kg, s, Pa), where the number is defined.
    public static TheoryData<string, decimal, string> Exact =>
        new()
        {
            { "mm", 0.001m, "SI" },
            { "cm", 0.01m, "SI" },
            { "m", 1m, "SI" },
            { "km", 1000m, "SI" },
            { "in", 0.0254m, "HB 44: 25.4 mm" },
            { "ft", 0.3048m, "HB 44" },
            { "yd", 0.9144m, "HB 44" },
            { "mi", 1609.344m, "HB 44: 5280 ft" },
            { "cm2", 0.0001m, "SI" },
            { "m2", 1m, "SI" },
            { "ha", 10000m, "SP 811" },
            { "in2", 0.00064516m, "SP 811: 6.4516 cm²" },
            { "ft2", 0.09290304m, "SP 811" },
            { "yd2", 0.83612736m, "SP 811" },
            { "sq-rod", 25.29285264m, "HB 44: 272.25 ft²" },
            { "acre", 4046.8564224m, "HB 44: 43 560 ft², international foot" },
            { "mL", 0.000001m, "SI" },
            { "L", 0.001m, "SI" },
            { "m3", 1m, "SI" },
            { "tsp", 0.00000492892159375m, "HB 44: 1/6 fl oz" },
            { "tbsp", 0.00001478676478125m, "HB 44: 1/2 fl oz" },
            { "fl-oz", 0.0000295735295625m, "HB 44: 1/128 gal" },
            { "cup", 0.0002365882365m, "HB 44: 8 fl oz" },
            { "pt", 0.000473176473m, "HB 44" },
            { "qt", 0.000946352946m, "HB 44" },
            { "gal", 0.003785411784m, "HB 44: 231 in³" },
            { "in3", 0.000016387064m, "SP 811" },
            { "ft3", 0.028316846592m, "SP 811" },
            { "yd3", 0.764554857984m, "SP 811: 27 ft³" },
            { "acre-ft", 1233.48183754752m, "HB 44: 43 560 ft³" },
            { "mg", 0.000001m, "SI" },
            { "g", 0.001m, "SI" },
            { "kg", 1m, "SI" },
            { "lb", 0.45359237m, "HB 44; all digits from memory" },
            { "oz", 0.028349523125m, "HB 44: 1/16 lb" },
            { "ton", 907.18474m, "HB 44: 2000 lb" },
            { "s", 1m, "SI" },
            { "min", 60m, "SP 811" },
            { "h", 3600m, "SP 811" },
            { "mph", 0.44704m, "SP 811" },
            { "Pa", 1m, "SI" },
            { "kPa", 1000m, "SI" },
            { "bar", 100000m, "SP 811; from memory" },
            { "pot", 1m, "a count" },
            { "%", 0.01m, "a share" },
            { "ppm", 0.001m, "1 mg in a litre" },
        };

    // From, to, how many, and half of the last digit printed.
    public static TheoryData<string, string, decimal, decimal> Rounded =>
        new()
        {
            { "psi", "Pa", 6894.757293168m, 0.0000005m }, // SP 811, to all digits from memory
            { "bar", "psi", 14.50377m, 0.000005m }, // from memory
            { "gpm", "L/min", 3.785411784m, 0.0000000001m }, // HB 44: 231 in³
            { "mph", "ft/min", 88m, 0m }, // conv-1728
            { "mph", "km/h", 1.609344m, 0m }, // conv-1728
            { "lb/acre", "kg/ha", 1.120851m, 0.0000005m },
            { "lb/acre", "g/m2", 0.1120851m, 0.00000005m },
            { "lb/1000ft2", "g/m2", 4.882428m, 0.0000005m },
            { "oz/1000ft2", "g/m2", 0.3051517m, 0.00000005m },
            { "gal/acre", "L/ha", 9.353956m, 0.0000005m },
            { "fl-oz/acre", "mL/ha", 73.07778m, 0.000005m },
            { "lb/gal", "g/L", 119.8264m, 0.00005m },
            { "acre", "ha", 0.40468564224m, 0m },
            { "ha", "acre", 2.471054m, 0.0000005m },
            { "acre", "ft2", 43560m, 0m }, // pnw-units, lsu-128
            { "acre", "sq-rod", 160m, 0m }, // pnw-units
            { "gal/acre", "L/ha", 9.35m, 0.005m }, // ksu-conv
            { "lb/acre", "kg/ha", 1.12m, 0.005m }, // ksu-conv
            { "lb", "g", 454m, 0.5m }, // pnw-units, va-dwr
            { "kg", "lb", 2.2m, 0.05m }, // pnw-units
            { "ha", "acre", 2.471m, 0.0005m }, // va-dwr
            { "tsp", "mL", 5m, 0.5m }, // pnw-units
            { "tbsp", "mL", 15m, 0.5m }, // pnw-units
            { "fl-oz", "tbsp", 2m, 0m }, // pnw-units, larimer
            { "cup", "tbsp", 16m, 0m }, // pnw-units
            { "cup", "fl-oz", 8m, 0m }, // pnw-units
            { "gal", "fl-oz", 128m, 0m }, // pnw-units
            { "gal", "mL", 3785m, 0.5m }, // pnw-units
        };

    // lb/acre and the same in lb/1000 ft², oz/1000 ft², g/m², g/ft²; each to its last digit printed.
    public static TheoryData<decimal, decimal, decimal, decimal, decimal> Granules =>
        new()
        {
            { 100, 2.2957m, 36.73m, 11.2085m, 1.0413m },
            { 150, 3.4435m, 55.1m, 16.8128m, 1.562m },
            { 200, 4.5914m, 73.46m, 22.417m, 2.0826m },
        };

    [Theory]
    [MemberData(nameof(Exact))]
    public void A_unit_is_exactly_its_definition(string symbol, decimal factor, string definition)
    {
        Assert.True(
            UnitTable.Of(symbol).Factor == factor,
            $"{symbol} is {UnitTable.Of(symbol).Factor}, by definition {factor} ({definition})"
        );
    }

    [Fact]
    public void Every_unit_of_the_table_is_held_against_something()
    {
        IEnumerable<string> held = Exact.Select(row => row.Data.Item1).Concat(Rounded.Select(row => row.Data.Item1));
        Assert.Empty(UnitTable.Symbols.Except(held));
    }

    [Theory]
    [MemberData(nameof(Rounded))]
    public void One_unit_in_another_is_the_published_factor(
        string from,
        string to,
        decimal factor,
        decimal tolerance
    ) => Assert.InRange(Quantity.Of(1, from).In(to), factor - tolerance - Sums.Dust, factor + tolerance + Sums.Dust);

    [Theory]
    [MemberData(nameof(Granules))]
    public void Rates_of_granules_agree_with_the_table_in_all_its_units(
        decimal pounds,
        decimal perThousand,
        decimal ounces,
        decimal grams,
        decimal perFoot
    )
    {
        Quantity rate = Quantity.Of(pounds, "lb/acre");
        Assert.InRange(rate.In("lb/1000ft2"), perThousand - 0.00005m, perThousand + 0.00005m);
        Assert.InRange(rate.In("oz/1000ft2"), ounces - 0.005m, ounces + 0.005m);
        Assert.InRange(rate.In("g/m2"), grams - 0.00005m, grams + 0.00005m);
        Assert.InRange(rate.In("g/ft2"), perFoot - 0.00005m, perFoot + 0.00005m);
    }

    [Fact]
    public void The_constants_of_the_field_formulas_follow_from_the_units()
    {
        // 43 560 ft² × 12 in ÷ 88 ft a minute; 5940 ÷ 12; mu-g1270a, mesa-boom.
        Quantity one = Quantity.Of(1, "gpm") / (Quantity.Of(1, "mph") * Quantity.Of(1, "in"));
        Assert.Equal(5940m, one.In("gal/acre"), 15);
        Quantity foot = Quantity.Of(1, "gpm") / (Quantity.Of(1, "mph") * Quantity.Of(1, "ft"));
        Assert.Equal(495m, foot.In("gal/acre"), 15);
        // From memory, exact by units: 1 km/h on a metre is 0.1 ha an hour.
        Quantity metric = Quantity.Of(1, "L/min") / (Quantity.Of(1, "km/h") * Quantity.Of(1, "m"));
        Assert.Equal(600m, metric.In("L/ha"), 15);
    }
}
