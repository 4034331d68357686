namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// Money as whole hundredths of a cent and doses as whole milligrams, so that sums and comparisons are exact.
/// </summary>
internal static class Units
{
    private const decimal PerMoney = 10_000m;
    private const decimal MilligramsPerKilogram = 1_000_000m;

    /// <summary>Money in hundredths of a cent, rounded half to even.</summary>
    public static long OfMoney(decimal money) => (long)Math.Round(money * PerMoney);

    /// <summary>The money that so many hundredths of a cent are.</summary>
    public static decimal ToMoney(long units) => units / PerMoney;

    /// <summary>A dose in milligrams per hectare, rounded half to even.</summary>
    public static long OfDose(decimal kilograms) => (long)Math.Round(kilograms * MilligramsPerKilogram);

    /// <summary>What a control saves of an escape cost. Never falls when the control rises.</summary>
    public static long Saved(long escape, double control) => (long)Math.Round(escape * control);
}
