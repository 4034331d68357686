using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Worked;

/// <summary>What one worked visit shows: the union over its areas.</summary>
internal sealed class ShownByVisit
{
    private readonly HashSet<string>[] _firesByArea;

    private ShownByVisit(WorkedVisit worked, VisitAdvice advice)
    {
        Visit = worked.Visit.Id;
        _firesByArea = [.. advice.Areas.Select(FiresIn)];
        Fires = Union(_firesByArea);
        Expected = Union(worked.Expectations.Select(ExpectedOf));
        ExpectedClear = Union(
            worked.Expectations.Select(one =>
                one.Clear.Concat(one.First)
                    .Concat(one.Unless.Select(doubt => doubt.Action))
                    .Concat(
                        one.Status.Where(status => status.Is == ActionStatuses.Word(ActionStatus.Clear))
                            .Select(status => status.Action)
                    )
            )
        );
        ExpectedBarred = Union(worked.Expectations.Select(one => one.Barred.Select(bar => bar.Action)));
        Clear = Union(advice.Areas.Select(area => area.Clear.Select(one => one.Action)));
        Barred = Union(advice.Areas.Select(area => area.Barred.Select(one => one.Action)));
    }

    /// <summary>The visit's id.</summary>
    public string Visit { get; }

    /// <summary>Judgements that hold certainly.</summary>
    public HashSet<string> Fires { get; }

    /// <summary>Judgements that the visit says must hold.</summary>
    public HashSet<string> Expected { get; }

    /// <summary>Actions that the visit says must be clear.</summary>
    public HashSet<string> ExpectedClear { get; }

    /// <summary>Actions that the visit says must be barred.</summary>
    public HashSet<string> ExpectedBarred { get; }

    /// <summary>Actions that are clear.</summary>
    public HashSet<string> Clear { get; }

    /// <summary>Actions that are barred.</summary>
    public HashSet<string> Barred { get; }

    /// <summary>What the visit shows with this advice.</summary>
    public static ShownByVisit Of(WorkedVisit worked, VisitAdvice advice) => new(worked, advice);

    /// <summary>Whether the judgement does not hold certainly in one of the areas.</summary>
    public bool IsHeldBack(string judgement) => Array.Exists(_firesByArea, fires => !fires.Contains(judgement));

    private static HashSet<string> FiresIn(AreaAdvice area) =>
        area.AllConclusions()
            .Where(reason => reason.IsCertain)
            .Select(reason => reason.Judgement)
            .ToHashSet(StringComparer.Ordinal);

    private static IEnumerable<string> ExpectedOf(Expectation expectation) =>
        [.. expectation.Fires, .. expectation.Cautions, .. expectation.Barred.Select(bar => bar.Because)];

    private static HashSet<string> Union(IEnumerable<IEnumerable<string>> sets) =>
        sets.SelectMany(set => set).ToHashSet(StringComparer.Ordinal);
}
