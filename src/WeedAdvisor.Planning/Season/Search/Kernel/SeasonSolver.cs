namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// Tunes prices and sweeps through the weeks, first narrowly to find a good plan, then as widely as the proof needs.
/// </summary>
internal sealed class SeasonSolver
{
    private const int LastSteps = 100;
    private const int FewerWhenNear = 3;
    private static readonly (int Steps, int Width)[] s_passes = [(150, 16), (100, 400)];

    private readonly PriceTuner _tuner;
    private readonly Replay _replay;
    private readonly QuickPlan _quick;
    private readonly bool _isNear;

    /// <summary>A solver for a problem.</summary>
    /// <param name="season">The problem.</param>
    /// <param name="near">A solver of a similar problem, whose prices are a good start.</param>
    public SeasonSolver(CompiledSeason season, SeasonSolver? near = null)
    {
        Season = season;
        _isNear = near is not null;
        _replay = new Replay(season);
        _quick = new QuickPlan(season, _replay);
        _tuner = new PriceTuner(season, near?._tuner);
    }

    /// <summary>The problem.</summary>
    public CompiledSeason Season { get; }

    /// <summary>Searches.</summary>
    /// <param name="forbidden">Sequences of candidates that the plan must not have.</param>
    /// <param name="known">A plan that may be a good start; ignored where it breaks a limit.</param>
    /// <param name="width">The most partial plans at once.</param>
    /// <param name="stop">Stops early.</param>
    public Solution Solve(int[][] forbidden, PlanStep[]? known, int width, CancellationToken stop)
    {
        long below = Season.Ceiling,
            bound = 0,
            made = 0;
        PlanStep[]? best = null;
        if (forbidden.Length == 0)
        {
            if (known is not null && _replay.CostOf(known) is { } cost && cost < below)
                (best, below) = (known, cost);
            if (_quick.Find() is { } quick && quick.Cost < below)
                (best, below) = quick;
        }
        foreach ((int steps, int most) in s_passes.Where(pass => pass.Width < width).Append((LastSteps, width)))
        {
            // Without a plan to aim at, prices from an earlier search are better than more steps.
            if (!stop.IsCancellationRequested && (best is not null || !_tuner.IsTuned))
                _tuner.Tune(
                    _isNear ? steps / FewerWhenNear : steps,
                    best is null ? null : Season.CostOfNothing - below
                );
            var prices = new Prices(Season, _tuner.BestCells, _tuner.BestRows, below);
            var sweep = new WeekSweep(Season, prices, below, forbidden, stop);
            sweep.Run(most);
            made += sweep.Made;
            best = sweep.Best ?? best;
            below = sweep.Below;
            bound = Math.Max(bound, Math.Min(below, sweep.LeastDropped));
            if (bound >= below || stop.IsCancellationRequested)
                break;
        }
        return new Solution(best, below, bound, bound >= below, made);
    }
}

/// <summary>What a search came to.</summary>
/// <param name="Steps">The best plan; null when there is none.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Bound">No plan costs less.</param>
/// <param name="Proven">Whether nothing is left to look at.</param>
/// <param name="Made">How many partial plans were made.</param>
internal sealed record Solution(PlanStep[]? Steps, long Cost, long Bound, bool Proven, long Made);
