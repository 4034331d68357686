using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>Holds one more use against a number of uses a year. What goes on on one day is one use.</summary>
internal static class UsesLimit
{
    /// <summary>The verdict.</summary>
    public static LimitVerdict Of(
        YearlyLimit limit,
        Treatment treatment,
        ImmutableArray<CountedUse> uses,
        bool isPastTold
    )
    {
        DateOnly[] sure = [.. uses.Where(use => use.IsSure).Select(use => use.Date!.Value).Distinct().Order()];
        int may =
            uses.Select(use => use.Date).OfType<DateOnly>().Distinct().Count() + uses.Count(use => use.Date is null);
        bool isUsedUp = sure.Length >= limit.Most,
            mayBe = may >= limit.Most || !isPastTold;
        Truth holds =
            isUsedUp && !limit.IsStandIn ? Truth.Yes
            : isUsedUp || mayBe ? Truth.NotKnown
            : Truth.No;
        var verdict = new LimitVerdict(
            LimitKind.Uses,
            limit.Active,
            holds,
            [],
            null,
            holds == Truth.No ? "" : Says(limit, treatment, uses, isPastTold)
        )
        {
            Yearly = limit,
        };
        return holds switch
        {
            Truth.Yes => verdict with { Until = Over(limit, sure) },
            Truth.NotKnown => verdict with { Needs = LimitNeeds.Of(!isUsedUp, limit.IsStandIn ? treatment : null) },
            _ => verdict,
        };
    }

    // The day on which so many are twelve months old that one more has room.
    private static DateOnly? Over(YearlyLimit limit, DateOnly[] sure)
    {
        int last = sure.Length - (int)decimal.Floor(limit.Most);
        return last < sure.Length ? YearWindow.Over(sure[last], limit.ByCalendarYear) : null;
    }

    private static string Says(YearlyLimit limit, Treatment treatment, ImmutableArray<CountedUse> uses, bool isPastTold)
    {
        string products = limit.Active is { } active ? $"Products with {active}" : treatment.Name;
        string when = uses.IsEmpty ? "" : LimitWords.Days(uses.Select(use => use.Date));
        if (limit.IsStandIn)
        {
            string did = isPastTold ? $"they went on on {when}" : "what went on here before is not told";
            return $"How often products with {limit.Active} may go on in a year is not known here: one use counts, and "
                + $"{did}";
        }

        string often =
            $"{products} may go on {LimitWords.Times(limit.Most)} {LimitWords.Year(limit)}"
            + LimitWords.Mark(limit.IsFromMemory);
        return !isPastTold ? $"{often}, and what went on here before is not told"
            : uses.All(use => use.IsSure) ? $"{often}, and did: {when}"
            : $"{often}, and may have: {when}";
    }
}
