using System.Collections.Immutable;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Money;

/// <summary>The weeks in which a preemergence goes on in a year.</summary>
/// <param name="Weeks">Weeks of the plan, from 0, in order.</param>
/// <param name="IsCapped">Whether a limit of the record ends it before the weeds do.</param>
public sealed record Programme(ImmutableArray<int> Weeks, bool IsCapped)
{
    private const decimal DaysInWeek = 7;

    /// <summary>
    /// As often as its control runs out while weeds come up, no sooner than the record lets it go on again, and no more
    /// often than its uses a year or its yearly amount allow.
    /// </summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="firstWeek">The first week of the plan in which it may go on.</param>
    /// <param name="comesUp">For each week of the plan, whether any weed comes up.</param>
    /// <param name="residualWeeks">Weeks of control of one use, more than 0.</param>
    /// <param name="usual">What is taken where the record gives neither a number nor an amount.</param>
    public static Programme Of(
        Treatment treatment,
        int firstWeek,
        ImmutableArray<bool> comesUp,
        decimal residualWeeks,
        UsualNumbers usual
    )
    {
        int most = MostUses(treatment, usual);
        decimal wait = Math.Max(residualWeeks, (treatment.RepeatAfterDays ?? 0) / DaysInWeek);
        int step = Math.Max(1, (int)Math.Round(wait, MidpointRounding.AwayFromZero));
        var weeks = ImmutableArray.CreateBuilder<int>();
        for (int week = Math.Max(0, firstWeek); week < comesUp.Length; week++)
        {
            if (!comesUp[week] || (weeks.Count > 0 && week < weeks[^1] + step))
                continue;
            if (weeks.Count == most)
                return new Programme(weeks.ToImmutable(), IsCapped: true);
            weeks.Add(week);
        }

        return new Programme(weeks.ToImmutable(), IsCapped: false);
    }

    /// <summary>
    /// Uses a year that the record allows: its own number, and the yearly amount over the middle of the published
    /// rates. At least one; the usual number when it gives neither.
    /// </summary>
    public static int MostUses(Treatment treatment, UsualNumbers usual)
    {
        decimal? uses = treatment.UsesPerYear;
        decimal[] rates = [.. treatment.Rates.Select(rate => rate.AiLbPerAcre?.Middle).OfType<decimal>()];
        if (treatment.YearlyLimitKgAiHa is { } limit && rates.Length > 0 && rates.Average() is > 0 and { } rate)
            uses = Math.Min(uses ?? decimal.MaxValue, limit / (rate * ActiveAmounts.KgPerHaInLbPerAcre));
        return (int)Math.Clamp(Math.Floor(uses ?? usual[UsualIds.UnknownUses]), 1, WeedTraits.WeeksInYear);
    }
}
