using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>
/// Makes the kinds of fields that many forms share, with the bounds beyond which an entry is not believed.
/// </summary>
internal static class Field
{
    /// <summary>A measure in units of the table, the usual one first.</summary>
    public static RateFieldKind.Measure Measure(params string[] units) => new([.. units.Select(UnitTable.Of)]);

    /// <summary>A length along the ground.</summary>
    public static RateFieldKind.Measure Course() =>
        Measure("ft", "m", "yd") with
        {
            Least = Quantity.Of(1, "ft"),
            Most = Quantity.Of(2, "km"),
        };

    /// <summary>A width of spray, throw or bed.</summary>
    public static RateFieldKind.Measure Width() =>
        Measure("in", "ft", "cm", "m") with
        {
            Least = Quantity.Of(1, "in"),
            Most = Quantity.Of(100, "ft"),
        };

    /// <summary>A time taken with a watch.</summary>
    public static RateFieldKind.Measure Time() =>
        Measure("s", "min") with
        {
            Least = Quantity.Of(1, "s"),
            Most = Quantity.Of(2, "h"),
            IsList = true,
        };

    /// <summary>An area of ground.</summary>
    public static RateFieldKind.Measure Ground() =>
        Measure("ft2", "acre", "m2", "ha") with
        {
            Least = Quantity.Of(1, "in2"),
            Most = Quantity.Of(1000, "ha"),
        };

    /// <summary>A volume caught or poured.</summary>
    public static RateFieldKind.Measure Liquid() =>
        Measure("fl-oz", "gal", "mL", "L") with
        {
            Least = Quantity.Of(0.01m, "mL"),
            Most = Quantity.Of(20000, "gal"),
        };

    /// <summary>A weight on a scale.</summary>
    public static RateFieldKind.Measure Weight() =>
        Measure("oz", "lb", "g", "kg") with
        {
            Least = Quantity.Of(1, "mg"),
            Most = Quantity.Of(100, "ton"),
        };

    /// <summary>One of a few words, the usual one first.</summary>
    public static RateFieldKind.Choice Choice(params (string Word, string Text)[] words) =>
        new([.. words.Select(word => KeyValuePair.Create(word.Word, word.Text))]);

    /// <summary>An example: field ids and what is typed.</summary>
    public static ImmutableArray<KeyValuePair<string, string>> Example(params (string Field, string Typed)[] entries) =>
        [.. entries.Select(entry => KeyValuePair.Create(entry.Field, entry.Typed))];
}
