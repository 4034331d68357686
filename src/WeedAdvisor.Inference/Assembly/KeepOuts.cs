using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Works out what keeps people out of an area: the bars that end with an hour are the entry intervals.
/// </summary>
internal sealed class KeepOuts(Reasons reasons, Lifts lifts, KnowledgeBase knowledge)
{
    /// <summary>What keeps people out, or may do so; null when no rule speaks of an interval.</summary>
    public KeepOut? Of(IReadOnlyCollection<ActionCase> cases, VisitArea area, DateOnly date)
    {
        // The same closure bars many actions; it is one reason to keep out.
        Conclusion[] bars =
        [
            .. cases
                .SelectMany(one => one.Bars)
                .Where(IsOfEntry)
                .DistinctBy(bar => (bar.Judgement.Id, KeyOfClosure(bar))),
        ];
        if (bars.Length == 0)
            return null;
        Conclusion[] sure = [.. bars.Where(bar => bar.IsCertain)];
        return sure.Length > 0
            ? new KeepOut(lifts.UntilOf(sure, date), [], TextsOf(sure, date), Then(cases, area))
            : new KeepOut(
                new Until(null, false, []),
                [.. bars.SelectMany(bar => bar.Needs).Distinct().Order()],
                TextsOf(bars, date),
                []
            );
    }

    private static bool IsOfEntry(Conclusion bar) => Lifts.Of(bar) is Lift.Hours;

    private static string KeyOfClosure(Conclusion bar) =>
        string.Join(',', bar.Match.OfType<Matched.One>().Select(one => one.Fact).Where(fact => fact is not ActionFact));

    private ImmutableArray<string> TextsOf(IEnumerable<Conclusion> bars, DateOnly date) =>
        [
            .. bars.OrderByDescending(bar => lifts.UntilOf([bar], date).From)
                .ThenBy(bar => bar)
                .Select(bar => reasons.SaidOf(bar).Text)
                .Distinct(StringComparer.Ordinal),
        ];

    private ImmutableArray<string> Then(IEnumerable<ActionCase> cases, VisitArea area)
    {
        ActionCase[] only =
        [
            .. cases.Where(one =>
                one.IsBarred
                && one.CertainBars.All(IsOfEntry)
                && one.After is ActionStatus.Clear or ActionStatus.ClearUnless
            ),
        ];
        ImmutableArray<Escape> escapes = only.Length == 0 ? [] : EscapesOfArea.Of(area.Past, knowledge);
        return
        [
            .. only.OrderBy(one => one.After)
                .ThenBy(one => !Ranking.Cleans(knowledge.ActionOf(one.Action)!))
                .ThenByDescending(one => Math.Round(one.Certainty * EffectOf(one), 9))
                .ThenBy(one => one.Action, StringComparer.Ordinal)
                .Select(one => one.Action),
        ];

        double EffectOf(ActionCase one) =>
            ExpectedEffect.Of(knowledge.ActionOf(one.Action)!, area.Weeds, knowledge, escapes).Reduction ?? 0;
    }
}
