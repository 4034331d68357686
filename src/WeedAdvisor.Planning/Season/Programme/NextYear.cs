using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The year after a plan. What the plan puts on is then history: it still acts, still holds intervals, counts against
/// the limits, and the last site of action of this year is not the first of the next.
/// </summary>
public static class NextYear
{
    private const int DaysInPlan = SeasonYear.Weeks * 7;

    /// <summary>The case of the year that begins when the plan ends.</summary>
    /// <param name="advisor">The advisor.</param>
    /// <param name="found">The area as the visit found it.</param>
    /// <param name="plan">The year that was planned, taken to be carried out with nothing coming through and nothing
    /// hurt.</param>
    public static Outcome<SeasonCase, string> Of(Advisor advisor, AreaCase found, YearPlan plan) =>
        SeasonCase.Of(
            advisor,
            found with
            {
                Area = plan.Case.Area with
                {
                    Past = [.. plan.Case.Area.Past ?? [], .. plan.Uses.Select(use => use.DoneOn(use.Days.Last))],
                },
            },
            plan.Case.Request with
            {
                From = plan.Case.Year.From.AddDays(DaysInPlan),
                Closed = [],
                Uncovering = plan.Case.Request.Uncovering?.AddYears(1),
            }
        );
}
