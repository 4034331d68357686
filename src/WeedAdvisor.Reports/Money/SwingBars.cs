using System.Globalization;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>
/// What each uncertain input does to a result, as bars in plain text on one scale: <c>|</c> stands where the result is
/// today, <c>=</c> where one input alone can take it. Narrow pages get the figures below the name.
/// </summary>
public static class SwingBars
{
    private const int Indent = 2;
    private const int Narrowest = 12;

    /// <summary>Writes the bars.</summary>
    /// <param name="page">The page.</param>
    /// <param name="sensitivity">The swings; the result in US dollars.</param>
    public static void Write(Page page, Sensitivity sensitivity)
    {
        if (sensitivity.Swings.IsEmpty)
            return;
        var scale = SwingScale.Of(sensitivity);
        int columns = Math.Max(Narrowest, page.Width - (2 * Indent));
        foreach (Swing swing in sensitivity.Swings)
        {
            UncertainInput input = swing.Input;
            string from = string.Create(
                CultureInfo.InvariantCulture,
                $"{input.Name}, {input.Low:0.##} to {input.High:0.##} {input.Unit}: "
            );
            page.Write(Indent, $"{from}{Signed(swing.AtLow)} to {Signed(swing.AtHigh)}");
            page.Drawn(Indent, Bar(scale, swing, sensitivity.Base, columns));
        }
    }

    /// <summary>Dollars with a sign in front.</summary>
    internal static string Signed(decimal usd) => usd < 0 ? "-" + Figures.Dollars(-usd) : Figures.Dollars(usd);

    private static string Bar(SwingScale scale, Swing swing, decimal usual, int columns)
    {
        int At(decimal value) => (int)Math.Round(scale.Share(value) * (columns - 1), MidpointRounding.AwayFromZero);
        int from = Math.Min(At(swing.AtLow), At(swing.AtHigh));
        int to = Math.Max(At(swing.AtLow), At(swing.AtHigh));
        char[] line = new char[columns];
        Array.Fill(line, '.');
        Array.Fill(line, '=', from, to - from + 1);
        line[At(usual)] = '|';
        return new string(line);
    }
}

/// <summary>One scale for all bars: it spans every result.</summary>
/// <param name="Low">The least result.</param>
/// <param name="High">The greatest.</param>
internal sealed record SwingScale(decimal Low, decimal High)
{
    public static SwingScale Of(Sensitivity sensitivity)
    {
        decimal[] all =
        [
            sensitivity.Base,
            .. sensitivity.Swings.SelectMany(swing => new[] { swing.AtLow, swing.AtHigh }),
        ];
        return new SwingScale(all.Min(), all.Max());
    }

    /// <summary>How far along the scale a result stands, 0 to 1; in the middle when nothing moves it.</summary>
    public decimal Share(decimal value) => High == Low ? 0.5m : (value - Low) / (High - Low);
}
