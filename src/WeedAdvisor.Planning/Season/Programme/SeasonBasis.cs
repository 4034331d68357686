using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>What a plan cannot do without, read from the visit, the request and the knowledge.</summary>
/// <param name="Region">The region.</param>
/// <param name="Sums">The year that everything is reckoned from.</param>
internal sealed record SeasonBasis(Region Region, YearCase Sums)
{
    /// <summary>The basis, or all that is missing.</summary>
    public static (SeasonBasis? Basis, ImmutableArray<string> Refusals) Of(
        KnowledgeBase knowledge,
        AreaReading area,
        DateOnly from,
        SeasonRequest request
    )
    {
        ImmutableArray<string> wrongs = [.. Wrongs(knowledge, area, request)];
        if (!wrongs.IsEmpty)
            return (null, wrongs);
        Outcome<YearCase, string> sums = YearCase.Of(
            area,
            from,
            knowledge,
            PricesOf(knowledge, request),
            new YearTerms(request.WageUsdPerHour, request.Pots) { IntervalWeeks = request.RoundsWeeks }
        );
        return sums.IsGood
            ? (new SeasonBasis(area.Region!, sums.Value), [])
            : (null, [.. sums.Refusals.Select(why => $"{area.Area.Name}: {why}")]);
    }

    private static IEnumerable<string> Wrongs(KnowledgeBase knowledge, AreaReading reading, SeasonRequest request)
    {
        VisitArea area = reading.Area;
        if (!reading.HasPots)
            yield return $"{area.Name}: No pots stand here. The plan follows weeds in pots, so there is none for this "
                + $"area.";
        if (reading.Region is null)
            yield return $"{area.Name}: the region is not answered, so nobody can say when weeds come up. Answer it "
                + $"and ask again.";
        if (area.Weeds is null)
            yield return $"{area.Name}: no weed is named. Name those seen, or those expected from last year.";
        if (area.Past is null)
            yield return $"{area.Name}: nothing is said of earlier applications. Say what went on, or that nothing "
                + $"did: intervals and limits hang on it.";
        foreach (string why in WageOf(knowledge, reading, request).Refusals)
            yield return $"{area.Name}: {why}";
        if (request.RoundsWeeks is < 1 or > WeedingPlan.LongestInterval)
            yield return "There are 1 to 52 whole weeks between two weeding rounds.";
        if (request.Closed.Any(week => week is < 0 or >= Year.SeasonYear.Weeks))
            yield return "Weeks of the plan are 0 to 51.";
        if (request.BudgetUsd < 0)
            yield return "A budget is 0 or more.";
        if (request.AtLeast > request.AtMost)
            yield return FormattableString.Invariant(
                $"At least {request.AtLeast} and at most {request.AtMost} applications cannot both be."
            );
        foreach (
            string id in request.Dropped.Concat(request.MustUse).Where(id => !knowledge.Treatments.ContainsKey(id))
        )
        {
            string hint = NearestWord.Of(id, knowledge.Treatments.Keys) is { } near ? $" Did you mean '{near}'?" : "";
            yield return $"There is no treatment '{id}'.{hint}";
        }
    }

    private static Outcome<Told<decimal>, string> WageOf(
        KnowledgeBase knowledge,
        AreaReading area,
        SeasonRequest request
    ) => Wage.Of(area, PricesOf(knowledge, request).Find, request.WageUsdPerHour);

    private static PriceBook PricesOf(KnowledgeBase knowledge, SeasonRequest request) =>
        request.Prices ?? PriceBook.Of(knowledge);
}
