namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// What something that lasts for years costs in each of them: the loss of value and the interest on what is tied up in
/// it, as equal yearly payments. Source: isu-a3-29 (the wording of the formula from memory).
/// </summary>
public static class CapitalRecovery
{
    /// <summary>The longest life that is reckoned with, years.</summary>
    public const int LongestLife = 100;

    /// <summary>
    /// The yearly payment for each dollar: i(1+i)^n / ((1+i)^n - 1), which is 1/n without interest. Reckoned as one
    /// over what a dollar at the end of each year is worth today, which is the same and holds without interest as well.
    /// </summary>
    /// <param name="rate">Interest i, a share a year, 0 to 1.</param>
    /// <param name="years">Life n, 1 to <see cref="LongestLife"/> years.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static decimal Factor(decimal rate, int years)
    {
        Within(rate, 0, 1, nameof(rate));
        Within(years, 1, LongestLife, nameof(years));
        decimal worth = 0;
        decimal ofYear = 1;
        for (int year = 1; year <= years; year++)
        {
            ofYear /= 1 + rate;
            worth += ofYear;
        }

        return 1 / worth;
    }

    /// <summary>Yearly cost: (purchase - salvage) x factor + salvage x interest, US dollars a year.</summary>
    /// <param name="purchaseUsd">Price paid, US dollars, at least 0.</param>
    /// <param name="salvageUsd">What it still brings at the end, US dollars, 0 to the purchase price.</param>
    /// <param name="rate">Interest, a share a year, 0 to 1; see <see cref="RealRate"/>.</param>
    /// <param name="years">Life, 1 to <see cref="LongestLife"/> years.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static decimal YearlyUsd(decimal purchaseUsd, decimal salvageUsd, decimal rate, int years)
    {
        Within(purchaseUsd, 0, decimal.MaxValue, nameof(purchaseUsd));
        Within(salvageUsd, 0, purchaseUsd, nameof(salvageUsd));
        return ((purchaseUsd - salvageUsd) * Factor(rate, years)) + (salvageUsd * rate);
    }

    /// <summary>
    /// Interest above inflation, a share a year: the lender's rate less inflation, and never below 0.
    /// </summary>
    /// <param name="nominal">The lender's rate, a share a year.</param>
    /// <param name="inflation">Inflation, a share a year.</param>
    public static decimal RealRate(decimal nominal, decimal inflation) => Math.Max(0, nominal - inflation);

    /// <summary>The yearly cost for each hour or use, US dollars.</summary>
    /// <param name="yearlyUsd">Yearly cost, US dollars.</param>
    /// <param name="usesAYear">Hours or uses a year, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">When it is not used.</exception>
    public static decimal EachUseUsd(decimal yearlyUsd, decimal usesAYear)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(usesAYear);
        return yearlyUsd / usesAYear;
    }

    private static void Within(decimal value, decimal low, decimal high, string name)
    {
        if (value < low || value > high)
            throw new ArgumentOutOfRangeException(name, value, $"from {low} to {high}");
    }
}
