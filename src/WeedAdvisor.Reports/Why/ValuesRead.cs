using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Catalogue;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// Which values of an action's record its bars and cautions rest on, and where each of them comes from.
/// </summary>
internal static class ValuesRead
{
    // What rules read under a name of its own, by the field from which it is worked out.
    private static readonly ImmutableDictionary<string, string> s_fields = new Dictionary<string, string>
    {
        ["residual-weeks-low"] = "residual-weeks",
        ["residual-weeks-high"] = "residual-weeks",
        ["groups"] = "actives",
        ["sole-site"] = "actives",
        ["water-in"] = "water-in-mm",
    }.ToImmutableDictionary(StringComparer.Ordinal);

    private static readonly ImmutableArray<string> s_patterns = ["treatment", "practice", "action"];
    private static readonly ImmutableArray<string> s_told =
    [
        "restricted-use",
        "signal-word",
        "rei-hours",
        "protective-equipment",
    ];

    /// <summary>A line for each set of sources.</summary>
    /// <param name="action">The action.</param>
    /// <param name="reasons">Its reasons; those that bar it or say what to mind count.</param>
    public static ImmutableArray<string> Of(CatalogueAction action, IEnumerable<Reason> reasons)
    {
        HashSet<string> fields =
        [
            .. reasons
                .Where(reason => reason.Then is Consequence.Bar or Consequence.Caution)
                .SelectMany(reason => reason.Matched)
                .Where(match => s_patterns.Contains(match.Pattern))
                .SelectMany(match => match.Tests)
                .Select(test => s_fields.GetValueOrDefault(test.Attribute, test.Attribute)),
            .. action.Cautions.IsEmpty ? [] : (string[])["cautions"],
            .. action is Treatment ? s_told : [],
        ];
        return [.. ValueSources.Of(action, fields)];
    }
}
