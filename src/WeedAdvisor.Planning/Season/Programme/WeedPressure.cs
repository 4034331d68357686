using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>A weed of the plan, week by week, for 1000 pots.</summary>
/// <param name="Weed">Its record.</param>
/// <param name="Origin">Why it is in the plan.</param>
/// <param name="Emergence">Seedlings that come up in each week if no preventive stops them and there is room.</param>
/// <param name="EscapeUsd">What they cost, with all that descends from them, US dollars by week of coming up, near the
/// plan that was found.</param>
public sealed record WeedPressure(
    Weed Weed,
    WeedOrigin Origin,
    ImmutableArray<double> Emergence,
    ImmutableArray<decimal> EscapeUsd
)
{
    // Money of the search has four places.
    private const int Places = 4;

    /// <summary>The weeds of a year that come up in it: those told first, the dearest of them first.</summary>
    internal static ImmutableArray<WeedPressure> Of(YearCase year, WayPlan standing, YearEscapes escapes) =>
        [
            .. year
                .Weeds.Counted.Select((weed, i) => Of(year, standing, weed, escapes.Usd[i]))
                .Where(one => one.Emergence.Any(seedlings => seedlings > 0))
                .OrderBy(one => one.Origin == WeedOrigin.BlownIn)
                .ThenByDescending(one => one.EscapeUsd.Sum())
                .ThenBy(one => one.Weed.Id, StringComparer.Ordinal),
        ];

    /// <summary>The same weeds in the same order at other costs.</summary>
    internal static ImmutableArray<WeedPressure> At(
        ImmutableArray<WeedPressure> weeds,
        YearCase year,
        YearEscapes escapes
    )
    {
        var placeOf = year.Weeds.Counted.Select((weed, i) => (weed.Weed.Id, i)).ToDictionary(StringComparer.Ordinal);
        return [.. weeds.Select(weed => weed with { EscapeUsd = Money(escapes.Usd[placeOf[weed.Weed.Id]]) })];
    }

    /// <summary>The same weeds in the same order under other standing measures.</summary>
    internal static ImmutableArray<WeedPressure> Under(
        ImmutableArray<WeedPressure> weeds,
        YearCase year,
        WayPlan standing
    )
    {
        var byId = year.Weeds.Counted.ToDictionary(weed => weed.Weed.Id, StringComparer.Ordinal);
        return [.. weeds.Select(weed => Of(year, standing, byId[weed.Weed.Id], [.. new double[year.Weeks]]))];
    }

    private static WeedPressure Of(YearCase year, WayPlan standing, YearWeed weed, ImmutableArray<double> usd)
    {
        ImmutableArray<WayPlan> parts = SpreadRound.PartsOf(standing);
        double[][] through = [.. parts.Select(part => WayControl.Through(year, part, weed, Variation.None))];
        int first = WeedTraits.WeekOf(year.Day);
        return new WeedPressure(
            weed.Weed,
            weed.Origin,
            [
                .. Enumerable
                    .Range(0, year.Weeks)
                    .Select(week =>
                        through.Average(part => part[week])
                        * weed.Traits.ExpectedEmergence((first + week) % WeedTraits.WeeksInYear)
                    ),
            ],
            Money(usd)
        );
    }

    private static ImmutableArray<decimal> Money(ImmutableArray<double> usd) =>
        [.. usd.Select(one => Math.Round((decimal)one, Places))];
}
