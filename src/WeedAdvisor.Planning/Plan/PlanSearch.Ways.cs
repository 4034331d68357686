using System.Collections.Immutable;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <content>What else an area could do with fewer hours or less money, out of the same search.</content>
public sealed partial class PlanSearch
{
    private const decimal Thousand = 1000;

    private static readonly ImmutableArray<int> s_spreads = [2, 4, 8];

    /// <summary>
    /// Plans a year and tells the ways that spare hours or money besides: what no other way beats in the hours of the
    /// busiest week, money spent and cost together.
    /// </summary>
    /// <param name="plan">The case; its request sets neither hours nor budget.</param>
    /// <param name="effort">How far to go; the usual effort when left out.</param>
    /// <param name="stop">Stops early.</param>
    public static AreaWays WaysOf(PlanCase plan, PlanEffort? effort = null, CancellationToken stop = default) =>
        plan.Request is { HoursPerWeek: null, BudgetUsd: null }
            ? new PlanSearch(plan, effort ?? new PlanEffort(), stop).Ways()
            : throw new ArgumentException("the shares of an area are chosen, not asked for", nameof(plan));

    private AreaWays Ways()
    {
        AreaPlan planned = Planned();
        PricedChoice[] spread = _stop.IsCancellationRequested ? [] : Spread(_choices);
        PricedChoice[] priced = _stop.IsCancellationRequested ? _choices : WithSparing([.. _choices, .. spread]);
        AreaWay[] ways =
        [
            .. planned.Best is { } best ? [WayOf(best)] : (AreaWay[])[],
            .. priced.SelectMany(Bare).Where(way => way.Offer.Usd >= All(planned.Best?.Way.Usd ?? 0)),
        ];
        ImmutableArray<Offer> floors = Offer.Undominated(_choices.Concat(spread).Select(LeastOf), offer => offer);
        (_choices, _best) = ([], null);
        _searched.Clear();
        return new AreaWays(planned, Offer.Undominated(ways, way => way.Offer), floors);
    }

    // Where hours are shared, lumps of weeds that stand may be cleaned part by part.
    private PricedChoice[] Spread(PricedChoice[] choices)
    {
        if (!_effort.SpreadsFirstRounds)
            return [];
        ImmutableArray<PricedChoice> sparing = Offer.Undominated(choices, choice => OfferOf(choice.Bare));
        PricedChoice[] spread =
        [
            .. from weeks in s_spreads
            from choice in sparing
            where
                choice.Bare.Season.Rounds is [{ Week: 0 }, ..] && Hours(choice, 1) >= OfferOf(choice.Bare).HoursPerWeek
            select Whole(choice.Choice with { SpreadWeeks = weeks }),
        ];
        return WithFloors(spread, decimal.MaxValue);
    }

    // Preventives are also looked for where rounds and measures by themselves spare hours or money.
    private PricedChoice[] WithSparing(PricedChoice[] choices)
    {
        ImmutableArray<PricedChoice> sparing = Offer.Undominated(choices, choice => OfferOf(choice.Bare));
        return
        [
            .. choices.Select(choice => _searched.GetValueOrDefault(choice.Choice, choice)).Except(sparing),
            .. sparing.Select(WithPreventives),
        ];
    }

    private PricedChoice WithPreventives(PricedChoice choice)
    {
        if (_searched.TryGetValue(choice.Choice, out PricedChoice? known) && known.Season is not null)
            return known;
        if (_plan.Season is not { } season || _stop.IsCancellationRequested)
            return choice;
        return WithPreventives(choice, Under(season, choice));
    }

    private IEnumerable<AreaWay> Bare(PricedChoice choice)
    {
        var bare = choice with { Best = null, Season = null };
        if (HasAllAsked(bare))
            yield return WayOf(bare);
        if (choice.Best is { } best && choice.Season is not null && HasAllAsked(choice) && best.Usd < choice.Bare.Usd)
            yield return WayOf(choice);
    }

    private AreaWay WayOf(PlannedWay planned) => new(OfferOf(planned.Way), planned.Choice, planned.Way, () => planned);

    private AreaWay WayOf(PricedChoice choice) =>
        new(OfferOf(choice.BestWay), choice.Choice, choice.BestWay, () => WithDays(choice));

    private Offer OfferOf(Way way) =>
        new(PlanLimits.BusiestWeekHours(Year, way), PlanLimits.SpentUsd(Year, way), All(way.Usd));

    // No round is shorter than the walk, no preventive gives money back.
    private Offer LeastOf(PricedChoice choice) =>
        new(
            (decimal)choice.Bare.Season.Clearing.WalkingHours * Year.Pots / Thousand,
            PlanLimits.SpentUsd(Year, choice.Bare),
            All(Floor(choice))
        );

    private decimal All(decimal usd) => usd * Year.Pots / Thousand;
}
