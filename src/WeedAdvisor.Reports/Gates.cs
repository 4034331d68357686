using System.Collections.Immutable;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>
/// The values of a chemical that decide whether anybody may use it at all, or go in afterwards. One that is from
/// memory is named wherever the chemical is.
/// </summary>
internal static class Gates
{
    private static readonly ImmutableArray<KeyValuePair<string, string>> s_words =
    [
        KeyValuePair.Create("restricted-use", "restricted use"),
        KeyValuePair.Create("rei-hours", "entry interval"),
        KeyValuePair.Create("edible-ok", "use near food plants"),
        KeyValuePair.Create("organic-ok", "organic use"),
        KeyValuePair.Create("status", "registration"),
        KeyValuePair.Create("uses-per-year", "uses a year"),
        KeyValuePair.Create("yearly-limit-kg-ai-ha", "amount a year"),
        KeyValuePair.Create("interval-days", "days between uses"),
    ];

    /// <summary>The fields that are gates, the first to look at first.</summary>
    public static ImmutableArray<string> All { get; } = [.. s_words.Select(one => one.Key)];

    /// <summary>What has to be confirmed on the label, in a line: the gates by name, the rest counted.</summary>
    /// <param name="fields">The fields whose value is from memory.</param>
    public static string ToConfirm(ImmutableArray<string> fields)
    {
        string[] named = [.. s_words.Where(gate => fields.Contains(gate.Key)).Select(gate => gate.Value)];
        int others = fields.Length - named.Length;
        if (named.Length == 0)
            return $"confirm {Figures.Count(others, "value", "values")} on the label (from memory)";
        string rest = others == 0 ? "" : $" and {Figures.Count(others, "more value", "more values")}";
        return $"from memory, read the label: {string.Join(", ", named)}{rest}";
    }
}
