using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// Chooses everything of a year together: rounds in each part of the year, a cover and other measures, preventives by
/// week. Every standing choice has a floor under its price; the search goes through them from the lowest floor up,
/// finds the preventives of each exactly at what seedlings cost there, prices the whole year, and ends when no floor is
/// left that is much lower than the best price.
/// </summary>
public sealed partial class PlanSearch
{
    // Where nothing keeps the hours by itself, so many of those that come nearest are tried with preventives.
    private const int MostWithoutPlan = 40;

    private readonly PlanCase _plan;
    private readonly PlanEffort _effort;
    private readonly CancellationToken _stop;
    private readonly QuickFloor? _floor;
    private readonly Dictionary<StandingChoice, PricedChoice> _searched = [];
    private PricedChoice[] _all = [];
    private PricedChoice[] _choices = [];
    private PricedChoice? _best;

    private PlanSearch(PlanCase plan, PlanEffort effort, CancellationToken stop)
    {
        (_plan, _effort, _stop) = (plan, effort, stop);
        _floor = plan.Season is { } season ? new QuickFloor(season) : null;
    }

    /// <summary>Plans a year.</summary>
    /// <param name="plan">The case.</param>
    /// <param name="effort">How far to go; the usual effort when left out.</param>
    /// <param name="stop">Stops early: the best plan so far comes back, with the floor that is known.</param>
    public static AreaPlan Of(PlanCase plan, PlanEffort? effort = null, CancellationToken stop = default) =>
        new PlanSearch(plan, effort ?? new PlanEffort(), stop).Planned();

    private YearCase Year => _plan.Year;

    /// <summary>
    /// What no plan of a case costs less than, US dollars for 1000 pots, without looking for the plan.
    /// </summary>
    /// <param name="plan">The case.</param>
    public static decimal FloorOf(PlanCase plan)
    {
        var search = new PlanSearch(plan, new PlanEffort(), default);
        PricedChoice[] priced = search.Priced(StandingChoices.Of(plan, search._effort));
        decimal cap = priced.Where(search.Keeps).Select(one => one.Bare.Usd).DefaultIfEmpty(decimal.MaxValue).Min();
        return search.WithFloors(priced, cap).Min(choice => choice.FloorUsd);
    }

    private AreaPlan Planned()
    {
        // Where the last walk alone takes too long, a few rounds tell what would do.
        if (PlanLimits.IsHopeless(_plan.Request, Year))
        {
            _all =
            [
                .. StandingChoices
                    .Of(_plan, _effort)
                    .Where(one => one.Rounds.IsSteady && one.Measures.Length <= 1)
                    .Select(Bare),
            ];
            return Nothing();
        }

        PricedChoice[] priced = Priced(StandingChoices.Of(_plan, _effort));
        if (priced.Length == 0)
            return Nothing();
        PricedChoice[] keeping = [.. priced.Where(Keeps)];
        if (keeping.Length == 0)
        {
            SearchNearest(priced);
            if (_best is null)
                return Nothing(isCutShort: priced.Length > MostWithoutPlan);
        }

        decimal cap = keeping.Select(one => one.Bare.Usd).DefaultIfEmpty(_best?.Usd ?? decimal.MaxValue).Min();
        PricedChoice[] choices = _choices = [
            .. WithFloors(priced, cap).OrderBy(one => one.FloorUsd).ThenBy(one => one.Bare.Usd),
        ];
        PricedChoice[] bare = [.. choices.Where(Keeps).OrderBy(one => one.Bare.Usd)];
        if (_plan.Request.With.All(id => _plan.Measures.Any(measure => measure.Id == id)))
            _best = bare.FirstOrDefault() ?? _best;
        // A good plan at once, so that much need not be looked at: the rounds and measures that are best by themselves.
        Tell(choices.Length, 0, null);
        foreach (PricedChoice first in bare.Take(2))
            Search(first);
        decimal open = decimal.MaxValue;
        int searched = 0;
        bool isCutShort = false;
        foreach (PricedChoice choice in choices)
        {
            open = Floor(choice);
            if (_best is { } best && open >= Content(best.Usd))
                break;
            if (searched >= _effort.MostSearched || _stop.IsCancellationRequested)
            {
                isCutShort = true;
                break;
            }

            Search(choice);
            searched++;
            Tell(choices.Length, searched, open);
            open = decimal.MaxValue;
        }

        decimal least = Math.Min(open, _searched.Values.Select(one => one.FloorUsd).DefaultIfEmpty(open).Min());
        PlannedWay? planned = _best is null ? null : WithDays(_best);
        return new AreaPlan
        {
            Case = _plan,
            Best = planned,
            Today = WayCosting.Of(Year, _plan.Today).Value!,
            HandsAlone = bare.Where(one => one.Choice.Measures.IsEmpty).Select(one => one.Bare).FirstOrDefault(),
            LeastUsd = planned is null ? 0 : Math.Min(least, planned.Way.Usd),
            WouldDo = planned is null ? WouldDo() : [],
            LeftOut = planned is null ? [] : [.. NotTaken(planned, choices)],
            RunnersUp = planned is null ? [] : [.. OtherKinds(planned, bare)],
            Looked = choices.Length,
            Searched = searched,
            IsCutShort = isCutShort,
        };
    }

    private void Tell(int choices, int searched, decimal? least) =>
        _effort.Progress?.Report(new PlanProgress(choices, searched, All(_best?.Usd), All(least)));

    private decimal? All(decimal? usd) => usd * Year.Pots / 1000;

