using System.Globalization;
using WeedAdvisor.Inference.Areas;

namespace WeedAdvisor.Reports.Text;

/// <summary>The weeds that are taken to come although nobody told them.</summary>
public static class ComingWords
{
    /// <summary>
    /// The line that names them as what they are, with their months; null when none is taken for usual.
    /// </summary>
    /// <param name="coming">The weeds to come.</param>
    /// <param name="nameOf">The name of a weed.</param>
    public static string? Of(ComingWeeds coming, Func<string, string> nameOf)
    {
        if (coming.From != Origin.Assumed || coming.Weeds.IsEmpty)
            return null;
        string next = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(coming.Day.AddMonths(1).Month);
        string[] groups =
        [
            .. Group(coming, weed => weed is { BlowsIn: false, EmergesNow: true }, "from now on"),
            .. Group(coming, weed => weed is { BlowsIn: false, EmergesNow: false }, $"from {next}"),
            .. Group(coming, weed => weed.BlowsIn, "blown in from round about"),
        ];
        return $"Expected here, not seen: {string.Join("; ", groups)}.";

        IEnumerable<string> Group(ComingWeeds all, Func<ComingWeed, bool> isOf, string when)
        {
            string[] names = [.. all.Weeds.Where(isOf).Select(weed => nameOf(weed.Weed))];
            return names.Length == 0 ? [] : [$"{Listing.And(names)} ({when})"];
        }
    }
}
