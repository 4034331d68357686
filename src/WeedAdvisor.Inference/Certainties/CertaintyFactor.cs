namespace WeedAdvisor.Inference.Certainties;

/// <summary>
/// The algebra of certainty factors: E. H. Shortliffe and B. G. Buchanan, A model of inexact reasoning in medicine,
/// Mathematical Biosciences 23 (1975), in the symmetric form of W. van Melle's EMYCIN (1980), which makes the mixed
/// case independent of order.
/// </summary>
public static class CertaintyFactor
{
    /// <summary>
    /// Two factors together. Both positive: a + b(1 - a). Both negative: a + b(1 + a). Mixed:
    /// (a + b) / (1 - min(|a|, |b|)); complete contradiction (1 against -1) is undefined there and counts 0 here.
    /// </summary>
    /// <param name="left">A factor in [-1, 1].</param>
    /// <param name="right">A factor in [-1, 1].</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor lies outside [-1, 1] or is not a number.</exception>
    public static double Combine(double left, double right)
    {
        Check(left, nameof(left));
        Check(right, nameof(right));
        if (left >= 0 && right >= 0)
            return left + right * (1 - left);
        if (left <= 0 && right <= 0)
            return left + right * (1 + left);
        double rest = 1 - Math.Min(Math.Abs(left), Math.Abs(right));
        return rest == 0 ? 0 : (left + right) / rest;
    }

    /// <summary>
    /// Several factors together; 0 for none. The positive and the negative ones are gathered apart, each in order of
    /// size, and then weighed against each other, so that the same factors give the same bits in any order.
    /// </summary>
    public static double Combine(IEnumerable<double> factors)
    {
        double[] ordered = [.. factors];
        Array.Sort(ordered);
        double against = 0,
            support = 0;
        foreach (double factor in ordered)
        {
            if (factor < 0)
                against = Combine(against, factor);
            else if (factor > 0)
                support = Combine(support, factor);
        }

        return Combine(support, against);
    }

    private static void Check(double factor, string name)
    {
        if (!(factor is >= -1 and <= 1))
            throw new ArgumentOutOfRangeException(name, factor, "a certainty factor lies in [-1, 1]");
    }
}
