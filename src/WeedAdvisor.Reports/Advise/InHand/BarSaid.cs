using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>A bar as it stands behind the name of a chemical.</summary>
internal static class BarSaid
{
    private const string It = "it";

    /// <summary>The reason, with "it" for the chemical.</summary>
    public static string Of(Reason bar) => Figures.Sentence(bar.Said.Of(It));

    /// <summary>The same in its first sentence, unless that says only that a label must name the crop.</summary>
    public static string InBrief(Reason bar)
    {
        string text = Of(bar);
        return BarTiers.AsksForTheCrop(bar) ? text : text[..EndOfFirst(text)];
    }

    /// <summary>What the first sentence leaves out; empty where nothing does.</summary>
    public static string AfterTheFirst(string text) => text[EndOfFirst(text)..].TrimStart();

    private static int EndOfFirst(string text) =>
        text.IndexOf(". ", StringComparison.Ordinal) is var end and >= 0 ? end + 1 : text.Length;
}
