using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Worked;

/// <summary>The single checks on one area.</summary>
internal static class AreaChecks
{
    public static IEnumerable<Check> Of(Expectation expectation, AreaAdvice area, KnowledgeBase knowledge) =>
        [
            .. expectation.Clear.Select(id => Clear(area, id)),
            .. expectation.First.Select((id, place) => First(area, id, place)),
            .. expectation.NotClear.Select(id => NotClear(area, id)),
            .. expectation.Barred.Select(bar => Barred(area, bar)),
            .. expectation.Waiting.Select(wait => Waiting(area, wait)),
            .. expectation.Status.Select(status => Status(area, status)),
            .. expectation.Until.Select(until => Until(area, until)),
            .. expectation.Unless.Select(doubt => Unless(area, doubt)),
            .. expectation.Findings.Select(id => Finding(area, id)),
            .. expectation.Cautions.Select(id => Caution(area, id)),
            .. NoClear(area, expectation.NoClear, knowledge),
            .. NoClearReachingCrop(area, expectation.NoClearReachingCrop, knowledge),
            .. NextQuestion(area, expectation.NextQuestion),
            .. expectation.Fires.Select(id => Fires(area, id)),
            .. expectation.Holds.Select(id => Holds(area, id)),
        ];

    private static Check Clear(AreaAdvice area, string id) =>
        Met(area.StatusOf(id) == ActionStatus.Clear, $"{id} to be clear", () => Standing.Of(area, id));

    private static Check NotClear(AreaAdvice area, string id) =>
        Met(!IsClear(area, id), $"{id} not to be clear", () => Standing.Of(area, id));

    private static Check First(AreaAdvice area, string id, int place)
    {
        string? there = area.Clear.Length > place ? area.Clear[place].Action : null;
        string came = there is null
            ? $"only {area.Clear.Length} actions are clear; {Standing.Of(area, id)}"
            : $"{there} has rank {place + 1}; {Standing.Of(area, id)}";
        return Met(there == id, $"{id} to have rank {place + 1}", () => came);
    }

    private static Check Barred(AreaAdvice area, ExpectedBar bar)
    {
        bool met = area.Barred.Any(b => b.Action == bar.Action && b.Because.Any(r => r.Judgement == bar.Because));
        return Met(met, $"{bar.Action} to be barred by {bar.Because}", () => Standing.Of(area, bar.Action));
    }

    private static Check Waiting(AreaAdvice area, ExpectedWait wait)
    {
        bool met = area.Waiting.Any(w => w.Action == wait.Action && w.Needs.Any(need => need.Id == wait.Needs));
        return Met(met, $"{wait.Action} to wait for {wait.Needs}", () => Standing.Of(area, wait.Action));
    }

    private static Check Status(AreaAdvice area, ExpectedStatus expected)
    {
        ActionStatus came = area.StatusOf(expected.Action);
        return Met(ActionStatuses.Word(came) == expected.Is, $"{expected.Action} to be {expected.Is}", () =>
            Standing.Of(area, expected.Action)
        );
    }

    private static Check Until(AreaAdvice area, ExpectedUntil expected)
    {
        Until? came = area.Barred.FirstOrDefault(barred => barred.Action == expected.Action)?.Until;
        bool met =
            came is not null
            && (expected.Day is not { } day || came.Day == day)
            && (
                expected.State is not { } state
                || came.States.Any(one => one.Contains(state, StringComparison.OrdinalIgnoreCase))
            );
        string end = string.Join(
            " and ",
            new[] { expected.Day is { } on ? Figures.Day(on) : null, expected.State }.OfType<string>()
        );
        return Met(met, $"{expected.Action} to be not yet until {end}", () => Standing.Of(area, expected.Action));
    }

    private static Check Unless(AreaAdvice area, ExpectedWait expected)
    {
        bool met = area.Clear.Any(clear =>
            clear.Action == expected.Action && clear.Unless.Any(need => need.Id == expected.Needs)
        );
        return Met(met, $"{expected.Action} to be clear unless {expected.Needs} tells otherwise", () =>
            Standing.Of(area, expected.Action)
        );
    }

    private static Check Finding(AreaAdvice area, string id)
    {
        AreaFinding? finding = area.Findings.FirstOrDefault(finding => finding.Id == id);
        string came = finding is null ? "it was not concluded" : "it is only possible";
        return Met(finding is { IsCertain: true }, $"finding {id}", () => came);
    }

    private static Check Caution(AreaAdvice area, string judgement)
    {
        bool met =
            area.Cautions.Any(caution => caution.Because.Judgement == judgement)
            || area.Clear.Any(action => action.Cautions.Any(caution => caution.Judgement == judgement));
        return Met(met, $"the caution of {judgement}", () => "it was not given");
    }

    private static IEnumerable<Check> NoClear(AreaAdvice area, string? kind, KnowledgeBase knowledge)
    {
        if (kind is null)
            yield break;
        string[] clear = [.. Ids(area).Where(id => knowledge.Treatments.ContainsKey(id) == (kind == "treatment"))];
        yield return Met(clear.Length == 0, $"no {kind} to be clear", () => $"clear: {string.Join(", ", clear)}");
    }

    private static IEnumerable<Check> NoClearReachingCrop(AreaAdvice area, bool expected, KnowledgeBase knowledge)
    {
        if (!expected)
            yield break;
        string[] clear =
        [
            .. Ids(area).Where(id => knowledge.Treatments.GetValueOrDefault(id) is { ReachesCrop: true }),
        ];
        yield return Met(clear.Length == 0, "no treatment that reaches the crop to be clear", () =>
            $"clear: {string.Join(", ", clear)}"
        );
    }

    private static IEnumerable<Check> NextQuestion(AreaAdvice area, string? id)
    {
        if (id is null)
            yield break;
        string? asked = area.NextQuestion?.Id;
        yield return Met(asked == id, $"{id} to be asked next", () => $"asked: {asked ?? "nothing"}");
    }

    private static Check Fires(AreaAdvice area, string judgement)
    {
        string came = area.AllConclusions().Any(r => r.Judgement == judgement)
            ? "it is only possible"
            : "it does not hold";
        return Met(IsCertain(area, judgement), $"{judgement} to hold for sure", () => came);
    }

    private static Check Holds(AreaAdvice area, string judgement) =>
        Met(!IsCertain(area, judgement), $"{judgement} not to hold for sure", () => "it does");

    private static bool IsClear(AreaAdvice area, string id) => area.Clear.Any(action => action.Action == id);

    private static bool IsCertain(AreaAdvice area, string judgement) =>
        area.AllConclusions().Any(reason => reason.Judgement == judgement && reason.IsCertain);

    private static IEnumerable<string> Ids(AreaAdvice area) => area.Clear.Select(action => action.Action);

    private static Check Met(bool met, string expected, Func<string> came) => new(expected, met ? null : came());
}
