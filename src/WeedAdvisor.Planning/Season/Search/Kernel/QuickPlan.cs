namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// A good plan in little time: the best application is added again and again, then each is taken out once to see
/// whether others serve better. Nothing is proven about it.
/// </summary>
internal sealed class QuickPlan
{
    private const int Rounds = 3;

    private readonly CompiledSeason _season;
    private readonly Replay _replay;
    private readonly long[] _cells;
    private readonly long[] _gain;
    private readonly int[] _spots;

    /// <summary>Prepares the arrays.</summary>
    public QuickPlan(CompiledSeason season, Replay replay)
    {
        _season = season;
        _replay = replay;
        _cells = new long[(season.Weeks + season.Reach) * season.Rows];
        _gain = new long[season.Open.Length];
        _spots = new int[season.Open.Length];
    }

    /// <summary>A plan that keeps all limits and needs, and its cost; null when none was found.</summary>
    public (PlanStep[] Steps, long Cost)? Find()
    {
        List<PlanStep> steps = Extend([], without: -1);
        long? cost = _replay.CostOf(steps);
        for (int round = 0; round < Rounds; round++)
        {
            bool better = false;
            for (int at = 0; at < steps.Count; at++)
            {
                List<PlanStep> others = [.. steps];
                others.RemoveAt(at);
                others = Extend(others, without: Spot(steps[at]));
                if (_replay.CostOf(others) is { } less && !(less >= cost))
                {
                    (steps, cost, better) = (others, less, true);
                    break;
                }
            }
            if (!better)
                break;
        }
        return cost is { } found ? ([.. steps], found) : null;
    }

    private List<PlanStep> Extend(List<PlanStep> start, int without)
    {
        List<PlanStep> steps = [.. start];
        Array.Clear(_cells);
        _season.PastSaving.CopyTo(_cells, 0);
        foreach (PlanStep step in steps)
            Lanes.Raise(_cells.AsSpan(step.Week * _season.Rows), _season.SavingOf(Spot(step)));
        while (Next(steps, without) is { } next)
        {
            steps.Insert(steps.FindLastIndex(step => step.Week < next.Week) + 1, next);
            Lanes.Raise(_cells.AsSpan(next.Week * _season.Rows), _season.SavingOf(Spot(next)));
        }
        return steps;
    }

    // The application that brings most; one that costs more than it brings only when something is still needed.
    private PlanStep? Next(List<PlanStep> steps, int without)
    {
        for (int spot = 0; spot < _spots.Length; spot++)
        {
            _spots[spot] = spot;
            _gain[spot] = _season.Open[spot] && spot != without ? GainOf(spot) : long.MinValue;
        }
        Array.Sort(_spots, (one, other) =>
            _gain[one] != _gain[other] ? _gain[other].CompareTo(_gain[one]) : one.CompareTo(other)
        );
        bool done = _replay.CostOf(steps) is not null;
        foreach (int spot in _spots)
        {
            if (_gain[spot] == long.MinValue || (done && _gain[spot] <= 0))
                return null;
            var step = new PlanStep(spot / _season.Weeks, spot % _season.Weeks);
            List<PlanStep> longer = [.. steps];
            longer.Insert(longer.FindLastIndex(one => one.Week < step.Week) + 1, step);
            if (_replay.CostOf(longer, mayGoOn: true) is not null)
                return step;
        }
        return null;
    }

    private long GainOf(int spot)
    {
        ReadOnlySpan<long> saving = _season.SavingOf(spot);
        ReadOnlySpan<long> has = _cells.AsSpan(spot % _season.Weeks * _season.Rows, saving.Length);
        return saving.Length == 0 ? -_season.Cost[spot] : Lanes.Excess(saving, has) - _season.Cost[spot];
    }

    private int Spot(PlanStep step) => (step.Candidate * _season.Weeks) + step.Week;
}
