using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>
/// Reads numbers with units as a person types them: <c>18.5 ft</c>, <c>40fl-oz</c>, <c>1/2 pt</c>, <c>2 1/2 gal</c>.
/// </summary>
public static partial class QuantityReader
{
    // Larger numbers than any nursery needs; the bounds keep every product of a few of them within a decimal.
    private const decimal Largest = 1_000_000_000m;
    private const int MostPlaces = 9;
    private const int MostListed = 200;
    private const int LongestText = 4000;

    /// <summary>Reads one quantity.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fallback">The unit to take when none is written; null when one must be written.</param>
    /// <param name="expected">Examples of units to name in a complaint, such as <c>ft, in, m</c>.</param>
    /// <returns>The quantity, or what is wrong with the text.</returns>
    public static (Quantity? Value, string? Problem) Read(string text, Unit? fallback, string expected)
    {
        if (text.Length > LongestText)
            return (null, "too long for a number");
        Match match = NumberAndUnit().Match(Tidied(text));
        if (!match.Success)
            return (null, NotANumber(text, expected));
        (decimal? number, string? problem) = Number(match);
        if (number is not { } value)
            return (null, problem);
        string symbol = match.Groups["unit"].Value;
        if (symbol.Length == 0)
        {
            return fallback is null
                ? (null, $"{match.Value.Trim()} has no unit; write one, such as {expected}")
                : (new Quantity(value, fallback), null);
        }

        return UnitTable.Find(symbol) is { } unit
            ? (new Quantity(value, unit), null)
            : (null, $"no unit '{symbol}'{Hint(symbol)}; use one such as {expected}");
    }

    /// <summary>
    /// Reads several quantities, set apart by commas or semicolons. A unit may be written once, at the last, for all
    /// that have none.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="fallback">The unit to take when none is written at all; null when one must be written.</param>
    /// <param name="expected">Examples of units to name in a complaint.</param>
    /// <returns>The quantities, at least one; or what is wrong with the text.</returns>
    public static (ImmutableArray<Quantity> Values, string? Problem) ReadList(
        string text,
        Unit? fallback,
        string expected
    )
    {
        if (text.Length > LongestText)
            return ([], "too long for a list of numbers");
        string[] parts = text.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is 0 or > MostListed)
            return ([], FormattableString.Invariant($"write 1 to {MostListed} numbers, set apart by commas"));
        (Quantity? last, string? problem) = Read(parts[^1], fallback, expected);
        if (last is not { } end)
            return ([], problem);
        ImmutableArray<Quantity>.Builder values = ImmutableArray.CreateBuilder<Quantity>(parts.Length);
        foreach (string part in parts)
        {
            (Quantity? value, problem) = Read(part, end.Unit, expected);
            if (value is not { } good)
                return ([], problem);
            values.Add(good);
        }

        return (values.ToImmutable(), null);
    }

    // "fl oz", "sq ft" and "lb per acre" are how people write them.
    private static string Tidied(string text) => PerWord().Replace(TwoWords().Replace(text.Trim(), "$1-"), "/");

    private static string NotANumber(string text, string expected)
    {
        string shown = text.Trim();
        string hint = shown.Contains(',', StringComparison.Ordinal) ? " (decimals take a point, not a comma)" : "";
        string example = expected.Length == 0 ? "" : $" with a unit such as {expected}";
        return shown.Length == 0
            ? $"nothing was written; write a number{example}"
            : $"'{shown}' is not a number{example}{hint}";
    }

    private static (decimal? Value, string? Problem) Number(Match match)
    {
        decimal whole = 0;
        string plain = match.Groups["plain"].Value;
        if (plain.Length > 0)
        {
            int point = plain.IndexOf('.', StringComparison.Ordinal);
            if (point >= 0 && plain.Length - point - 1 > MostPlaces)
                return (null, FormattableString.Invariant($"{plain} has more than {MostPlaces} decimals"));
            if (!decimal.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out whole))
                return (null, $"{plain} is too large");
        }

        if (match.Groups["above"].Success)
        {
            decimal below = decimal.Parse(match.Groups["below"].Value, NumberStyles.None, CultureInfo.InvariantCulture);
            if (below == 0)
                return (null, $"{match.Value.Trim()} divides by zero");
            whole +=
                decimal.Parse(match.Groups["above"].Value, NumberStyles.None, CultureInfo.InvariantCulture) / below;
        }

        if (whole > Largest)
            return (null, $"{match.Value.Trim()} is too large");
        return (match.Groups["minus"].Success ? -whole : whole, null);
    }

    private static string Hint(string symbol) =>
        UnitTable.Nearest(symbol) is { } near ? $"; did you mean '{near}'?" : "";

    [GeneratedRegex(
        @"^(?<minus>-)?\s*(?:(?<plain>\d+(?:\.\d+)?|\.\d+)(?:\s+(?<above>\d{1,6})/(?<below>\d{1,6}))?|(?<above>\d{1,6})/(?<below>\d{1,6}))\s*(?<unit>[^\d\s,;.][^\s,;]*)?$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"\b(fl|sq|cu)\.?\s+(?=[a-z])", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TwoWords();

    [GeneratedRegex(@"\s*(?:\bper\b|/)\s*", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex PerWord();
}
