using System.Collections.Immutable;
using System.Runtime.InteropServices;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Makes the advice for an area from everything that was concluded about it.</summary>
internal sealed class AdviceBuilder
{
    private readonly Reasons _reasons;
    private readonly Lifts _lifts;
    private readonly KeepOuts _keepOuts;
    private readonly Sketches _sketches;
    private readonly QuestionChoice _questions;
    private readonly KnowledgeBase _knowledge;
    private readonly ImmutableArray<string> _actions;

    /// <summary>A builder that speaks with the words of a knowledge base.</summary>
    public AdviceBuilder(KnowledgeBase knowledge)
    {
        _knowledge = knowledge;
        _reasons = new Reasons(knowledge);
        _lifts = new Lifts(_reasons);
        _keepOuts = new KeepOuts(_reasons, _lifts, knowledge);
        _sketches = new Sketches(knowledge);
        _questions = new QuestionChoice(knowledge);
        _actions = [.. knowledge.Practices.Keys.Concat(knowledge.Treatments.Keys).Order(StringComparer.Ordinal)];
    }

    /// <summary>The advice for an area.</summary>
    /// <param name="looked">The area on the day on which it is looked at, from which days of waiting are
    /// counted.</param>
    /// <param name="concluded">Everything that was concluded about it.</param>
    public AreaAdvice Of(AreaCase looked, AreaConclusions concluded)
    {
        ImmutableArray<Conclusion> conclusions = concluded.ForAdvice();
        (DateOnly date, VisitArea area, _) = looked;
        ActionCase[] cases = CasesIn(conclusions);
        var reading = AreaReading.Of(area, date, _knowledge);
        ImmutableArray<Escape> escapes = EscapesOfArea.Of(area.Past, _knowledge);
        Dictionary<string, ClearAction> sketches = cases
            .Where(one => one.Status is ActionStatus.Clear or ActionStatus.ClearUnless or ActionStatus.Waits)
            .ToDictionary(one => one.Action, one => _sketches.Of(one, reading, escapes), StringComparer.Ordinal);
        ImmutableArray<ClearAction> clear = Ranking.Of(
            cases
                .Where(one => one.Status is ActionStatus.Clear or ActionStatus.ClearUnless)
                .Select(one => ClearOf(one, sketches[one.Action], date))
        );
        (NextQuestion? next, NextQuestion? ofArea) = _questions.Next(
            looked,
            cases,
            sketches,
            conclusions,
            reading.AnsweredAboutWeeds
        );
        return new AreaAdvice
        {
            Area = area,
            Reading = reading,
            KeepOut = _keepOuts.Of(cases, area, date),
            Findings = FindingsIn(conclusions),
            Clear = clear,
            Waiting = [.. WaitingOrder.Of(cases, sketches).Select(one => WaitingOf(one, sketches[one.Action], date))],
            Barred = [.. cases.Where(one => one.IsBarred).Select(one => BarredOf(one, date))],
            NotAdvised = NotAdvisedOf(cases),
            Cautions = CautionsIn(conclusions),
            Conflicts = [.. cases.Where(one => !one.IsBarred).Select(ConflictOf).OfType<Conflict>()],
            Gaps = [.. Gaps.In(looked, clear, _knowledge), .. LeftWeeds.Of(area, cases, clear, _knowledge)],
            NextQuestion = next,
            NextOfArea = ofArea,
            Trail = new Trail(concluded, _reasons),
        };
    }

    /// <summary>What is clear and in which order, without reasons and cautions.</summary>
    public ImmutableArray<ClearAction> OrderOf(AreaCase looked, AreaConclusions concluded)
    {
        var reading = AreaReading.Of(looked.Area, looked.Date, _knowledge);
        ImmutableArray<Escape> escapes = EscapesOfArea.Of(looked.Area.Past, _knowledge);
        return Ranking.Of(
            CasesIn(concluded.ForAdvice())
                .Where(one => one.Status is ActionStatus.Clear or ActionStatus.ClearUnless)
                .Select(one => _sketches.Of(one, reading, escapes))
        );
    }

