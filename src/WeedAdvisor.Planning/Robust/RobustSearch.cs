using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Robust;

/// <summary>Moves the figures behind a plan and looks whether it stays the cheapest.</summary>
public sealed class RobustSearch
{
    /// <summary>The seed that is drawn with where nobody asks for another.</summary>
    public const int UsualSeed = 1;

    /// <summary>Draws when nothing else is said.</summary>
    public const int UsualDraws = 1000;

    /// <summary>The most draws.</summary>
    public const int MostDraws = 10_000;

    private const int Halvings = 20;

    private readonly AreaPlan _plan;
    private readonly ImmutableArray<(string Kind, Way Way)> _ways;
    private readonly ImmutableArray<WayPlan> _plans;
    private readonly ImmutableArray<string> _notOpen;
    private readonly int _today;

    private RobustSearch(AreaPlan plan)
    {
        _plan = plan;
        (_ways, _notOpen) = WaysOf(plan);
        // Today's way is priced in any case: the plan's savings are against it.
        _today = _ways.ToList().FindIndex(way => ReferenceEquals(way.Way, plan.Today));
        _plans = [.. _ways.Select(way => way.Way.Plan), .. _today < 0 ? [plan.Today.Plan] : (WayPlan[])[]];
        if (_today < 0)
            _today = _plans.Length - 1;
    }

    /// <summary>The figures behind a plan and the ways that it is held against, in ordinal order of id.</summary>
    /// <param name="plan">A plan; it has a best way.</param>
    public static ImmutableArray<MovedFigure> FiguresOf(AreaPlan plan) =>
        YearFigures.Of(plan.Case.Year, new RobustSearch(plan)._plans);

    /// <summary>Moves all figures of a plan.</summary>
    /// <param name="plan">A plan; it has a best way.</param>
    /// <param name="seed">Any number: the same one gives the same figures.</param>
    /// <param name="draws">How many draws, 1 to <see cref="MostDraws"/>.</param>
    /// <param name="stop">Stops early by throwing.</param>
    public static PlanRobustness Of(
        AreaPlan plan,
        ulong seed,
        int draws = UsualDraws,
        CancellationToken stop = default
    ) => Of(plan, FiguresOf(plan), seed, draws, stop);

    /// <summary>The same with figures that are given; their order does not matter.</summary>
    public static PlanRobustness Of(
        AreaPlan plan,
        IEnumerable<MovedFigure> figures,
        ulong seed,
        int draws = UsualDraws,
        CancellationToken stop = default
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(draws, MostDraws);
        return new RobustSearch(plan).Moved(
            [.. figures.OrderBy(figure => figure.Id, StringComparer.Ordinal)],
            seed,
            draws,
            stop
        );
    }

    /// <summary>
    /// What the ways of a plan cost with some figures moved, US dollars for 1000 pots, the plan first; the others as in
    /// <see cref="PlanRobustness.Ways"/>.
    /// </summary>
    public static ImmutableArray<decimal> Prices(AreaPlan plan, IEnumerable<(MovedFigure Figure, decimal Value)> moved)
    {
        var search = new RobustSearch(plan);
        return [.. search.Usd(moved).Take(search._ways.Length)];
    }

    private PlanRobustness Moved(ImmutableArray<MovedFigure> all, ulong seed, int draws, CancellationToken stop)
    {
        ImmutableArray<decimal> usual = Usd([]);
        var options = new ParallelOptions { CancellationToken = stop };
        var ends = new Ends[all.Length];
        Parallel.For(0, all.Length, options, i =>
            ends[i] = new Ends(all[i], Usd([(all[i], all[i].Low)]), Usd([(all[i], all[i].High)]))
        );
        ImmutableArray<Ends> moving = [.. ends.Where(one => one.Moves(usual))];
        ImmutableArray<MovedFigure> figures = [.. moving.Select(one => one.Figure)];
        decimal[][] values = [.. figures.Select(figure => Drawn(figure, seed, draws))];
        var prices = new ImmutableArray<decimal>[draws];
        Parallel.For(0, draws, options, draw =>
            prices[draw] = Usd(figures.Select((figure, i) => (figure, values[i][draw])))
        );
        bool[] isLost = [.. prices.Select(usd => Cheapest(usd) != 0)];
        double[] losses =
        [
            .. prices.Where((_, draw) => isLost[draw]).Select(usd => (double)(usd[0] - usd[Cheapest(usd)])),
        ];
        var turns = new TurningPoint[moving.Length][];
        Parallel.For(0, moving.Length, options, i => turns[i] = [.. TurnsOf(moving[i])]);
        return new PlanRobustness
        {
            Plan = _plan,
            Seed = seed,
            Draws = draws,
            Figures = figures,
            Ways =
            [
                .. _ways.Select(
                    (way, i) =>
                        new RivalWay(
                            way.Kind,
                            way.Way,
                            prices.Count(usd => Cheapest(usd) == i),
                            (decimal)DrawnBand.Of(prices.Select(usd => (double)(usd[i] - usd[Cheapest(usd)]))).High
                        )
                ),
            ],
            NotOpen = _notOpen,
            Loses = losses.Length > 0 ? DrawnBand.Of(losses) : null,
            Saves = DrawnBand.Of(prices.Select(usd => (double)Saved(usd))),
            SavesUsd = Saved(usual),
            Swings =
            [
                .. moving
                    .Select(one => new FigureSwing(one.Figure, Saved(one.Low), Saved(one.High)))
                    .Where(swing => swing.SavesAtLow != Saved(usual) || swing.SavesAtHigh != Saved(usual))
                    .OrderByDescending(swing => swing.Size)
                    .ThenBy(swing => swing.Figure.Id, StringComparer.Ordinal),
            ],
            Turns = [.. turns.SelectMany(turn => turn).OrderByDescending(turn => turn.LosesUsd)],
            Leans = Leaning.Of(figures, values, isLost),
        };
    }

