namespace WeedAdvisor.Reports.Lessons;

/// <summary>
/// How far two rankings agree: Kendall's tau-b, which allows for ties. M. G. Kendall, The treatment of ties in ranking
/// problems, Biometrika 33 (1945); Rank Correlation Methods (1948).
/// </summary>
public static class RankAgreement
{
    /// <summary>
    /// Agreeing pairs less disagreeing ones, over the geometric mean of the pairs that each ranking tells apart: 1 for
    /// the same order, -1 for the reverse. Null where one of them tells nothing apart.
    /// </summary>
    /// <param name="one">The rank of each thing; equal ranks are ties.</param>
    /// <param name="other">The ranks of the same things in the same order.</param>
    public static double? TauB(IReadOnlyList<int> one, IReadOnlyList<int> other)
    {
        if (one.Count != other.Count)
            throw new ArgumentException("two rankings of the same things", nameof(other));
        int agreement = 0,
            toldByOne = 0,
            toldByOther = 0;
        for (int i = 0; i < one.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                int left = one[i].CompareTo(one[j]),
                    right = other[i].CompareTo(other[j]);
                agreement += Math.Sign(left) * Math.Sign(right);
                toldByOne += left == 0 ? 0 : 1;
                toldByOther += right == 0 ? 0 : 1;
            }
        }

        return toldByOne == 0 || toldByOther == 0 ? null : agreement / Math.Sqrt((double)toldByOne * toldByOther);
    }
}
