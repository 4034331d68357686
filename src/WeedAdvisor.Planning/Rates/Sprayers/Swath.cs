using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>
/// Effective swath of a pattern that laps over the next: the distance from pass to pass = throw − overlap on one side.
/// </summary>
internal static class Swath
{
    /// <summary>The effective swath in feet or metres, or why there is none.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="thrown">The whole width thrown.</param>
    /// <param name="overlap">The overlap with the next pass, on one side: a share of the throw or a length.</param>
    /// <param name="metric">Whether to work in metres.</param>
    public static (Quantity? Swath, RateProblem? Problem) Effective(
        WorkingSheet sheet,
        Quantity thrown,
        Quantity overlap,
        bool metric
    )
    {
        string unit = metric ? "m" : "ft";
        Quantity wide = thrown.To(unit);
        Quantity lap = overlap.Dimension == Dimension.None ? wide * overlap.InBase : overlap.To(unit);
        if (lap.Value >= wide.Value)
            return (
                null,
                new RateProblem(
                    "overlap",
                    $"an overlap of {overlap} leaves nothing of a width of {thrown}; enter the overlap on one side"
                )
            );
        sheet.Convert("Width thrown", thrown, unit);
        if (overlap.Dimension == Dimension.None)
            sheet.Line("Overlap on one side", $"{wide} × {overlap}", lap, unit);
        else
            sheet.Convert("Overlap on one side", overlap, unit);
        return (sheet.Line("Effective swath", $"{wide} - {lap}", wide - lap, unit), null);
    }

    /// <summary>What must be assumed of a swath of less than half the throw; else nothing.</summary>
    /// <param name="swath">The effective swath.</param>
    /// <param name="thrown">The whole width thrown.</param>
    public static ImmutableArray<string> Doubts(Quantity swath, Quantity thrown) =>
        swath.InBase * 2 < thrown.InBase
            ? ["The overlap is meant, though at more than half of the width every spot is hit by three passes or more."]
            : [];
}
