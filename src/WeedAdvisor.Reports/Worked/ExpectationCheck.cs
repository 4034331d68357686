using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Worked;

/// <summary>
/// Holds the advice on worked visits against what they expect. Every single thing expected counts as one, so that one
/// failure does not hide another.
/// </summary>
public static class ExpectationCheck
{
    /// <summary>Advises on every worked visit and checks what comes.</summary>
    /// <param name="knowledge">The knowledge with its worked visits.</param>
    /// <param name="advise">Gives the advice on a visit.</param>
    public static ExpectationResult Run(KnowledgeBase knowledge, Func<Visit, VisitAdvice> advise)
    {
        int passed = 0;
        var failures = ImmutableArray.CreateBuilder<ExpectationFailure>();
        foreach (WorkedVisit worked in knowledge.WorkedVisits.Where(worked => !worked.Expectations.IsEmpty))
        {
            ExpectationResult result = Check(worked, advise(worked.Visit), knowledge);
            passed += result.Passed;
            failures.AddRange(result.Failures);
        }

        return new ExpectationResult(passed, failures.ToImmutable());
    }

    /// <summary>Checks the advice on one worked visit.</summary>
    public static ExpectationResult Check(WorkedVisit worked, VisitAdvice advice, KnowledgeBase knowledge)
    {
        int passed = 0;
        var failures = ImmutableArray.CreateBuilder<ExpectationFailure>();
        foreach (Expectation expectation in worked.Expectations)
        {
            foreach (Check check in ChecksOf(expectation, advice, knowledge))
            {
                if (check.Came is { } came)
                    failures.Add(new ExpectationFailure(expectation.Where, expectation.Area, check.Expected, came));
                else
                    passed++;
            }
        }

        return new ExpectationResult(passed, failures.ToImmutable());
    }

    private static IEnumerable<Check> ChecksOf(Expectation expectation, VisitAdvice advice, KnowledgeBase knowledge) =>
        advice.Areas.FirstOrDefault(area => area.Area.Id == expectation.Area) is { } area
            ? AreaChecks.Of(expectation, area, knowledge)
            : [new Check("advice for this area", "the visit has no such area")];
}

/// <summary>One thing expected, and what came instead; null when it was met.</summary>
internal readonly record struct Check(string Expected, string? Came);
