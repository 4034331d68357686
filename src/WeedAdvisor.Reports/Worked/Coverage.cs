using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Worked;

/// <summary>How much of the knowledge the worked visits show at work.</summary>
/// <param name="Visits">How many worked visits there are.</param>
/// <param name="Judgements">Every judgement, in ordinal order of id.</param>
/// <param name="Practices">Every practice, in ordinal order of id.</param>
/// <param name="Treatments">Every treatment, in ordinal order of id.</param>
public sealed record Coverage(
    int Visits,
    ImmutableArray<JudgementCoverage> Judgements,
    ImmutableArray<ActionCoverage> Practices,
    ImmutableArray<ActionCoverage> Treatments
)
{
    /// <summary>Advises on every worked visit and counts what comes.</summary>
    /// <param name="knowledge">The knowledge with its worked visits.</param>
    /// <param name="advise">Gives the advice on a visit.</param>
    public static Coverage Of(KnowledgeBase knowledge, Func<Visit, VisitAdvice> advise)
    {
        ShownByVisit[] shown =
        [
            .. knowledge.WorkedVisits.Select(worked => ShownByVisit.Of(worked, advise(worked.Visit))),
        ];
        return new Coverage(
            shown.Length,
            [.. knowledge.Judgements.Select(rule => Of(rule, shown))],
            [.. knowledge.Practices.Keys.Select(id => Of(id, shown))],
            [.. knowledge.Treatments.Keys.Select(id => Of(id, shown))]
        );
    }

    private static JudgementCoverage Of(Judgement rule, ShownByVisit[] shown) =>
        new(
            rule.Id,
            shown.Count(one => one.Fires.Contains(rule.Id)),
            shown.Count(one => one.IsHeldBack(rule.Id)),
            Array.Exists(shown, one => one.Expected.Contains(rule.Id)),
            rule.When.All(IsCatalogueOnly)
        );

    private static ActionCoverage Of(string id, ShownByVisit[] shown) =>
        new(
            id,
            [.. shown.Where(one => one.Clear.Contains(id)).Select(one => one.Visit)],
            [.. shown.Where(one => one.Barred.Contains(id)).Select(one => one.Visit)],
            Array.Exists(shown, one => one.ExpectedClear.Contains(id)),
            Array.Exists(shown, one => one.ExpectedBarred.Contains(id))
        );

    // A rule about records of the catalogue alone holds in every area, so no visit can hold it back.
    private static bool IsCatalogueOnly(Pattern pattern) =>
        pattern is Pattern.Fact { Kind: FactKind.Practice or FactKind.Treatment or FactKind.Action };
}

/// <summary>How the worked visits show a judgement.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Fires">In how many visits it holds certainly, in one area at least.</param>
/// <param name="HeldBack">In how many visits it does not hold certainly, in one area at least.</param>
/// <param name="IsExpected">Whether a visit says that it must hold: in <c>fires</c>, <c>barred</c> or
/// <c>cautions</c>.</param>
/// <param name="IsAlways">Whether it speaks of the catalogue alone and so holds everywhere.</param>
public sealed record JudgementCoverage(string Id, int Fires, int HeldBack, bool IsExpected, bool IsAlways);

/// <summary>How the worked visits show an action.</summary>
/// <param name="Id">Its id.</param>
/// <param name="ClearIn">The visits in which it is clear, in one area at least.</param>
/// <param name="BarredIn">The visits in which it is barred, in one area at least.</param>
/// <param name="IsExpectedClear">Whether a visit says that it must be clear.</param>
/// <param name="IsExpectedBarred">Whether a visit says that it must be barred, and why.</param>
public sealed record ActionCoverage(
    string Id,
    ImmutableArray<string> ClearIn,
    ImmutableArray<string> BarredIn,
    bool IsExpectedClear,
    bool IsExpectedBarred
);
