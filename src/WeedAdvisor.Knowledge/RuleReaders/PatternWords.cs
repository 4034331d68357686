using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>The words that begin a pattern.</summary>
internal static class PatternWords
{
    /// <summary>Begins a pattern on a finding.</summary>
    public const string Finding = "finding";

    /// <summary>Begins a pattern on absence.</summary>
    public const string None = "none";

    /// <summary>Begins a pattern on existence.</summary>
    public const string Any = "any";

    private static readonly string[] s_kinds =
    [
        "site",
        "weed",
        "crop",
        "practice",
        "treatment",
        "action",
        "past",
        "closure",
        "limit",
        "escape",
    ];

    /// <summary>Every word that begins a pattern.</summary>
    public static ValidWords All { get; } = new("one of", [.. s_kinds, Finding, None, Any]);

    /// <summary>The words that begin a pattern inside <c>none</c> and <c>any</c>.</summary>
    public static ValidWords Inner { get; } = new("one of", [.. s_kinds, Finding]);

    /// <summary>The word for a kind of fact.</summary>
    public static string Of(FactKind kind) =>
        kind switch
        {
            FactKind.Site => "site",
            FactKind.Weed => "weed",
            FactKind.Crop => "crop",
            FactKind.Practice => "practice",
            FactKind.Treatment => "treatment",
            FactKind.Action => "action",
            FactKind.Past => "past",
            FactKind.Closure => "closure",
            FactKind.Limit => "limit",
            FactKind.Escape => "escape",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a kind of fact"),
        };

    /// <summary>The kind of fact for a word, or null.</summary>
    public static FactKind? KindOf(string word) =>
        word switch
        {
            "site" => FactKind.Site,
            "weed" => FactKind.Weed,
            "crop" => FactKind.Crop,
            "practice" => FactKind.Practice,
            "treatment" => FactKind.Treatment,
            "action" => FactKind.Action,
            "past" => FactKind.Past,
            "closure" => FactKind.Closure,
            "limit" => FactKind.Limit,
            "escape" => FactKind.Escape,
            _ => null,
        };
}