    private decimal Content(decimal usd) => usd * (1 - (_effort.ContentPercent / 100));

    // What was searched knows its floor better.
    private decimal Floor(PricedChoice choice) =>
        _searched.TryGetValue(choice.Choice, out PricedChoice? known) ? known.FloorUsd : choice.FloorUsd;

    private bool Keeps(PricedChoice choice) => PlanLimits.Keeps(_plan.Request, Year, choice.Bare);

    // Rounds and measures by themselves; those that cannot be kept whatever goes on are left out.
    private PricedChoice[] Priced(IEnumerable<StandingChoice> choices)
    {
        StandingChoice[] all = [.. choices];
        var bare = new PricedChoice[all.Length];
        Parallel.For(0, all.Length, i => bare[i] = Bare(all[i]));
        _all = bare;
        return [.. bare.Where(one => !PlanLimits.CannotBeKept(_plan.Request, Year, one.Bare))];
    }

    // With a price known only years that cost less are of interest.
    private PricedChoice[] WithFloors(PricedChoice[] priced, decimal cap)
    {
        if (_floor is null)
            return priced;
        var floored = new PricedChoice[priced.Length];
        Parallel.For(0, priced.Length, i => floored[i] = WithFloor(priced[i], cap));
        return floored;
    }

    // Where rounds and measures alone take too much, preventives may spare what is missing: of those first that come
    // nearest to the hours. What is found gives the floors of all others their cap.
    private void SearchNearest(PricedChoice[] priced)
    {
        PricedChoice[] nearest =
        [
            .. priced.OrderBy(one => PlanLimits.BusiestWeekHours(Year, one.Bare)).Take(MostWithoutPlan),
        ];
        foreach (PricedChoice choice in WithFloors(nearest, decimal.MaxValue))
            Search(choice);
        _searched.Clear();
    }

    private PricedChoice Whole(StandingChoice choice)
    {
        WayPlan standing = choice.Over(_plan.Lies);
        Way bare = WayCosting.Of(Year, standing).Value!;
        return new PricedChoice(choice, standing, bare, null, bare.Usd);
    }

    private PricedChoice WithFloor(PricedChoice priced, decimal cap)
    {
        // Who stops it early has no floor worked out: only that nothing costs less than nothing.
        if (_stop.IsCancellationRequested)
            return priced with { FloorUsd = 0 };
        // Rounds and measures alone may cost as much.
        if (priced.Bare.FixedUsd >= cap)
            return priced with { FloorUsd = Math.Min(priced.Bare.Usd, cap) };
        double capUsd = cap == decimal.MaxValue ? double.PositiveInfinity : (double)cap;
        var least = YearEscapes.Least(Year, priced.Bare, _floor!.MostHeld, capUsd);
        double floor = Math.Min(
            capUsd,
            _floor.Of(least, PlanLimits.MostUses(_plan.Season!, _plan.Request, priced.Bare))
        );
        return priced with { Least = least, FloorUsd = Math.Min(priced.Bare.Usd, (decimal)floor) };
    }

    // Finds the preventives of a choice, and what no year with it costs less than.
    private void Search(PricedChoice choice)
    {
        if (_searched.ContainsKey(choice.Choice))
            return;
        PricedChoice known = choice;
        if (_plan.Season is { } season && choice.Least is { } least)
        {
            SeasonCase under = Under(season, choice);
            decimal? floor = SeasonFloor.Of(under, least, _stop);
            known = choice with { FloorUsd = Math.Min(choice.Bare.Usd, Math.Max(choice.FloorUsd, floor ?? 0)) };
            if (_best is null || known.FloorUsd < Content(_best.Usd))
            {
                known = WithPreventives(known, under);
                // What breaks the budget by its tools, or the hours by its weeds, is looked for again with tools
                // that are there.
                if (!PlanLimits.Keeps(_plan.Request, Year, known.BestWay))
                    known = Better(known, WithPreventives(known, PlanLimits.WithTheToolsThere(under)));
            }
        }

        _searched[choice.Choice] = known;
        if (PlanLimits.Keeps(_plan.Request, Year, known.BestWay) && HasAllAsked(known) && !(known.Usd >= _best?.Usd))
            _best = known;
    }

    private SeasonCase Under(SeasonCase season, PricedChoice choice) =>
        PlanLimits.Under(
            PlanLimits.AfterCleaning(season.Under(choice.Standing, choice.Bare), choice.Choice.SpreadWeeks),
            _plan.Request,
            choice.Bare
        );

    private PricedChoice WithPreventives(PricedChoice choice, SeasonCase under) =>
        new Settled(under, _stop).Of(SeasonSearch.Prepare(under.Problem)) is { } found
            ? choice with
            {
                Best = under.WayOf(found.Applications),
                Season = under,
            }
            : choice;

    private PricedChoice Better(PricedChoice one, PricedChoice other) =>
        PlanLimits.Keeps(_plan.Request, Year, other.BestWay) ? other : one;

    private bool HasAllAsked(PricedChoice choice) =>
        _plan.Request.With.All(id => choice.BestWay.Plan.Parts.Any(part => part.Action.Id == id));

    // A standing choice with its price and the floor under all years with it.
    private sealed record PricedChoice(
        StandingChoice Choice,
        WayPlan Standing,
        Way Bare,
        YearEscapes? Least,
        decimal FloorUsd
    )
    {
        public Way? Best { get; init; }

        public SeasonCase? Season { get; init; }

        public Way BestWay => Best is { } best && best.Usd < Bare.Usd ? best : Bare;

        public decimal Usd => BestWay.Usd;
    }
}
