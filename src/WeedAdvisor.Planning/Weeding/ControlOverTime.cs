using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// How well a treatment holds a weed in the weeks after it goes on: full for the shortest published time, then falling
/// in a straight line to a share of that at the longest, then nothing.
/// </summary>
internal static class ControlOverTime
{
    /// <summary>Control by age in weeks, 0 to 1.</summary>
    /// <param name="full">Control at its best, 0 to 1.</param>
    /// <param name="residual">Shortest and longest published weeks of control.</param>
    /// <param name="leftAtEnd">Share of the full control still there at the longest time, 0 to 1.</param>
    public static ImmutableArray<double> Of(double full, Span residual, double leftAtEnd)
    {
        int longest = Math.Max(1, (int)decimal.Floor(residual.High));
        double low = (double)residual.Low,
            high = (double)residual.High;
        return [.. Enumerable.Range(0, longest).Select(age => full * Left(age))];

        // The week of age a lies between a and a + 1 weeks after the application; its middle counts.
        double Left(int age)
        {
            double middle = age + 0.5;
            return middle <= low || high <= low ? 1 : 1 - ((1 - leftAtEnd) * (middle - low) / (high - low));
        }
    }
}
