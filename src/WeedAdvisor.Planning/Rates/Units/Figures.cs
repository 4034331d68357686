using System.Globalization;

namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>Numbers as people read them: the only place where the rate sums are rounded.</summary>
public static class Figures
{
    private const int Shown = 6;

    private const int MostFigures = 15;

    // The most places that a decimal can be rounded to.
    private const int MostPlaces = 28;

    /// <summary>A quantity to six significant figures with its unit.</summary>
    public static string Of(Quantity quantity) => Of(quantity, Shown);

    /// <summary>A quantity to so many significant figures with its unit.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="significant">Significant figures, 1 to 15.</param>
    public static string Of(Quantity quantity, int significant)
    {
        string number = Of(quantity.Value, significant);
        return quantity.Unit.Symbol switch
        {
            "" => number,
            "%" => number + " %",
            string symbol => $"{number} {symbol}",
        };
    }

    /// <summary>
    /// A number to so many significant figures, halves away from zero, without trailing zeros or exponent.
    /// </summary>
    /// <param name="value">The number.</param>
    /// <param name="significant">Significant figures, 1 to 15; whole numbers keep all their digits.</param>
    public static string Of(decimal value, int significant) =>
        Rounded(value, significant).ToString("0.############################", CultureInfo.InvariantCulture);

    /// <summary>
    /// A number rounded to so many significant figures, halves away from zero; digits before the point are kept.
    /// </summary>
    /// <param name="value">The number.</param>
    /// <param name="significant">Significant figures, 1 to 15.</param>
    public static decimal Rounded(decimal value, int significant)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(significant, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(significant, 15);
        int places = significant;
        decimal size = Math.Abs(value);
        for (decimal bound = 1; size >= bound && places > 0; bound *= 10)
            places--;
        for (decimal bound = 0.1m; size != 0 && size < bound && places < MostPlaces; bound /= 10)
            places++;
        return Math.Round(value, places, MidpointRounding.AwayFromZero);
    }

    /// <summary>
    /// A number cut to so many significant figures: never more than it is, for doses. The trace that conversions
    /// leave in the last digits takes none away.
    /// </summary>
    /// <param name="value">The number, 0 or more.</param>
    /// <param name="significant">Significant figures, 1 to 15.</param>
    public static decimal Down(decimal value, int significant)
    {
        decimal rounded = Rounded(value, significant);
        if (rounded <= value || value == 0 || Rounded(value, MostFigures) == rounded)
            return rounded;
        decimal step = 1,
            least = 1;
        for (int i = 1; i < significant; i++)
            least *= 10;
        while (value / step < least)
            step /= 10;
        while (value / step >= least * 10)
            step *= 10;
        return Math.Floor(value / step) * step;
    }
}
