using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Commands;

/// <summary>
/// Options that take a number between two limits, a list of them, or a day. The limits stand in the help, and what is
/// refused is refused in the same words everywhere: before anything is read or worked out.
/// </summary>
internal static class NumberOptions
{
    private const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    /// <summary>A number; null when it is not given.</summary>
    /// <param name="name">The option's name.</param>
    /// <param name="unit">What the number counts, in capitals.</param>
    /// <param name="description">What it is for: one sentence, to which the limits are added.</param>
    /// <param name="low">The least.</param>
    /// <param name="high">The greatest.</param>
    /// <param name="expected">What is expected, in words; null for a number from the least to the greatest.</param>
    public static Option<decimal?> Number(
        string name,
        string unit,
        string description,
        decimal low,
        decimal high,
        string? expected = null
    ) =>
        Given(
            name,
            unit,
            Limited(description, low, high),
            text => NumberIn(text, low, high, isWhole: false),
            expected ?? Between("a number", low, high)
        );

    /// <summary>A whole number; null when it is not given.</summary>
    public static Option<int?> Whole(string name, string unit, string description, int low, int high) =>
        Given(
            name,
            unit,
            Limited(description, low, high),
            text => (int?)NumberIn(text, low, high, isWhole: true),
            Between("a whole number", low, high)
        );

    /// <summary>A whole number with a usual value.</summary>
    public static Option<int> Whole(
        string name,
        string unit,
        string description,
        int low,
        int high,
        int usual,
        string? expected = null
    )
    {
        string takes = expected ?? Between("a whole number", low, high);
        return new Option<int>(name)
        {
            Description = Limited(description, low, high),
            HelpName = unit,
            DefaultValueFactory = _ => usual,
            CustomParser = result =>
                NumberIn(Text(result), low, high, isWhole: true) is { } number
                    ? (int)number
                    : Refuse(result, name, takes, Text(result)),
        };
    }

    /// <summary>Whole numbers with commas between them; none when it is not given.</summary>
    public static Option<int[]> Several(string name, string unit, string description, int low, int high) =>
        new(name)
        {
            Description = Limited(description, low, high),
            HelpName = unit,
            CustomParser = result =>
            {
                var numbers = new List<int>();
                foreach (string text in Text(result).Split(',', StringSplitOptions.TrimEntries))
                {
                    numbers.Add(
                        NumberIn(text, low, high, isWhole: true) is { } number
                            ? (int)number
                            : Refuse(result, name, Between("a whole number", low, high), text)
                    );
                }

                return [.. numbers];
            },
        };

    /// <summary>A day; null when it is not given.</summary>
    public static Option<DateOnly?> Day(string name, string description) =>
        Given<DateOnly>(name, "DATE", description, text => DayIn(text), "a date such as 2026-04-14");

    /// <summary>Anything that is read from one word; null when it is not given.</summary>
    /// <param name="name">The option's name.</param>
    /// <param name="unit">What stands for the word in the help.</param>
    /// <param name="description">What it is for.</param>
    /// <param name="read">Reads the word; null when it is none.</param>
    /// <param name="expected">What is expected, in words.</param>
    public static Option<T?> Given<T>(
        string name,
        string unit,
        string description,
        Func<string, T?> read,
        string expected
    )
        where T : struct =>
        new(name)
        {
            Description = description,
            HelpName = unit,
            CustomParser = result => read(Text(result)) ?? Refuse<T?>(result, name, expected, Text(result), null),
        };

    /// <summary>
    /// A number from text, the same in every culture; null when it is none, or not between the limits.
    /// </summary>
    public static decimal? NumberIn(string text, decimal low, decimal high, bool isWhole) =>
        decimal.TryParse(text, Style, CultureInfo.InvariantCulture, out decimal number)
        && number >= low
        && number <= high
        && (!isWhole || number == decimal.Truncate(number))
            ? number
            : null;

    private static DateOnly? DayIn(string text) => CalendarDay.TryRead(text, out DateOnly day) ? day : null;

    private static string Text(ArgumentResult result) => result.Tokens is [var token, ..] ? token.Value : "";

    private static int Refuse(ArgumentResult result, string name, string expected, string text) =>
        Refuse(result, name, expected, text, 0);

    private static T Refuse<T>(ArgumentResult result, string name, string expected, string text, T instead)
    {
        result.AddError($"{name} takes {expected}, not '{text}'");
        return instead;
    }

    private static string Between(string kind, decimal low, decimal high) =>
        FormattableString.Invariant($"{kind} from {low} to {high}");

    // "Pots in each area." becomes "Pots in each area, 1 to 100000000."
    private static string Limited(string description, decimal low, decimal high) =>
        FormattableString.Invariant($"{description.TrimEnd('.')}, {low} to {high}.");
}
