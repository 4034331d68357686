using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Worked;

/// <summary>Something that no worked visit shows.</summary>
/// <param name="Subject">The id of a judgement, practice or treatment.</param>
/// <param name="Lacks">What is lacking: <c>fires</c>, <c>expected</c>, <c>held-back</c>, <c>clear</c>,
/// <c>expected-clear</c>, <c>barred</c> or <c>expected-barred</c>.</param>
/// <param name="Excuse">Why it need not be shown; null when it should be.</param>
public sealed record CoverageGap(string Subject, string Lacks, string? Excuse);

/// <summary>Finds what the worked visits do not show.</summary>
/// <param name="Open">What should be shown and is not.</param>
/// <param name="Excused">What need not be shown, with the reason.</param>
/// <param name="Idle">Exceptions for something that is shown after all.</param>
public sealed record CoverageGaps(
    ImmutableArray<CoverageGap> Open,
    ImmutableArray<CoverageGap> Excused,
    ImmutableArray<CoverageGap> Idle
)
{
    /// <summary>Whether something has to be done about it: a visit to write or an exception to take out.</summary>
    public bool IsEmpty => Open.IsEmpty && Idle.IsEmpty;

    /// <summary>The gaps of a coverage, sorted by what is lacking and then by id.</summary>
    public static CoverageGaps Of(Coverage coverage, ImmutableArray<NotShown> exceptions)
    {
        CoverageGap[] excuses = [.. exceptions.SelectMany(ExcusesOf)];
        CoverageGap[] gaps =
        [
            .. Lacking(coverage)
                .Select(gap => Array.Find(excuses, excuse => IsSame(excuse, gap)) ?? gap)
                .OrderBy(gap => gap.Lacks, StringComparer.Ordinal)
                .ThenBy(gap => gap.Subject, StringComparer.Ordinal),
        ];
        return new CoverageGaps(
            [.. gaps.Where(gap => gap.Excuse is null)],
            [.. gaps.Where(gap => gap.Excuse is not null)],
            [.. excuses.Where(excuse => !Array.Exists(gaps, gap => IsSame(gap, excuse)))]
        );
    }

    private static IEnumerable<CoverageGap> Lacking(Coverage coverage) =>
        [
            .. coverage.Judgements.SelectMany(LackingOf),
            .. coverage.Practices.SelectMany(action => LackingOf(action, mustBeBarred: false)),
            .. coverage.Treatments.SelectMany(action => LackingOf(action, mustBeBarred: true)),
        ];

    private static IEnumerable<CoverageGap> LackingOf(JudgementCoverage rule)
    {
        if (rule.Fires == 0)
            yield return new CoverageGap(rule.Id, "fires", null);
        else if (!rule.IsExpected)
            yield return new CoverageGap(rule.Id, "expected", null);
        if (rule is { HeldBack: 0, IsAlways: false })
            yield return new CoverageGap(rule.Id, "held-back", null);
    }

    private static IEnumerable<CoverageGap> LackingOf(ActionCoverage action, bool mustBeBarred)
    {
        if (action.ClearIn.IsEmpty)
            yield return new CoverageGap(action.Id, "clear", null);
        else if (!action.IsExpectedClear)
            yield return new CoverageGap(action.Id, "expected-clear", null);
        if (mustBeBarred && action.BarredIn.IsEmpty)
            yield return new CoverageGap(action.Id, "barred", null);
        else if (mustBeBarred && !action.IsExpectedBarred)
            yield return new CoverageGap(action.Id, "expected-barred", null);
    }

    private static IEnumerable<CoverageGap> ExcusesOf(NotShown exception) =>
        exception
            .Actions.Concat(exception.Judgements)
            .Select(id => new CoverageGap(id, exception.Lacks, exception.Because));

    private static bool IsSame(CoverageGap one, CoverageGap other) =>
        one.Subject == other.Subject && one.Lacks == other.Lacks;
}
