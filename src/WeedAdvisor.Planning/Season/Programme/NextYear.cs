using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The year after a plan. What the plan puts on is then history: it still acts, still holds intervals, counts against the
/// limits, and the last site of action of this year is not the first of the next.
/// </summary>
public static class NextYear
{
    private const int DaysInPlan = SeasonYear.Weeks * 7;

    /// <summary>The case of the year that begins when the plan ends.</summary>
    /// <param name="advisor">The advisor.</param>
    /// <param name="found">The area as the visit found it.</param>
    /// <param name="season">The year that was planned.</param>
    /// <param name="plan">Its plan, taken to be carried out with nothing coming through and nothing hurt.</param>
    public static WeedingOutcome<SeasonCase> Of(Advisor advisor, AreaCase found, SeasonCase season, SeasonPlan plan) => SeasonCase.Of(
        advisor,
        found with
        {
            Area = season.Area with
            {
                Past =
                [
                    .. season.Area.Past ?? [],
                    .. plan.Applications.Select(one => new PastApplication(one.Name, season.Year.DayOf(one.Week), "clean", WordSet.Empty)),
                ],
            },
        },
        season.Request with
        {
            From = season.Year.From.AddDays(DaysInPlan),
            Closed = [],
            Uncovering = season.Request.Uncovering?.AddYears(1),
        });
}
