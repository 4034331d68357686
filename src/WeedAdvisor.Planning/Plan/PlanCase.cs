using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Planning.Plan;

/// <summary>An area's year, ready to be planned as a whole.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Money">The year with the advice on its first day.</param>
/// <param name="Season">The preventives and what the rules allow in each week; null where they cannot be
/// planned.</param>
/// <param name="NoSeason">Why preventives cannot be planned, as sentences; empty where they can.</param>
/// <param name="Measures">What may be laid or changed once and has a figure, in ordinal order of id.</param>
public sealed record PlanCase(
    PlanRequest Request,
    MoneyCase Money,
    SeasonCase? Season,
    ImmutableArray<string> NoSeason,
    ImmutableArray<Practice> Measures
)
{
    /// <summary>The year that everything is reckoned from.</summary>
    public YearCase Year => Money.Year;

    /// <summary>Today's way, all that went on in the year before among it.</summary>
    public WayPlan Today => WaysOfYear.Today(Year);

    /// <summary>What lies on the pots already, and nothing else.</summary>
    public WayPlan Lies => Today with { Parts = [.. Today.Parts.Where(part => part.Action is Practice)] };

    /// <summary>
    /// Reads the case; refused with whole sentences when the visit or the request does not serve.
    /// </summary>
    /// <param name="advisor">Gives advice.</param>
    /// <param name="found">The area as the visit found it.</param>
    /// <param name="request">What is asked.</param>
    public static Outcome<PlanCase, string> Of(Advisor advisor, AreaCase found, PlanRequest request)
    {
        KnowledgeBase knowledge = advisor.Knowledge;
        if (Wrong(request, found.Date, knowledge) is { } wrong)
            return Outcome<PlanCase, string>.Bad(wrong);
        AreaAdvice advice = advisor.Open(found).Advice;
        Outcome<MoneyCase, string> money = MoneyCase.Of(
            advice,
            request.From ?? found.Date,
            knowledge,
            request.Prices ?? PriceBook.Of(knowledge),
            new YearTerms(request.WageUsdPerHour, request.Pots)
        );
        if (!money.IsGood)
            return Outcome<PlanCase, string>.Bad(money.Refusals);
        // The rules need not be asked of a whole year that nobody can walk through.
        if (PlanLimits.IsHopeless(request, money.Value.Year))
            return Outcome<PlanCase, string>.Good(
                new PlanCase(request, money.Value, null, [], [.. MeasuresOf(money.Value, request)])
            );
        Outcome<SeasonCase, string> season = SeasonCase.Of(
            advisor,
            found,
            new SeasonRequest
            {
                From = request.From,
                WageUsdPerHour = request.WageUsdPerHour,
                Pots = request.Pots,
                Prices = request.Prices,
                CountsWaiting = request.CountsWaiting,
                Dropped = [.. request.Without.Where(knowledge.Treatments.ContainsKey)],
                MustUse = [.. request.With.Where(knowledge.Treatments.ContainsKey)],
            }
        );
        ImmutableArray<Practice> measures = [.. MeasuresOf(money.Value, request)];
        if (request.With.FirstOrDefault(id => IsMissing(id, measures, season.Value, knowledge)) is { } missing)
            return Outcome<PlanCase, string>.Bad(
                $"{found.Area.Name}: '{missing}' must be in the plan, but it is not clear here, or nothing says what "
                    + "it does to these weeds."
            );
        return Outcome<PlanCase, string>.Good(
            new PlanCase(request, money.Value, season.Value, season.Refusals, measures)
        );
    }

    private static bool IsMissing(
        string id,
        ImmutableArray<Practice> measures,
        SeasonCase? season,
        KnowledgeBase knowledge
    ) => knowledge.Treatments.ContainsKey(id) ? season is null : measures.All(measure => measure.Id != id);

    private static IEnumerable<Practice> MeasuresOf(MoneyCase money, PlanRequest request) =>
        WayPlans
            .Comparable(money)
            .OfType<Practice>()
            .Where(practice => !request.Without.Contains(practice.Id))
            .Where(practice => WayPlans.HasEffect(money, practice))
            .Where(practice => WayCosting.Of(money.Year, WayPlans.With(money, practice)!).IsGood);

    private static string? Wrong(PlanRequest request, DateOnly visit, KnowledgeBase knowledge)
    {
        if (request.From < visit)
            return FormattableString.Invariant(
                $"The plan begins on the day of the visit, {visit:yyyy-MM-dd}, or later."
            );
        if (request.HoursPerWeek < 0)
            return "Hours a week are 0 or more.";
        if (request.BudgetUsd < 0)
            return "A budget is 0 or more.";
        if (request.With.FirstOrDefault(request.Without.Contains) is { } both)
            return $"'{both}' cannot be both in the plan and left out of it.";
        foreach (string id in request.With.Concat(request.Without))
        {
            if (knowledge.ActionOf(id) is not null)
                continue;
            string hint = NearestWord.Of(id, [.. knowledge.Treatments.Keys, .. knowledge.Practices.Keys]) is { } near
                ? $" Did you mean '{near}'?"
                : "";
            return $"There is no action '{id}'.{hint}";
        }

        return null;
    }
}
