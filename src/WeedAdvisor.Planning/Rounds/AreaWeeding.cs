using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Rounds;

/// <summary>Hand weeding in one area of a visit.</summary>
/// <param name="Year">The year that it is reckoned from.</param>
/// <param name="PresentIntervalWeeks">Whole weeks between rounds at present; null when not known, or when there are
/// none.</param>
/// <param name="Assumptions">What the figures rest on, as sentences.</param>
public sealed record AreaWeeding(YearCase Year, int? PresentIntervalWeeks, ImmutableArray<string> Assumptions)
{
    /// <summary>
    /// Reads an area; refused, with what to do, when there are no pots, no weeds, no region or no wage.
    /// </summary>
    /// <param name="reading">The area as read.</param>
    /// <param name="visit">The day of the visit.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="terms">What the grower sets.</param>
    public static Outcome<AreaWeeding, string> Of(
        AreaReading reading,
        DateOnly visit,
        KnowledgeBase knowledge,
        YearTerms terms
    )
    {
        Outcome<YearCase, string> year = YearCase.Of(reading, visit, knowledge, PriceBook.Of(knowledge), terms);
        return year.IsGood
            ? Outcome<AreaWeeding, string>.Good(
                new(year.Value, reading.RoundsWeeks, [.. WeedingAssumptions.Of(year.Value)])
            )
            : Outcome<AreaWeeding, string>.Bad(year.Refusals);
    }
}
