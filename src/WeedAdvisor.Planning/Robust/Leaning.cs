using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Robust;

/// <summary>Finds the figures that stand elsewhere in the draws in which a plan loses.</summary>
internal static class Leaning
{
    private const int Most = 3,
        LeastDraws = 2;

    // By chance alone hardly one figure in a thousand lies as far off.
    private const double FarErrors = 3.3;

    /// <summary>The figures, the farthest first; none where it always loses or hardly ever.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="values">The value of each in each draw.</param>
    /// <param name="isLost">Whether the plan loses in each draw.</param>
    public static ImmutableArray<LeaningFigure> Of(
        ImmutableArray<MovedFigure> figures,
        decimal[][] values,
        bool[] isLost
    )
    {
        int lost = isLost.Count(one => one);
        return lost < LeastDraws || isLost.Length - lost < LeastDraws
            ? []
            :
            [
                .. figures
                    .Select((figure, i) => Held(figure, values[i], isLost))
                    .Where(one => Math.Abs(one.Errors) >= FarErrors)
                    .OrderByDescending(one => Math.Abs(one.Errors))
                    .ThenBy(one => one.Figure.Id, StringComparer.Ordinal)
                    .Take(Most),
            ];
    }

    // The difference of the two means over its standard error (Welch's, from memory).
    private static LeaningFigure Held(MovedFigure figure, decimal[] values, bool[] isLost)
    {
        double[] lost = [.. values.Where((_, i) => isLost[i]).Select(value => (double)value)];
        double[] kept = [.. values.Where((_, i) => !isLost[i]).Select(value => (double)value)];
        double error = Math.Sqrt((Variance(lost) / lost.Length) + (Variance(kept) / kept.Length));
        double apart = lost.Average() - kept.Average();
        return new LeaningFigure(
            figure,
            (decimal)lost.Average(),
            (decimal)kept.Average(),
            error > 0 ? apart / error : 0
        );
    }

    private static double Variance(double[] values)
    {
        double mean = values.Average();
        return values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1);
    }
}