    private static ActionCase[] CasesIn(ImmutableArray<Conclusion> conclusions) =>
        [
            .. conclusions
                .Where(one => one.Action is not null)
                .GroupBy(one => one.Action!.Id, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new ActionCase(group.Key, group)),
        ];

    private ClearAction ClearOf(ActionCase one, ClearAction sketch, DateOnly date)
    {
        CatalogueAction action = _knowledge.ActionOf(one.Action)!;
        ImmutableArray<Reason> because =
        [
            .. one
                .Supports.Concat(one.Doubts)
                .Where(argument => argument.IsCertain)
                .OrderByDescending(argument => argument.Certainty)
                .ThenBy(argument => argument)
                .Select(_reasons.Of),
        ];
        return sketch with
        {
            Unless = Unless(one),
            Doubts = one.Status == ActionStatus.Clear ? [] : [.. one.OpenDoubts.Order().Select(_reasons.Of)],
            Because = because,
            Cautions = CautionsOf(action, one, date),
            Sources = Keys([
                .. because.Select(reason => reason.Sources),
                action.Sources,
                .. sketch.Effect.Parts.Select(part => part.Sources),
            ]),
        };
    }

    // What the grower's own label changes stands first: it is said wherever the treatment is.
    private ImmutableArray<ActionCaution> CautionsOf(CatalogueAction action, ActionCase one, DateOnly date) =>
        [
            .. action is Treatment { Label: { } label }
                ? [new ActionCaution(label.Line(date), null, true)]
                : (ActionCaution[])[],
            .. action.Cautions.Select(text => new ActionCaution(text, null, true)),
            .. one
                .Cautions.Order()
                .Select(caution => ActionCaution.Of(caution.Judgement, _reasons.CautionOf(caution), caution.IsCertain))
                .DistinctBy(caution => caution.Text),
        ];

    private WaitingAction WaitingOf(ActionCase one, ClearAction sketch, DateOnly date) =>
        new(one.Action, one.Needs, [.. one.Waits.Order().Select(_reasons.Of)])
        {
            Horizon = sketch.Horizon,
            Promise = WaitingOrder.Promise(one, sketch),
            IfClear = sketch with
            {
                Status = ActionStatus.Clear,
                Certainty = one.MostCertainty,
                Cautions =
                [
                    .. CautionsOf(_knowledge.ActionOf(one.Action)!, one, date).Where(caution => caution.Decides),
                ],
            },
            For =
            [
                .. Strongest(one.Supports.Where(support => support.IsCertain)),
                .. Strongest(one.Supports.Where(support => !support.IsCertain)),
            ],
            Against = Strongest(one.Doubts.Where(doubt => doubt.IsCertain)),
        };

    private static ImmutableArray<Need> Unless(ActionCase one) =>
        one.Status == ActionStatus.Clear ? [] : [.. one.OpenDoubts.SelectMany(Evidences.OpenIn).Distinct().Order()];

    // Actions of which no rule said anything are not advised either: nothing speaks for them.
    private ImmutableArray<NotAdvisedAction> NotAdvisedOf(ActionCase[] cases)
    {
        Dictionary<string, ActionCase> known = cases.ToDictionary(one => one.Action, StringComparer.Ordinal);
        return
        [
            .. _actions
                .Where(id => !known.TryGetValue(id, out ActionCase? one) || one.Status == ActionStatus.NotAdvised)
                .Select(id =>
                    known.TryGetValue(id, out ActionCase? one)
                        ? new NotAdvisedAction(
                            id,
                            Strongest(one.Supports.Where(support => support.IsCertain)),
                            Strongest(one.Doubts)
                        )
                        : new NotAdvisedAction(id, [], [])
                ),
        ];
    }

    private ImmutableArray<Reason> Strongest(IEnumerable<Conclusion> arguments) =>
        [.. arguments.OrderByDescending(one => one.Certainty).ThenBy(one => one).Select(_reasons.Of)];

