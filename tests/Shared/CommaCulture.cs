using System.Globalization;

namespace WeedAdvisor.Golden;

/// <summary>
/// Makes the current culture write numbers and dates as German does (the tests run without culture data, so the
/// culture is built by hand), until it is disposed.
/// </summary>
internal sealed class CommaCulture : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    public CommaCulture()
    {
        var german = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        german.NumberFormat.NumberDecimalSeparator = ",";
        german.NumberFormat.NumberGroupSeparator = ".";
        german.NumberFormat.PercentDecimalSeparator = ",";
        german.NumberFormat.NegativeSign = "~";
        german.DateTimeFormat.DateSeparator = ".";
        german.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        CultureInfo.CurrentCulture = german;
        CultureInfo.CurrentUICulture = german;
    }

    public void Dispose()
    {
        CultureInfo.CurrentCulture = _before;
        CultureInfo.CurrentUICulture = _before;
    }
}
