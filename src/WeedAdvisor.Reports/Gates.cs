using System.Collections.Frozen;
using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>
/// The values of a chemical that decide whether anybody may use it at all, or go in afterwards. One that is from
/// memory is named wherever the chemical is.
/// </summary>
internal static class Gates
{
    // Where the name of the field alone would not be understood.
    private static readonly FrozenDictionary<string, string> s_words = new Dictionary<string, string>
    {
        ["rei-hours"] = "entry interval",
        ["edible-ok"] = "use near food plants",
        ["organic-ok"] = "organic use",
        ["status"] = "registration",
        ["uses-per-year"] = "uses a year",
        ["yearly-limit-kg-ai-ha"] = "amount a year",
        ["interval-days"] = "days between uses",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The fields that are gates in any kind of record, the first to look at first.</summary>
    public static ImmutableArray<string> All { get; } =
    [.. ValueFields.ByRecord.SelectMany(kind => kind.Value.Gates).Distinct(StringComparer.Ordinal)];

    /// <summary>What has to be confirmed on the label, in a line: the gates by name, the rest counted.</summary>
    /// <param name="fields">The fields whose value is from memory.</param>
    public static string ToConfirm(ImmutableArray<string> fields)
    {
        string[] named =
        [
            .. All.Where(gate => fields.Contains(gate))
                .Select(gate => s_words.GetValueOrDefault(gate, Names.Field(gate))),
        ];
        int others = fields.Length - named.Length;
        if (named.Length == 0)
            return $"confirm {Figures.Count(others, "value", "values")} on the label (from memory)";
        string rest = others == 0 ? "" : $" and {Figures.Count(others, "more value", "more values")}";
        return $"from memory, read the label: {string.Join(", ", named)}{rest}";
    }
}