    private BarredAction BarredOf(ActionCase one, DateOnly date)
    {
        Conclusion[] bars = [.. one.CertainBars.OrderByDescending(SeverityOf).ThenBy(bar => bar)];
        return new BarredAction(
            one.Action,
            bars.Max(SeverityOf),
            [.. bars.Select(_reasons.Of)],
            Keys([.. bars.Select(bar => bar.Judgement.Sources), _knowledge.ActionOf(one.Action)!.Sources])
        )
        {
            Status = one.Status,
            Deciding = [.. Deciding(one.Status, bars, date).Select(_reasons.Of)],
            Until = one.Status == ActionStatus.NotYet ? _lifts.UntilOf(bars, date) : null,
            OtherWays = one.Status == ActionStatus.NotThisWay ? _lifts.OtherWaysOf(bars) : [],
            After = one.After,
        };
    }

    private static IEnumerable<Conclusion> Deciding(ActionStatus status, Conclusion[] bars, DateOnly date) =>
        status switch
        {
            ActionStatus.Never => bars.Where(bar => Lifts.Of(bar) is Lift.Never),
            ActionStatus.NotThisWay => bars.Where(bar => Lifts.Of(bar) is Lift.OtherWay),
            _ => Lifts.LastFirst(bars, date),
        };

    private static Severity SeverityOf(Conclusion bar) => ((Consequence.Bar)bar.Judgement.Then).Severity;

    private Conflict? ConflictOf(ActionCase one)
    {
        Reason[] support = [.. one.Supports.Where(argument => argument.IsCertain).Select(_reasons.Of)];
        Reason[] against = [.. one.Doubts.Where(argument => argument.IsCertain).Select(_reasons.Of)];
        return support.Length > 0 && against.Length > 0 ? new Conflict(one.Action, [.. support], [.. against]) : null;
    }

    private ImmutableArray<AreaFinding> FindingsIn(IEnumerable<Conclusion> conclusions) =>
        [
            .. conclusions
                .OfType<FindingConclusion>()
                .GroupBy(one => one.Finding, StringComparer.Ordinal)
                .Select(FindingOf)
                .OrderByDescending(finding => finding.IsCertain)
                .ThenByDescending(finding => finding.Certainty)
                .ThenBy(finding => finding.Id, StringComparer.Ordinal),
        ];

    private AreaFinding FindingOf(IGrouping<string, FindingConclusion> evidence)
    {
        FindingConclusion[] counted = [.. Evidences.ThatCount(evidence.ToArray())];
        return new AreaFinding(
            evidence.Key,
            _knowledge.Findings[evidence.Key].Text,
            Evidences.CertaintyOf(counted),
            counted[0].IsCertain,
            [.. counted.Order().Select(_reasons.Of)]
        );
    }

    private ImmutableArray<AreaCaution> CautionsIn(IEnumerable<Conclusion> conclusions) =>
        [
            .. conclusions
                .Where(one => one.Judgement.Then is Consequence.Caution && one.Action is null)
                .OrderBy(one => ((Consequence.Caution)one.Judgement.Then).Order ?? int.MaxValue)
                .ThenBy(one => one)
                .Select(one => new AreaCaution(_reasons.CautionOf(one).Text, one.IsCertain, _reasons.Of(one)))
                .DistinctBy(caution => (caution.Text, caution.Because.Judgement)),
        ];

    // Done for every action of every area: sorted in place, without the machinery of a query.
    private static ImmutableArray<string> Keys(ReadOnlySpan<ImmutableArray<string>> lists)
    {
        List<string> keys = [];
        foreach (ImmutableArray<string> list in lists)
            keys.AddRange(list.AsSpan());
        keys.Sort(StringComparer.Ordinal);
        int kept = 0;
        Span<string> sorted = CollectionsMarshal.AsSpan(keys);
        foreach (string key in sorted)
        {
            if (kept == 0 || sorted[kept - 1] != key)
                sorted[kept++] = key;
        }

        return [.. sorted[..kept]];
    }
}
