using System.Globalization;
using System.Text.RegularExpressions;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Reports.Units;

/// <summary>
/// The quantities that rules write into their sentences, as docs/writing-rules.md has it: a number or two and a unit of
/// a closed list (<c>2.5 to 5 cm</c>), where wished with the same in the other system behind it (<c>5 cm (2 in)</c>).
/// Words for numbers, and units that are a part of a compound (<c>kg active a hectare</c>), stay as they are.
/// </summary>
internal static partial class QuantityInText
{
    // Nobody lays a mulch to a fiftieth; no figure is further off than a twentieth.
    private const decimal Near = 0.02m,
        Far = 0.05m;
    private const int MostDigits = 15;
    private static readonly CultureInfo s_plain = CultureInfo.InvariantCulture;
    private const string Celsius = "C",
        Fahrenheit = "F",
        Inch = "in";

    /// <summary>The text with its quantities in other units.</summary>
    /// <param name="text">The text.</param>
    /// <param name="units">The units wanted.</param>
    /// <param name="names">Names that somebody gave and that stay as they are.</param>
    public static string In(string text, UnitsWanted units, IReadOnlyCollection<string> names)
    {
        if (!text.Any(char.IsAsciiDigit))
            return text;
        (int From, int To)[] kept = [.. names.SelectMany(name => PlacesOf(name, text))];
        return Quantity()
            .Replace(text, match =>
                kept.Any(one => match.Index < one.To && match.Index + match.Length > one.From)
                    ? match.Value
                    : Turned(match, units, text)
            );
    }

    private static IEnumerable<(int From, int To)> PlacesOf(string name, string text)
    {
        for (
            int at = text.IndexOf(name, StringComparison.Ordinal);
            at >= 0;
            at = text.IndexOf(name, at + 1, StringComparison.Ordinal)
        )
            yield return (at, at + name.Length);
    }

    private static string Turned(Match match, UnitsWanted units, string text)
    {
        string own = match.Groups["own"].Value,
            unit = match.Groups["unit"].Value;
        bool isMetric = IsMetric(unit),
            isPair = match.Groups["other"].Success;
        if (isPair && IsMetric(match.Groups["otherunit"].Value) != isMetric)
            return units == UnitsWanted.Both ? match.Value
                : units == UnitsWanted.Metric == isMetric ? own
                : match.Groups["other"].Value;
        string behind = match.Value[own.Length..];
        if (unit == Inch || (units != UnitsWanted.Both && units == UnitsWanted.Metric == isMetric))
            return match.Value;
        string other = Other(match, unit);
        string before = text[..match.Index];
        bool isWithin = before.Count(letter => letter == '(') > before.Count(letter => letter == ')');
        return units != UnitsWanted.Both ? other + behind
            : isWithin ? $"{own}, {other}{behind}"
            : $"{own} ({other}){behind}";
    }

    private static string Other(Match match, string unit)
    {
        string[] numbers =
        [
            match.Groups["low"].Value,
            .. match.Groups["high"].Success ? [match.Groups["high"].Value] : (string[])[],
        ];
        (Func<decimal, decimal> turn, string to) = Way(unit);
        bool isRate = unit.Contains('/', StringComparison.Ordinal) || unit.Contains(" per ", StringComparison.Ordinal);
        string[] turned = unit is Celsius or Fahrenheit
            ? [.. numbers.Select(number => Places(turn(Number(number)), numbers.Max(PlacesOf)))]
            : [.. numbers.Select(number => Roundest(turn, number, isRate ? 0 : Near))];
        return $"{string.Join(match.Groups["between"].Value, turned)} {to}";
    }

    private static (Func<decimal, decimal> Turn, string To) Way(string unit)
    {
        if (unit == Celsius)
            return (value => (value * 9 / 5) + 32, Fahrenheit);
        if (unit == Fahrenheit)
            return (value => (value - 32) * 5 / 9, Celsius);
        Unit from = UnitTable.Of(Symbol(unit)),
            to = OtherUnits.Of(from)!;
        return (value => new Quantity(value, from).In(to), Written(to.Symbol, unit));
    }

    private static bool IsMetric(string unit) =>
        unit == Celsius || (unit != Fahrenheit && OtherUnits.FamilyOf(UnitTable.Of(Symbol(unit))) == UnitFamily.Metric);

    private static string Symbol(string written) =>
        written.Replace(" per ", "/", StringComparison.Ordinal).Replace('²', '2');

    // Squares and "per" are written as the text writes them.
    private static string Written(string symbol, string like)
    {
        string spelled = like.Contains('²', StringComparison.Ordinal) ? symbol.Replace('2', '²') : symbol;
        return like.Contains(" per ", StringComparison.Ordinal)
            ? spelled.Replace("/", " per ", StringComparison.Ordinal)
            : spelled;
    }

    private static decimal Number(string written) =>
        decimal.Parse(written, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, s_plain);

    private static int PlacesOf(string written) =>
        written.Contains('.', StringComparison.Ordinal)
            ? written.Length - written.IndexOf('.', StringComparison.Ordinal) - 1
            : 0;

    // The figure with the fewest digits that tells the same as the one written, within half a step of its last digit:
    // so it is never falsely exact. 1.3 cm are 0.5 in, 100 m² are 1,080 ft².
    private static string Roundest(Func<decimal, decimal> turn, string number, decimal near)
    {
        decimal value = turn(Number(number)),
            half = turn(0.5m / Power(PlacesOf(number)));
        decimal within = Math.Max(Math.Min(half, value * Far), value * near),
            rounded = value;
        for (int digits = 1; digits <= MostDigits; digits++)
        {
            rounded = Rounded(value, digits);
            if (Math.Abs(rounded - value) <= within)
                break;
        }

        return rounded.ToString("#,0.##########", s_plain);
    }

    // Digits before the point are rounded too.
    private static decimal Rounded(decimal value, int digits)
    {
        decimal step = 1;
        while (value / step >= Power(digits))
            step *= 10;
        return Figures.Rounded(value / step, digits) * step;
    }

    private static decimal Power(int exponent)
    {
        decimal power = 1;
        for (int i = 0; i < exponent; i++)
            power *= 10;
        return power;
    }

    private static string Places(decimal value, int places) =>
        Math.Round(value, places, MidpointRounding.AwayFromZero).ToString("0.####", s_plain);

    // Two quantities in one unit stand with "to", "or", "and" or a dash between them.
    [GeneratedRegex(
        @"(?<![\w.,/$-])(?<own>(?<low>\d[\d,]*(?:\.\d+)?)(?:(?<between> to | or | and |-)(?<high>\d[\d,]*(?:\.\d+)?))? "
            + @"(?<unit>kg/ha|lb/acre|g/m2|kg per hectare|lb per acre|mm|cm|m²|m2|ft²|ft2|km/h|km|mph|m|ft|in|C|F)"
            + @"(?![\w/²°]|-\w))"
            + @"(?: \((?<other>\d[\d,]*(?:\.\d+)?(?:(?: to | or | and |-)\d[\d,]*(?:\.\d+)?)? "
            + @"(?<otherunit>kg/ha|lb/acre|mm|cm|m|km/h|mph|ft|in|C|F))\))?",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Quantity();
}
