using System.Globalization;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>How ids, numbers and dates are written. One grammar, in every culture.</summary>
internal static class ScalarGrammar
{
    private const int MostDigits = 28;

    /// <summary>Whether the text is an id: lower-case words of letters and digits, joined by single hyphens.</summary>
    public static bool IsId(string text)
    {
        if (text.Length == 0)
            return false;
        char before = '-';
        foreach (char c in text)
        {
            if (!char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && (c != '-' || before == '-'))
                return false;
            before = c;
        }

        return before != '-';
    }

    /// <summary>Reads a number: digits, perhaps with a minus sign before and one point between them.</summary>
    public static bool TryNumber(string text, out decimal number)
    {
        number = 0;
        int at = text.StartsWith('-') ? 1 : 0;
        int whole = Digits(text, ref at);
        int fraction = 0;
        if (at < text.Length && text[at] == '.')
        {
            at++;
            fraction = Digits(text, ref at);
            if (fraction == 0)
                return false;
        }

        return whole > 0
            && at == text.Length
            && whole + fraction <= MostDigits
            && decimal.TryParse(
                text,
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out number
            );
    }

    /// <summary>A number as it is written in a file.</summary>
    public static string Write(decimal number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>What a number between two limits is called in a problem.</summary>
    public static string Between(decimal low, decimal high) => $"a number from {Write(low)} to {Write(high)}";

    /// <summary>Reads a date, <c>YYYY-MM-DD</c>.</summary>
    public static bool TryDate(string text, out DateOnly date) => CalendarDay.TryRead(text, out date);

    /// <summary>A date as it is written in a file.</summary>
    public static string Write(DateOnly date) => CalendarDay.Text(date);

    /// <summary>Reads an hour of the day, <c>HH:MM</c>, 00:00 to 23:59.</summary>
    public static bool TryTime(string text, out TimeOnly time) =>
        TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out time);

    /// <summary>An hour as it is written in a file.</summary>
    public static string Write(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Whether the text is a day of any year, <c>MM-DD</c>.</summary>
    // Any leap year would do; it lets 29 February pass.
    public static bool IsDayOfYear(string text) => TryDate("2024-" + text, out _);

    private static int Digits(string text, ref int at)
    {
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at - start;
    }
}
