using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
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

    private static readonly ImmutableArray<int?> s_intervals =
    [
        .. IntervalComparison.UsualIntervals.Select(weeks => (int?)weeks),
        null,
    ];

    private static readonly ImmutableArray<YearRounds> s_rounds =
    [
        .. from spring in s_intervals
        from summer in s_intervals
        from cool in s_intervals
        select new YearRounds(spring, summer, cool),
    ];

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
        PricedChoice[] priced = search.Priced(search.Choices());
        decimal cap = priced.Where(search.Keeps).Select(one => one.Bare.Usd).DefaultIfEmpty(decimal.MaxValue).Min();
        return search.WithFloors(priced, cap).Min(choice => choice.FloorUsd);
    }

    private AreaPlan Planned()
    {
        // Where the last walk alone takes too long, a few rounds tell what would do.
        if (PlanLimits.IsHopeless(_plan.Request, Year))
        {
            _all = [.. Choices().Where(one => one.Rounds.IsSteady && one.Measures.Length <= 1).Select(Bare)];
            return Nothing();
        }

        PricedChoice[] priced = Priced(Choices());
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

    // All intervals in each part of the year, over every set of measures with at most one cover.
    private IEnumerable<StandingChoice> Choices()
    {
        string[] must = [.. _plan.Request.With.Where(id => _plan.Measures.Any(measure => measure.Id == id))];
        foreach (ImmutableArray<Practice> measures in MeasureSets())
        {
            if (!must.All(id => measures.Any(measure => measure.Id == id)))
                continue;
            ImmutableArray<YearRounds> all = _effort.Rounds.IsEmpty ? s_rounds : _effort.Rounds;
            foreach (YearRounds rounds in all.Where(one => _plan.Request.Rounds.All(wish => wish.Allows(one))))
                yield return new StandingChoice(rounds, measures);
        }
    }

    private IEnumerable<ImmutableArray<Practice>> MeasureSets()
    {
        Practice[] covers = [.. _plan.Measures.Where(measure => Mulches.KindOf(measure) is not null)];
        Practice[] others = [.. _plan.Measures.Except(covers)];
        bool hasCover =
            _plan.Lies.LiesAlready is not null || _plan.Lies.Parts.Any(part => Mulches.KindOf(part.Action) is not null);
        foreach (Practice? cover in covers.Where(_ => !hasCover).Cast<Practice?>().Prepend(null))
        {
            ImmutableArray<Practice> laid = cover is null ? [] : [cover];
            yield return laid;
            foreach (Practice other in others)
                yield return [.. laid, other];
        }
    }

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

    private AreaPlan Nothing(bool isCutShort = false) =>
        new()
        {
            Case = _plan,
            Best = null,
            WouldDo = WouldDo(),
            Today = WayCosting.Of(Year, _plan.Today).Value!,
            HandsAlone = null,
            LeastUsd = 0,
            LeftOut = [],
            RunnersUp = [],
            Looked = 0,
            Searched = 0,
            IsCutShort = isCutShort,
        };

    // What keeps one of two wishes counts before what keeps none; of those alike the cheapest.
    private ImmutableArray<Way> WouldDo()
    {
        PlanRequest asked = _plan.Request;
        Way[] open = [.. _all.Where(HasAllAsked).Select(one => one.Bare)];
        var would = ImmutableArray.CreateBuilder<Way>();
        if (asked.HoursPerWeek is not null)
            Add(asked with { HoursPerWeek = null }, way => PlanLimits.BusiestWeekHours(Year, way));
        if (asked.BudgetUsd is not null)
            Add(asked with { BudgetUsd = null }, way => PlanLimits.SpentUsd(Year, way));
        return would.ToImmutable();

        void Add(PlanRequest other, Func<Way, decimal> takes)
        {
            Way[] keeping = [.. open.Where(way => PlanLimits.Keeps(other, Year, way))];
            if ((keeping.Length > 0 ? keeping : open).OrderBy(takes).ThenBy(way => way.Usd).FirstOrDefault() is { } way)
                would.Add(way);
        }
    }

    private bool HasAllAsked(PricedChoice choice) =>
        _plan.Request.With.All(id => choice.BestWay.Plan.Parts.Any(part => part.Action.Id == id));

    // The rules are asked about the plan that was found; where they leave a use no day, it is found anew.
    private PlannedWay WithDays(PricedChoice best)
    {
        if (best.Season is not { } season)
            return new PlannedWay(best.Choice, best.Bare, []) { Work = PlainWork.Of(Year, best.Choice, best.Bare) };
        Func<Inference.AreaCase, AreaAdvice> ask = season.Rules.Open();
        // Also where the search was stopped: what it found must have its days.
        var allowed = AllowedPlan.Of(season, SeasonSearch.Prepare(season.Problem), ask, Year.Knowledge, default);
        return allowed.Plan is { } plan
            ? new PlannedWay(best.Choice, season.WayOf(plan.Applications), allowed.Uses)
            {
                Work =
                [
                    .. WorkList
                        .Of(season, allowed.Uses, ask, Year.Knowledge)
                        .Where(work => !IsNotTaken(work, best.Choice)),
                ],
                Closed = ClosedSpans.Of(season, ask, Year.Knowledge),
            }
            : new PlannedWay(best.Choice, best.Bare, []) { Work = PlainWork.Of(Year, best.Choice, best.Bare) };
    }

    // The list of work names whatever is clear; of covers and feeds the plan has chosen.
    private bool IsNotTaken(PlannedWork work, StandingChoice choice) =>
        work.Kind == PlannedWorkKind.Practice
        && Year.Knowledge.Practices[work.Action!] is { Kind: "covering" or "feeding" or "substrate" }
        && choice.Measures.All(measure => measure.Id != work.Action);

    private IEnumerable<LeftOut> NotTaken(PlannedWay best, PricedChoice[] choices)
    {
        foreach (Practice measure in _plan.Measures.Where(one => !best.Choice.Measures.Contains(one)))
        {
            // At the rounds of the plan and whatever else is chosen: the best of what was priced.
            PricedChoice? with = choices
                .Where(one => one.Choice.Measures.Contains(measure))
                .OrderBy(one => _searched.GetValueOrDefault(one.Choice, one).Usd)
                .FirstOrDefault();
            if (with is null)
                continue;
            Way way = _searched.GetValueOrDefault(with.Choice, with).BestWay;
            if (!PlanLimits.Keeps(_plan.Request, Year, way))
                continue;
            decimal costs = way.UsdOf(measure.Id);
            yield return new LeftOut(measure.Id, measure.Name, costs, best.Way.Usd - (way.Usd - costs));
        }
    }

    private IEnumerable<RunnerUp> OtherKinds(PlannedWay best, PricedChoice[] bare)
    {
        var kinds = new List<(string Kind, Way? Way)>
        {
            (
                "hands alone, nothing put on or laid",
                bare.Where(one => one.Choice.Measures.IsEmpty).Select(one => one.Bare).FirstOrDefault()
            ),
            (
                "a cover or other measure, nothing put on",
                bare.Where(one => !one.Choice.Measures.IsEmpty).Select(one => one.Bare).FirstOrDefault()
            ),
            (
                "preventives, nothing laid",
                _searched
                    .Values.Where(one => one.Choice.Measures.IsEmpty && one.Best is not null)
                    .Where(one => PlanLimits.Keeps(_plan.Request, Year, one.Best!))
                    .OrderBy(one => one.Usd)
                    .Select(one => one.Best)
                    .FirstOrDefault()
            ),
        };
        return kinds
            .Where(one => one.Way is { } way && way.Usd > best.Way.Usd && !IsSame(way, best.Way))
            .Select(one => new RunnerUp(one.Kind, one.Way!, one.Way!.Usd - best.Way.Usd))
            .OrderBy(one => one.DearerUsd);
    }

    private static bool IsSame(Way one, Way other) =>
        one.Plan.Rounds == other.Plan.Rounds
        && one.Plan.Parts.Select(part => part.Action.Id).SequenceEqual(other.Plan.Parts.Select(part => part.Action.Id));

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