    private ImmutableArray<decimal> Usd(IEnumerable<(MovedFigure Figure, decimal Value)> moved) =>
        MovedYear.Usd(_plan.Case.Year, _plans, moved);

    private decimal Saved(ImmutableArray<decimal> usd) => usd[_today] - usd[0];

    // Of equally cheap ways the first.
    private int Cheapest(ImmutableArray<decimal> usd)
    {
        int cheapest = 0;
        for (int way = 1; way < _ways.Length; way++)
        {
            if (usd[way] < usd[cheapest])
                cheapest = way;
        }

        return cheapest;
    }

    // Each figure has a row of numbers of its own, so that what else is moved does not change it.
    private static decimal[] Drawn(MovedFigure figure, ulong seed, int draws)
    {
        var numbers = new DrawnNumbers(seed ^ Hash(figure.Id));
        return
        [
            .. Enumerable
                .Range(0, draws)
                .Select(_ =>
                    figure.IsCertain
                        ? figure.Usual
                        : (decimal)numbers.About((double)figure.Low, (double)figure.Usual, (double)figure.High)
                ),
        ];
    }

    // FNV-1a over the letters (Fowler, Noll, Vo; from memory): the same everywhere, unlike the hash of the platform.
    private static ulong Hash(string text) =>
        text.Aggregate(14695981039346656037UL, (hash, letter) => unchecked((hash ^ letter) * 1099511628211UL));

    private IEnumerable<TurningPoint> TurnsOf(Ends ends)
    {
        foreach (
            (decimal end, ImmutableArray<decimal> usd) in new[]
            {
                (ends.Figure.Low, ends.Low),
                (ends.Figure.High, ends.High),
            }
        )
        {
            int cheapest = Cheapest(usd);
            if (cheapest != 0)
                yield return new TurningPoint(
                    ends.Figure,
                    Switch(ends.Figure, end),
                    end == ends.Figure.High,
                    _ways[cheapest].Kind,
                    usd[0] - usd[cheapest]
                );
        }
    }

    // Between a value at which the plan is the cheapest and one at which it is not.
    private decimal Switch(MovedFigure figure, decimal end)
    {
        decimal kept = figure.Usual,
            lost = end;
        for (int i = 0; i < Halvings; i++)
        {
            decimal middle = (kept + lost) / 2;
            if (Cheapest(Usd([(figure, middle)])) == 0)
                kept = middle;
            else
                lost = middle;
        }

        return lost;
    }

    private static (ImmutableArray<(string Kind, Way Way)> Ways, ImmutableArray<string> NotOpen) WaysOf(AreaPlan plan)
    {
        Way best = (plan.Best ?? throw new ArgumentException("there is no plan to move", nameof(plan))).Way;
        List<(string Kind, Way Way)> ways = [("the plan", best)];
        var notOpen = ImmutableArray.CreateBuilder<string>();
        (string Kind, Way Way)[] others =
        [
            ("today's way", plan.Today),
            .. plan.RunnersUp.Select(one => (one.Kind, one.Way)),
            .. plan.HandsAlone is { } hands ? [("hands alone, nothing put on or laid", hands)] : ((string, Way)[])[],
        ];
        foreach ((string kind, Way way) in others)
        {
            if (ways.Any(one => IsSame(one.Way.Plan, way.Plan)))
                continue;
            if (way.Usd < best.Usd)
                notOpen.Add(kind);
            else
                ways.Add((kind, way));
        }

        return ([.. ways], notOpen.ToImmutable());
    }

    private static bool IsSame(WayPlan one, WayPlan other) =>
        one.Rounds == other.Rounds
        && one.StatedControl == other.StatedControl
        && one.Parts.Length == other.Parts.Length
        && one.Parts.All(part =>
            other.Parts.Any(same => same.Action.Id == part.Action.Id && same.Weeks.SequenceEqual(part.Weeks))
        );

    // The prices with one figure at either end.
    private sealed record Ends(MovedFigure Figure, ImmutableArray<decimal> Low, ImmutableArray<decimal> High)
    {
        public bool Moves(ImmutableArray<decimal> usual) => !Low.SequenceEqual(usual) || !High.SequenceEqual(usual);
    }
}
