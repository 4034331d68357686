namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>Square roots of decimals.</summary>
internal static class SquareRoot
{
    /// <summary>The root to about 28 digits.</summary>
    /// <param name="value">A number, not below zero.</param>
    public static decimal Of(decimal value)
    {
        if (value == 0)
            return 0;
        var root = (decimal)Math.Sqrt((double)value);
        // One step of Newton's method doubles the 15 digits that a double gives.
        return root == 0 ? 0 : (root + (value / root)) / 2;
    }
}
