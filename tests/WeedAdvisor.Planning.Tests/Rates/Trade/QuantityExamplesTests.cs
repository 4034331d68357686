using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Tests.Rates.Trade;

/// <summary>Printed examples that are one multiplication or division of quantities with units.</summary>
public sealed class QuantityExamplesTests
{
    // Id, source, first, operation, second, unit, printed, tolerance (what the source rounded).
    public static TheoryData<string, string, string, char, string, string, decimal, decimal> Examples =>
        new()
        {
            { "s04", "handgun-128-slides", "1 qt/acre", '/', "40 gal/acre", "fl-oz/gal", 0.8m, 0m },
            // The source takes 30 mL for a fluid ounce.
            { "s05", "handgun-128-slides", "0.8 fl-oz/gal", '*', "1 gal", "mL", 24m, 0.35m },
            // 1.6, rounded up to whole spoons.
            { "s06", "handgun-128-slides", "0.8 fl-oz/gal", '*', "1 gal", "tbsp", 2m, 0.4m },
            // Cut off from 1.0667.
            { "s11", "ncsu-backpack", "8 fl-oz/acre", '/', "7.5 gal/acre", "fl-oz/gal", 1.06m, 0.01m },
            { "s12", "ncsu-backpack", "1.06 fl-oz/gal", '*', "3 gal", "fl-oz", 3.2m, 0.05m },
            { "s13", "ncsu-backpack", "3.2 fl-oz/gal", '*', "1 gal", "mL", 96m, 1.4m }, // 30 mL for a fluid ounce
            { "s14", "mesa-handgun", "25 gal", '/', "150 gal/acre", "acre", 0.1666667m, 0.0000001m },
            { "s16", "list-handheld", "3 pt/acre", '/', "65 gal/acre", "pt/gal", 0.046m, 0.0005m },
            { "s16", "list-handheld", "3 pt/acre", '/', "65 gal/acre", "fl-oz/gal", 0.74m, 0.005m },
            { "s16", "list-handheld", "3 pt/acre", '/', "65 gal/acre", "tbsp/gal", 1.5m, 0.05m },
            { "s17", "uga-handheld", "0.5 gal/acre", '/', "25 gal/acre", "%", 2m, 0m },
            { "s17", "uga-handheld", "4 pt/acre", '/', "25 gal/acre", "%", 2m, 0m },
            { "s18", "uga-handheld", "2 %", '*', "2 gal", "fl-oz", 5.1m, 0.05m },
            { "s24", "handbook-safety", "15 gal/acre", '*', "3.5 acre", "gal", 52.5m, 0m },
            { "s24", "handbook-safety", "3 lb/acre", '*', "3.5 acre", "lb", 10.5m, 0m },
            { "s28", "knapsack-training", "33.3 m", '*', "0.75 m", "m2", 25m, 0.05m },
            { "s31", "cocoa-knapsack", "15 L", '/', "5 L", "", 3m, 0m },
            { "g05", "lsu-rotary", "10 ft", '*', "100 ft", "ft2", 1000m, 0m },
            { "g06", "lsu-rotary", "1 lb/1000ft2", '/', "20 %", "lb/1000ft2", 5m, 0m },
            { "g09", "pnw-field-pre", "4 lb/acre", '/', "4 %", "lb/acre", 100m, 0m },
            { "g09", "pnw-field-pre", "8 lb/acre", '/', "4 %", "lb/acre", 200m, 0m },
            { "g10", "pnw-container-area", "10 lb/acre", '/', "4 %", "lb/acre", 250m, 0m },
        };

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_example_comes_out_as_printed(
        string id,
        string source,
        string first,
        char operation,
        string second,
        string unit,
        decimal printed,
        decimal tolerance
    )
    {
        Quantity left = Read(first),
            right = Read(second);
        Quantity sum = operation == '*' ? left * right : left / right;
        decimal found = unit.Length == 0 ? sum.Value : sum.In(unit);
        Assert.True(
            Math.Abs(found - printed) <= tolerance + Sums.Dust,
            $"{id} of {source}: {found} {unit}, printed {printed}"
        );
    }

    private static Quantity Read(string text)
    {
        (Quantity? value, string? problem) = QuantityReader.Read(text, null, "");
        return value ?? throw new InvalidOperationException(problem);
    }
}
