namespace WeedAdvisor.Reports.Documents;

/// <summary>Figures in the ways in which they are written.</summary>
public static class Amounts
{
    /// <summary>US dollars: cents only where they matter.</summary>
    public static Amount Dollars(decimal usd) => new(usd, Amount.Dollar, Math.Abs(usd) < 10 ? "0.00" : "#,0");

    /// <summary>US dollars: cents only where they matter.</summary>
    public static Amount Dollars(double usd) => Dollars((decimal)Math.Round(usd, 2));

    /// <summary>Hours with one decimal.</summary>
    public static Amount Hours(double hours) => new((decimal)hours, "h", "#,0.0");

    /// <summary>Hours as a record has them.</summary>
    public static Amount Hours(decimal hours) => new(hours, "h", "#,0.##");

    /// <summary>A share as a whole percentage.</summary>
    public static Amount Percent(double share) => new((decimal)(share * 100), "%", "0");

    /// <summary>A whole number of something uncounted.</summary>
    public static Amount Whole(double count) => new((decimal)Math.Round(count), "", "#,0");

    /// <summary>A number with one decimal.</summary>
    public static Amount Tenths(double value) => new((decimal)value, "", "#,0.0");

    /// <summary>A number without needless decimals.</summary>
    public static Amount Plain(decimal value) => new(value, "", "#,0.##");

    /// <summary>A count with its noun.</summary>
    public static Amount Count(int count, string one, string many) => new(count, count == 1 ? one : many, "0");
}
