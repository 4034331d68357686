using WeedAdvisor.Golden;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Tests.Season.Support;

namespace WeedAdvisor.Planning.Tests.Season;

public class OtherSolverTests
{
    private const double Seconds = 300;

    // CP-SAT needs minutes for a year with 30 treatments that may go on in any week. So there are years with few
    // treatments, and years with many that may go on in few weeks.
    [Theory]
    [InlineData(5, 4, 92, 20)]
    [InlineData(30, 12, 5, 10)]
    public void CP_SAT_proves_the_same_cost_of_a_year(int candidates, int weeds, int openPercent, int years)
    {
        for (int year = 0; year < Sizes.Of(years / 5, years); year++)
        {
            SeasonProblem problem = RandomSeasons.Year((ulong)year, candidates, weeds, openPercent);
            SeasonPlan plan = SeasonSearch.Prepare(problem).Solve(stop: TestContext.Current.CancellationToken).Plan!;
            Assert.True(plan.Proven);
            Assert.Equal(plan.Total, new CpSatSeason(problem).Solve(Seconds, SeasonRules.Steps(plan)));
        }
    }
}
