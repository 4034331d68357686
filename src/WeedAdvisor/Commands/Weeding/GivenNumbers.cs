using System.Globalization;

namespace WeedAdvisor.Commands.Weeding;

/// <summary>Numbers given on the command line, the same in every culture; null when none is given.</summary>
internal static class GivenNumbers
{
    private const NumberStyles Style = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>A number between the limits.</summary>
    public static double? Number(string option, string? given, double low, double high)
    {
        if (given is null)
            return null;
        return double.TryParse(given, Style, CultureInfo.InvariantCulture, out double number) && number >= low && number <= high
            ? number
            : throw Refused(option, "a number", given, low, high);
    }

    /// <summary>A whole number between the limits.</summary>
    public static int? Whole(string option, string? given, int low, int high)
    {
        if (given is null)
            return null;
        return int.TryParse(given, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number)
            && number >= low && number <= high
            ? number
            : throw Refused(option, "a whole number", given, low, high);
    }

    /// <summary>Whole numbers between the limits, with commas between them.</summary>
    public static int[]? List(string option, string? given, int low, int high) =>
        given?.Split(',', StringSplitOptions.TrimEntries).Select(one => Whole(option, one, low, high)!.Value).ToArray();

    private static RefusalException Refused(string option, string what, string given, double low, double high) => new(
        ExitCode.Usage,
        string.Create(CultureInfo.InvariantCulture, $"{option} takes {what} from {low} to {high}, not '{given}'. See --help."));
}
