using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Makes the advice for an area from everything that was concluded about it.</summary>
internal sealed class AdviceBuilder(KnowledgeBase knowledge)
{
    private readonly Reasons _reasons = new(knowledge);
    private readonly QuestionChoice _questions = new(knowledge);

    /// <summary>The advice for an area.</summary>
    public AreaAdvice Of(VisitArea area, IReadOnlyList<Conclusion> conclusions)
    {
        ActionCase[] cases =
        [
            .. conclusions
                .Where(one => one.Action is not null)
                .GroupBy(one => one.Action!.Id, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new ActionCase(group.Key, group)),
        ];
        ImmutableArray<ClearAction> clear = Ranking.Of(cases.Where(one => one.IsClear).Select(one => ClearOf(one, area)));
        return new AreaAdvice
        {
            Area = area,
            Findings = FindingsIn(conclusions),
            Clear = clear,
            Waiting = [.. cases.Where(one => one.IsWaiting).Select(WaitingOf)],
            Barred = [.. cases.Where(one => one.IsBarred).Select(BarredOf)],
            Cautions = CautionsIn(conclusions),
            Conflicts = [.. cases.Where(one => !one.IsBarred).Select(ConflictOf).OfType<Conflict>()],
            Gaps = Gaps.In(area, clear, knowledge),
            NextQuestion = _questions.Next(cases, conclusions),
            AllConclusions = () => [.. conclusions.Select(_reasons.Of)],
        };
    }

    private ClearAction ClearOf(ActionCase one, VisitArea area)
    {
        CatalogueAction action = knowledge.ActionOf(one.Action)!;
        Effect effect = ExpectedEffect.Of(action, area.Weeds, knowledge);
        ImmutableArray<Reason> because =
        [
            .. one.Supports.Concat(one.Doubts)
                .Where(argument => argument.IsCertain)
                .OrderByDescending(argument => argument.Certainty)
                .ThenBy(argument => argument)
                .Select(_reasons.Of),
        ];
        return new ClearAction
        {
            Action = one.Action,
            Rank = 0,
            Certainty = one.Certainty,
            Effect = effect,
            Merit = one.Certainty * effect.Counted,
            When = action.When,
            CostUsd = CostEstimate.UsdOf(action, area, knowledge),
            Hours = CostEstimate.HoursOf(action),
            Because = because,
            Cautions = CautionsOf(action, one),
            Sources = Keys(
                because.SelectMany(reason => reason.Sources)
                    .Concat(action.Sources)
                    .Concat(effect.Parts.SelectMany(part => part.Sources))),
        };
    }

    private ImmutableArray<ActionCaution> CautionsOf(CatalogueAction action, ActionCase one) =>
    [
        .. action.Cautions.Select(text => new ActionCaution(text, null, true)),
        .. one.Cautions
            .Order()
            .Select(caution => new ActionCaution(_reasons.CautionOf(caution), caution.Judgement.Id, caution.IsCertain))
            .DistinctBy(caution => caution.Text),
    ];

    private WaitingAction WaitingOf(ActionCase one) =>
        new(one.Action, one.Needs, [.. one.Waits.Order().Select(_reasons.Of)]);

    private BarredAction BarredOf(ActionCase one)
    {
        Conclusion[] bars =
        [
            .. one.Bars
                .Where(bar => bar.IsCertain)
                .OrderByDescending(SeverityOf)
                .ThenBy(bar => bar),
        ];
        return new BarredAction(
            one.Action,
            bars.Max(SeverityOf),
            [.. bars.Select(_reasons.Of)],
            Keys(bars.SelectMany(bar => bar.Judgement.Sources).Concat(knowledge.ActionOf(one.Action)!.Sources)));
    }

    private static Severity SeverityOf(Conclusion bar) => ((Consequence.Bar)bar.Judgement.Then).Severity;

    private Conflict? ConflictOf(ActionCase one)
    {
        Reason[] support = [.. one.Supports.Where(argument => argument.IsCertain).Select(_reasons.Of)];
        Reason[] against = [.. one.Doubts.Where(argument => argument.IsCertain).Select(_reasons.Of)];
        return support.Length > 0 && against.Length > 0 ? new Conflict(one.Action, [.. support], [.. against]) : null;
    }

    private ImmutableArray<Finding> FindingsIn(IEnumerable<Conclusion> conclusions) =>
    [
        .. conclusions
            .OfType<FindingConclusion>()
            .GroupBy(one => one.Finding, StringComparer.Ordinal)
            .Select(FindingOf)
            .OrderByDescending(finding => finding.IsCertain)
            .ThenByDescending(finding => finding.Certainty)
            .ThenBy(finding => finding.Id, StringComparer.Ordinal),
    ];

    private Finding FindingOf(IGrouping<string, FindingConclusion> evidence)
    {
        FindingConclusion[] counted = [.. Evidences.ThatCount(evidence.ToArray())];
        return new Finding(
            evidence.Key,
            knowledge.Findings[evidence.Key].Text,
            Evidences.CertaintyOf(counted),
            counted[0].IsCertain,
            [.. counted.Order().Select(_reasons.Of)]);
    }

    private ImmutableArray<AreaCaution> CautionsIn(IEnumerable<Conclusion> conclusions) =>
    [
        .. conclusions
            .Where(one => one.Judgement.Then is Consequence.Caution && one.Action is null)
            .Order()
            .Select(one => new AreaCaution(_reasons.CautionOf(one), one.IsCertain, _reasons.Of(one)))
            .DistinctBy(caution => (caution.Text, caution.Because.Judgement)),
    ];

    private static ImmutableArray<string> Keys(IEnumerable<string> keys) =>
        [.. keys.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
