using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What let weeds through last time, why, and what that means for the next use.</summary>
internal static class LetThroughLine
{
    private const int DaysInWeek = 7;

    // Whoever has the bag still in the shed is told first.
    /// <summary>The line of the last use that let weeds through; none where none did.</summary>
    public static IEnumerable<Line> Of(PageStyle style, AreaAdvice area) =>
        (area.Area.Past ?? [])
            .Where(AreaChemicals.IsLetThrough)
            .OrderByDescending(past => past.Date)
            .Take(1)
            .Select(past =>
                Line.FromString(
                    $"{style.Names.Action(past.Treatment!)} let {WeedsOf(style, past)} through{WhyOf(style, past)}: not"
                        + " the same again, and not more of it. Take another group next, and weed first."
                ) with
                {
                    Tone = Tone.Warning,
                }
            );

    // What it is rated poor on, or has no figure for, and whether its time is over.
    private static string WhyOf(PageStyle style, PastApplication past)
    {
        if (style.Names.Treatment(past.Treatment!) is not { } treatment)
            return "";
        ILookup<string, string> grades = past.Escaped.ToLookup(
            weed => style.Names.GradeOn(treatment, weed) ?? "",
            style.Names.Weed,
            StringComparer.Ordinal
        );
        string[] poor = [.. grades["poor"].Concat(grades["none"])];
        string[] silent = [.. grades[""]];
        int? days = style.Day.DayNumber - past.Date?.DayNumber;
        string[] why =
        [
            .. poor.Length > 0 ? [$"it is rated poor on {Listing.And(poor)}"] : (string[])[],
            .. silent.Length > 0 ? [$"nothing is published on {Listing.And(silent)}"] : (string[])[],
            .. treatment.ResidualWeeks is { } weeks && days > weeks.Low * DaysInWeek
                ?
                [
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{days / DaysInWeek} weeks have gone by, and it lasts {Figures.Range(weeks)}"
                    ),
                ]
                : (string[])[],
        ];
        return why.Length == 0 ? "" : $" ({string.Join("; ", why)})";
    }

    private static string WeedsOf(PageStyle style, PastApplication past) =>
        past.Escaped.Count == 0 ? "weeds" : Listing.And([.. past.Escaped.Select(style.Names.Weed)]);
}
