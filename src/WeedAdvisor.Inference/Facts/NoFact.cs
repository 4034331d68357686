using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// What is looked at in place of a fact where there is none of its kind, such as a weed in an area without weeds: every
/// test on it fails.
/// </summary>
internal static class NoFact
{
    private const string Id = "-";

    private static readonly Dictionary<string, Reading> s_nothing = [];

    /// <summary>The stand-in of a kind of the case.</summary>
    public static Fact Of(FactKind kind) =>
        kind switch
        {
            FactKind.Weed => new WeedFact(Id, "no weed", s_nothing),
            FactKind.Crop => new CropFact(Id, "no crop", s_nothing),
            FactKind.Past => new PastFact(Id, "no earlier use", s_nothing),
            FactKind.Closure => new ClosureFact(Id, "no entry interval", s_nothing),
            FactKind.Limit => new LimitFact(Id, "no limit", s_nothing),
            FactKind.Escape => new EscapeFact(Id, "no weed that came through", s_nothing),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "there is always one of this kind"),
        };

    /// <summary>Whether a fact is such a stand-in.</summary>
    public static bool Is(Fact fact) => fact.Key.EndsWith($"/{Id}", StringComparison.Ordinal);
}
