using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>What a bar speaks of, what counts most to a grower first.</summary>
internal enum BarTier
{
    /// <summary>It hurts this crop or its roots.</summary>
    Injury,

    /// <summary>Its vapour or residue stays under this roof.</summary>
    Vapour,

    /// <summary>It hurts water, people, food or what grows next door.</summary>
    WaterAndPeople,

    /// <summary>The law or a licence stands against it.</summary>
    Law,

    /// <summary>Its label does not name this crop, cover or stock.</summary>
    Label,

    /// <summary>Its label does not name this place.</summary>
    Site,

    /// <summary>It would do nothing here.</summary>
    Idle,

    /// <summary>Nobody may go in: told at the head of the page.</summary>
    Entry,
}

/// <summary>Which bar of a chemical is told where only one is.</summary>
internal static class BarTiers
{
    // A rule that asks what a record names speaks of the label, whatever its topic.
    private static readonly ImmutableHashSet<string> s_label = [CropsNamed, "allowed-under", "stock-stages"];

    private const string CropsNamed = "crops-tolerant";
    private const string Places = "places";
    private const string OfLaw = "law/";

    /// <summary>The bars, the one that counts most first.</summary>
    public static IEnumerable<Reason> InOrder(IEnumerable<Reason> bars) =>
        bars.Select(bar => (Bar: bar, Tier: Of(bar)))
            .OrderBy(one => one.Tier)
            .ThenByDescending(one => Text.BarGroups.SeverityOf(one.Bar))
            .ThenBy(one => one.Bar.Judgement, StringComparer.Ordinal)
            .Select(one => one.Bar);

    /// <summary>
    /// The bar that is told where only one is: what ends last of what ends; of what never ends the one that counts most
    /// of those that don't end either, or the vapour under this roof. Nobody is made to wait for what is never used.
    /// </summary>
    public static Reason First(BarredAction barred) =>
        barred.Status != ActionStatus.Never
            ? barred.Deciding[0]
            : InOrder(barred.Because)
                .OrderBy(bar =>
                    Of(bar) != BarTier.Vapour && barred.Deciding.All(other => other.Judgement != bar.Judgement)
                )
                .First();

    /// <summary>What a bar speaks of.</summary>
    public static BarTier Of(Reason bar)
    {
        string[] asked = [.. bar.Matched.SelectMany(matched => matched.Tests).Select(test => test.Attribute)];
        // "Known to injure" asks which crops it hurts, beside which crops it bears.
        return asked.Contains(Places) ? BarTier.Site
            : bar.Topic == "entry" ? BarTier.Entry
            : asked.Any(s_label.Contains) ? BarTier.Label
            : bar.Topic.StartsWith(OfLaw, StringComparison.Ordinal) ? BarTier.Law
            : OfTopic(bar.Topic);
    }

    /// <summary>Whether a bar asks that the label names the crop.</summary>
    public static bool AsksForTheCrop(Reason bar) =>
        bar.Matched.Any(matched => matched.Tests.Any(test => test.Attribute == CropsNamed));

    private static BarTier OfTopic(string topic) =>
        topic switch
        {
            "crop-safety" or "propagation" or "newly-potted-and-liners" or "timing-and-weather" => BarTier.Injury,
            "under-cover" or "covering-and-uncovering" => BarTier.Vapour,
            "water-and-neighbours" or "edible-and-organic" or "equipment-and-people" => BarTier.WaterAndPeople,
            "law-and-protection" or "limits" => BarTier.Law,
            "place-and-stock" => BarTier.Label,
            // What is not up, has no name or let weeds through; also whatever topic comes that is not told here.
            _ => BarTier.Idle,
        };
}
