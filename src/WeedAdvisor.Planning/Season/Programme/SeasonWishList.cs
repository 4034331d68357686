using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>What was asked, as wishes of the search.</summary>
internal static class SeasonWishList
{
    /// <summary>
    /// The wishes. A treatment that is no candidate need not be dropped; one that must be used is one.
    /// </summary>
    public static SeasonWishes Of(SeasonRequest request, UsualNumbers numbers, ImmutableArray<Treatment> treatments)
    {
        HashSet<string> candidates = [.. treatments.Select(treatment => treatment.Id)];
        return new SeasonWishes
        {
            Budget = request.BudgetUsd,
            AtLeast = request.AtLeast,
            AtMost = request.AtMost ?? Math.Max(numbers.Whole(UsualIds.MostApplications), request.AtLeast ?? 0),
            ClosedWeeks = request.Closed,
            Dropped = [.. request.Dropped.Where(candidates.Contains).Distinct(StringComparer.Ordinal)],
            MustUse = [.. request.MustUse.Where(candidates.Contains).Distinct(StringComparer.Ordinal)],
        };
    }
}
