using System.Collections.Immutable;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Finds the weeks in which a weed comes up and is not held.</summary>
internal static class EscapeSpans
{
    private const double Held = 0.5;

    /// <summary>Runs of such weeks, weed by weed; weeks in which the weed does not come up end a run.</summary>
    public static ImmutableArray<EscapeSpan> Of(SeasonCase season, SeasonPlan plan) =>
        [.. season.Weeds.SelectMany((weed, index) => Of(weed, plan.Control[index]))];

    private static IEnumerable<EscapeSpan> Of(WeedPressure weed, ImmutableArray<double> control)
    {
        int? from = null;
        for (int week = 0; week <= SeasonYear.Weeks; week++)
        {
            bool escapes = week < SeasonYear.Weeks && weed.Emergence[week] > 0 && control[week] < Held;
            if (escapes)
            {
                from ??= week;
            }
            else if (from is { } first)
            {
                yield return Span(weed, control, first, week - 1);
                from = null;
            }
        }
    }

    private static EscapeSpan Span(WeedPressure weed, ImmutableArray<double> control, int from, int to)
    {
        IEnumerable<int> weeks = Enumerable.Range(from, to - from + 1);
        return new EscapeSpan(
            weed.Weed.Id,
            from,
            to,
            weeks.Sum(week => weed.Emergence[week] * (1 - control[week])),
            weeks.Sum(week => weed.EscapeUsd[week] * (decimal)(1 - control[week]))
        );
    }
}
