using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// What it is worth to keep what grows round about from seeding. Money is US dollars for 1000 pots.
/// </summary>
/// <param name="Action">Id of the practice.</param>
/// <param name="Times">How often it is done in the year.</param>
/// <param name="CostsUsd">What that costs.</param>
/// <param name="SavesUsd">By how much the year is cheaper then: by the plan, or by one of its rivals where that then
/// costs less.</param>
public sealed record SourceCleaned(string Action, int Times, decimal CostsUsd, decimal SavesUsd)
{
    private const string Mown = "mown",
        MowAround = "mow-surroundings";
    private const decimal Thousand = 1000;

    /// <summary>The worth; null where nothing seeds round about.</summary>
    /// <param name="advisor">Gives advice.</param>
    /// <param name="found">The area as the visit found it.</param>
    /// <param name="plan">Its plan, whose rivals may do better where fewer weeds fly in.</param>
    /// <param name="best">The way that is taken: the plan's own, or that of its share.</param>
    /// <param name="limits">The hours and money that a rival must keep: those asked for, or those of the share.</param>
    public static SourceCleaned? Of(Advisor advisor, AreaCase found, AreaPlan plan, PlannedWay best, PlanRequest limits)
    {
        YearCase year = plan.Case.Year;
        if (
            !year.Reading.IsSeededInto
            || advisor.Knowledge.Practices.GetValueOrDefault(MowAround) is not { } mowing
            || WayCosting.CostOf(year, new WayPart(mowing, [])).Value is not { } cost
        )
            return null;
        AreaCase with = found with
        {
            Area = found.Area.Taking((QuestionIds.Surroundings, new Answer.Words(WordSet.Of(Mown)))),
        };
        Outcome<MoneyCase, string> clean = MoneyCase.Of(
            advisor.Open(with).Advice,
            year.Day,
            advisor.Knowledge,
            year.Prices,
            new YearTerms(plan.Case.Request.WageUsdPerHour, plan.Case.Request.Pots)
        );
        if (!clean.IsGood)
            return null;
        decimal least = plan
            .RunnersUp.Select(one => one.Way.Plan)
            .Prepend(best.Way.Plan)
            .Select(way => WayCosting.Of(clean.Value.Year, way).Value!)
            .Where(way => way.Plan == best.Way.Plan || PlanLimits.Keeps(limits, year, way))
            .Min(way => way.Usd);
        int times = year.Usual.Whole(UsualIds.Mowings);
        return new SourceCleaned(
            MowAround,
            times,
            cost.Usd(year.WageUsd) * times * Thousand / year.Pots,
            best.Way.Usd - least
        );
    }
}
