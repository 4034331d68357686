using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>The shares of some hours and some money, each with its plan.</summary>
/// <param name="Offers">By area, what its share takes and costs.</param>
/// <param name="Plans">By area, its plan.</param>
internal sealed record NurseryShares(ImmutableArray<Offer> Offers, ImmutableArray<PlannedWay> Plans)
{
    public decimal HoursPerWeek => Offers.Sum(offer => offer.HoursPerWeek);

    public decimal Usd => Offers.Sum(offer => offer.Usd);
}

/// <summary>
/// Areas that share hours and money. A way is put to the rules when it is chosen for the first time; where they make it
/// another, it stands with what it takes then, and the shares are chosen anew, until all that is chosen has been put to
/// them. One area alone shares with nobody: it gets the plan that it gets by itself.
/// </summary>
internal sealed class SharedNursery
{
    private const int Steps = 4;

    private readonly PlanRequest _request;
    private readonly CancellationToken _stop;
    private readonly ImmutableArray<AreaWays> _areas;
    private readonly Offer[][] _offers;
    private readonly PlannedWay?[][] _planned;

    public SharedNursery(ImmutableArray<AreaWays> areas, PlanRequest request, CancellationToken stop)
    {
        (_areas, _request, _stop) = (areas, request, stop);
        _offers = [.. areas.Select(area => area.Ways.Select(way => way.Offer).ToArray())];
        _planned = [.. _offers.Select(offers => new PlannedWay?[offers.Length])];
    }

    /// <summary>What the first hours save in an area.</summary>
    public FirstHours FirstOf(int area)
    {
        PlanCase plan = _areas[area].Plan.Case;
        WayPlan nothing = new StandingChoice(new YearRounds(null, null, null), []).Over(plan.Lies);
        Way neglected = WayCosting.Of(plan.Year, nothing).Value!;
        return FirstHours.Of(OfferOf(plan.Year, neglected).Usd, [.. _offers[area]]);
    }

    /// <summary>What an area's own plan takes.</summary>
    public Offer WantedBy(int area) => _offers[area].MinBy(offer => offer.Usd);

    /// <summary>The shares of least cost; null when none keeps the hours and the money.</summary>
    public NurseryShares? At(decimal? hours, decimal? usd)
    {
        if (_areas is [var only] && (hours ?? usd) is not null)
            return Alone(only, hours, usd);
        while (Shares.Of([.. _offers.Select(offers => offers.ToImmutableArray())], hours, usd) is { } shares)
        {
            bool isSettled = true;
            Parallel.For(0, _areas.Length, area =>
            {
                if (!Settle(area, shares.Chosen[area]))
                    isSettled = false;
            });
            if (isSettled)
            {
                return new NurseryShares(
                    [.. shares.Chosen.Select((way, area) => _offers[area][way])],
                    [.. shares.Chosen.Select((way, area) => _planned[area][way]!)]
                );
            }
        }

        return null;
    }

    /// <summary>What no sharing costs less than, US dollars.</summary>
    public decimal LeastAt(decimal? hours, decimal? usd) =>
        Shares.Of([.. _areas.Select(area => area.Floors)], hours, usd)?.Usd ?? 0;

    /// <summary>What the year costs from the fewest hours to as many as are wanted.</summary>
    public ImmutableArray<HoursWorth> Curve(decimal? usd)
    {
        ImmutableArray<ImmutableArray<Offer>> offers = [.. _offers.Select(one => one.ToImmutableArray())];
        if (Shares.Of(offers, null, usd) is not { } full)
            return [];
        decimal least = offers.Sum(area => area.Min(offer => offer.HoursPerWeek));
        return
        [
            .. Enumerable
                .Range(0, Steps + 1)
                .Select(step => least + ((full.HoursPerWeek - least) * step / Steps))
                .Select(hours => Shares.Of(offers, hours, usd))
                .OfType<Shares>()
                .Select(shares => new HoursWorth(shares.HoursPerWeek, shares.Usd))
                .DistinctBy(shares => shares.HoursPerWeek),
        ];
    }

    private NurseryShares? Alone(AreaWays only, decimal? hours, decimal? usd)
    {
        PlanCase asked = only.Plan.Case with { Request = _request with { HoursPerWeek = hours, BudgetUsd = usd } };
        return PlanSearch.Of(asked, stop: _stop).Best is { } best
            ? new NurseryShares([OfferOf(asked.Year, best.Way)], [best])
            : null;
    }

    // False when the rules made another way of it.
    private bool Settle(int area, int way)
    {
        if (_planned[area][way] is not null)
            return true;
        PlannedWay planned = _areas[area].Ways[way].Planned();
        _planned[area][way] = planned;
        Offer offer = OfferOf(_areas[area].Plan.Case.Year, planned.Way);
        bool isSame = offer == _offers[area][way];
        _offers[area][way] = offer;
        return isSame;
    }

    private static Offer OfferOf(YearCase year, Way way) =>
        new(PlanLimits.BusiestWeekHours(year, way), PlanLimits.SpentUsd(year, way), way.Usd * year.Pots / 1000);
}
