using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// The weeds that nothing meets for now. A weed is met by an action that is clear, or waits for an answer, and whose
/// record has a figure for it, or for which a rule speaks on account of it. What is not met is said to be left, with
/// why, so that no weed is passed over in silence.
/// </summary>
internal static class LeftWeeds
{
    /// <summary>The gaps of the weeds that are left, in ordinal order.</summary>
    public static ImmutableArray<Gap> Of(
        VisitArea area,
        IReadOnlyCollection<ActionCase> cases,
        ImmutableArray<ClearAction> clear,
        KnowledgeBase knowledge
    ) =>
        [
            .. (area.Weeds ?? [])
                .Select(seen => seen.Weed)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Where(weed => !HasFigure(clear, weed) && !cases.Any(one => Meets(one, weed)))
                .Select(weed => GapOf(knowledge.Weeds[weed], cases, knowledge)),
        ];

    private static bool HasFigure(ImmutableArray<ClearAction> clear, string weed) =>
        clear.Any(action => action.Effect.Parts.Any(part => part.Weed == weed && part.HighPercent > 0));

    // What is clear is told with what speaks for it for sure; what waits also with what may.
    private static bool Meets(ActionCase one, string weed) =>
        one.Status switch
        {
            ActionStatus.Clear or ActionStatus.ClearUnless => one.Supports.Any(support =>
                support.IsCertain && SpeaksOf(support, weed)
            ),
            ActionStatus.Waits => one.Supports.Any(support => SpeaksOf(support, weed)),
            _ => false,
        };

    private static bool SpeaksOf(Conclusion support, string weed) =>
        WeedsSpokenOf.In(support).Any(fact => IsOf(fact, weed));

    // A weed seen in several stages has a fact for each.
    private static bool IsOf(WeedFact fact, string weed) =>
        fact.Key == $"weed/{weed}" || fact.Key.StartsWith($"weed/{weed}/", StringComparison.Ordinal);

    private static Gap GapOf(Weed weed, IReadOnlyCollection<ActionCase> cases, KnowledgeBase knowledge)
    {
        string? held = cases
            .Where(one =>
                one.Status is ActionStatus.NotYet or ActionStatus.NotThisWay
                && one.Supports.Any(support => SpeaksOf(support, weed.Id))
            )
            .OrderByDescending(one => one.MostCertainty)
            .ThenBy(one => one.Action, StringComparer.Ordinal)
            .Select(one => one.Action)
            .FirstOrDefault();
        string why = held is null
            ? "Nothing that is known against it can be done in a place like this."
            : $"What would meet it may not be done here yet: {knowledge.ActionOf(held)!.Name}.";
        return new Gap(GapKind.WeedLeft, weed.Id, $"Left for now: {weed.Name}. {why}", held);
    }
}
