using System.Globalization;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>
/// Runs the thread in a culture that writes 1.234,5 and 31.12.2026 as German does, with a minus sign that is no hyphen
/// as Swedish does. Made by hand because the program runs without the system's culture data.
/// </summary>
internal sealed class CommaCulture : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    public CommaCulture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "\u2212";
        culture.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        culture.DateTimeFormat.DateSeparator = ".";
        CultureInfo.CurrentCulture = culture;
    }

    public void Dispose() => CultureInfo.CurrentCulture = _before;
}
