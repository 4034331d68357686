using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>What hands cost in the plan.</summary>
/// <param name="WageUsdPerHour">What an hour costs, US dollars.</param>
/// <param name="RoundsWeeks">Weeks between weeding rounds.</param>
/// <param name="Numbers">The parameters of the weeding model.</param>
public sealed record SeasonLabour(decimal WageUsdPerHour, int RoundsWeeks, WeedingNumbers Numbers)
{
    /// <summary>
    /// What one weed costs that comes up in a week of the year, with all that descends from it, US dollars.
    /// </summary>
    /// <exception cref="InvalidOperationException">The weeding model refuses its own numbers.</exception>
    public double UsdOfOne(WeedTraits traits, int weekOfYear)
    {
        Outcome<EscapeCost, string> cost = EscapeCost.Of(
            traits,
            weekOfYear,
            RoundsWeeks,
            Numbers.Missed,
            Numbers.SmallestPulledCm,
            (double)WageUsdPerHour,
            Numbers
        );
        return cost.IsGood ? cost.Value.Usd : throw new InvalidOperationException(string.Join(' ', cost.Refusals));
    }
}
