using System.Runtime.CompilerServices;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>The page of an area as it is printed: every law looks at the same pages.</summary>
internal static class PageOfArea
{
    private static readonly ConditionalWeakTable<AreaAdvice, string> s_pages = [];

    public static string Of(AreaAdvice advice) => s_pages.GetValue(advice, Fitted);

    // The page of the only area: from its head to what stands behind all areas.
    private static string Fitted(AreaAdvice advice)
    {
        string text = TextReport.Of(Alone(advice), ShippedRules.Knowledge, new TextLayout());
        string rule = new('=', 80);
        int from = text.IndexOf(rule, StringComparison.Ordinal);
        int second = text.IndexOf(rule, from + 80, StringComparison.Ordinal);
        int third = text.IndexOf(rule, second + 80, StringComparison.Ordinal);
        int standing = text.IndexOf("BEFORE ANY CHEMICAL", second, StringComparison.Ordinal);
        int rest = standing >= 0 ? standing : text.IndexOf("WHERE THE REST IS", StringComparison.Ordinal);
        return text[from..(third >= 0 ? third : rest)].TrimEnd('\n') + "\n";
    }

    public static VisitAdvice Alone(AreaAdvice advice) =>
        new(
            ShippedRules.Knowledge.Stamp,
            ShippedRules.Demo with
            {
                Date = RandomVisits.Day,
                Areas = [advice.Area],
            },
            [advice]
        );
}
