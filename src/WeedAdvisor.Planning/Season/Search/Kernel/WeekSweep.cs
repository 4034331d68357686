namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// One pass through the weeks. Every partial plan is carried on without an application and with each candidate that may
/// go on; what cannot beat the best plan known is dropped, what another partial plan dominates is dropped, and when
/// there are still too many, the least promising ones, which is remembered.
/// </summary>
internal sealed class WeekSweep
{
    private readonly CompiledSeason _season;
    private readonly Prices _prices;
    private readonly LabelStore _labels;
    private readonly Dominance _dominance;
    private readonly PlanTrail _trail = new();
    private readonly int[][] _forbidden;
    private readonly CancellationToken _stop;

    /// <summary>A pass that has not begun.</summary>
    /// <param name="season">The problem.</param>
    /// <param name="prices">Prices for the bound.</param>
    /// <param name="below">Only plans that cost less than this are sought.</param>
    /// <param name="forbidden">Sequences of candidates that a plan must not have.</param>
    /// <param name="stop">Stops the pass early.</param>
    public WeekSweep(CompiledSeason season, Prices prices, long below, int[][] forbidden, CancellationToken stop)
    {
        _season = season;
        _prices = prices;
        _labels = new LabelStore(season);
        _dominance = new Dominance(season, prices, _labels);
        _forbidden = forbidden;
        _stop = stop;
        Below = below;
    }

    /// <summary>The cost of the best plan; what was asked for at the start as long as none is better.</summary>
    public long Below { get; private set; }

    /// <summary>The best plan of this pass; null when none is better than what was asked for.</summary>
    public PlanStep[]? Best { get; private set; }

    /// <summary>The least bound of the partial plans that were dropped without proof.</summary>
    public long LeastDropped { get; private set; } = long.MaxValue;

    /// <summary>How many partial plans were made.</summary>
    public long Made { get; private set; }

    /// <summary>Runs the pass, with so many partial plans at once at most.</summary>
    public void Run(int width)
    {
        int root = _labels.TakeRoot((1 << _forbidden.Length) - 1);
        Consider(root, -1, -1, -1);
        _labels.Bound[root] = BoundFrom(root, 0);
        var now = new List<int> { root };
        for (int week = 0; week < _season.Weeks && now.Count > 0; week++)
        {
            if (_stop.IsCancellationRequested)
            {
                foreach (int label in now)
                    LeastDropped = Math.Min(LeastDropped, _labels.Bound[label]);
                return;
            }
            now = Carry(now, week);
            CutTo(now, width < int.MaxValue / 2 ? 2 * width : width);
            now = _dominance.Thin(now, week + 1);
            CutTo(now, width);
        }
    }

    private List<int> Carry(List<int> now, int week)
    {
        var next = new List<int>();
        foreach (int label in now)
        {
            Follow(label, week, next);
            long bound = BoundFrom(label, week + 1);
            _labels.Bound[label] = Math.Max(bound, _labels.Bound[label]);
            if (bound >= Below)
                _labels.Drop(label);
            else
                next.Add(label);
        }
        return next;
    }

    private void Follow(int label, int week, List<int> next)
    {
        long least =
            _labels.Cost[label]
            - _prices.OpenFrom(week, _labels.SavingFrom(label, week))
            - _prices.OfRoom(_labels.Room(label));
        for (int candidate = 0; candidate < _season.Candidates; candidate++)
        {
            int spot = (candidate * _season.Weeks) + week;
            if (
                !_prices.Live[spot]
                || least - _prices.Gain[spot] - _prices.After[spot] >= Below
                || !_labels.Allows(label, candidate, week)
            )
                continue;
            int child = _labels.TakeNext(label, candidate, week);
            Made++;
            _labels.Forbidden[child] = StillForbidden(label, candidate);
            Consider(child, _labels.Step[label], candidate, week);
            long bound = BoundFrom(child, week + 1);
            if (bound >= Below)
            {
                _labels.Drop(child);
                continue;
            }
            _labels.Bound[child] = Math.Max(bound, _labels.Bound[label]);
            _labels.Step[child] = _trail.Add(_labels.Step[label], candidate, week);
            next.Add(child);
        }
    }

    // Takes the plan as it stands if it is the best so far.
    private void Consider(int label, int before, int candidate, int week)
    {
        if (_labels.Cost[label] >= Below || !_labels.MeetsNeeds(label) || IsForbidden(label))
            return;
        Below = _labels.Cost[label];
        Best = candidate < 0 ? [] : _trail.To(_trail.Add(before, candidate, week));
    }

    private int StillForbidden(int label, int candidate)
    {
        int still = 0,
            place = _labels.Applications[label];
        for (int one = 0; one < _forbidden.Length; one++)
        {
            bool begins = (_labels.Forbidden[label] & (1 << one)) != 0;
            if (begins && place < _forbidden[one].Length && _forbidden[one][place] == candidate)
                still |= 1 << one;
        }
        return still;
    }

    private bool IsForbidden(int label)
    {
        for (int one = 0; one < _forbidden.Length; one++)
        {
            if ((_labels.Forbidden[label] & (1 << one)) != 0 && _forbidden[one].Length == _labels.Applications[label])
                return true;
        }
        return false;
    }

    // No completion with applications from a week on costs less.
    private long BoundFrom(int label, int week)
    {
        long open = _prices.OpenFrom(week, _labels.SavingFrom(label, week));
        long most = 0;
        ReadOnlySpan<byte> ready = _labels.Ready(label);
        for (int candidate = 0; candidate < ready.Length; candidate++)
        {
            long best = _prices.BestFrom(Math.Max(week, ready[candidate]), candidate);
            if (best > most && _labels.RotationAllows(label, candidate))
                most = best;
        }
        return _labels.Cost[label] - open - _prices.OfRoom(_labels.Room(label)) - most;
    }

    private void CutTo(List<int> now, int width)
    {
        if (now.Count <= width)
            return;
        now.Sort(
            (one, other) =>
                _labels.Bound[one] != _labels.Bound[other]
                    ? _labels.Bound[one].CompareTo(_labels.Bound[other])
                    : _labels.Step[one].CompareTo(_labels.Step[other])
        );
        foreach (int label in now[width..])
        {
            LeastDropped = Math.Min(LeastDropped, _labels.Bound[label]);
            _labels.Drop(label);
        }
        now.RemoveRange(width, now.Count - width);
    }
}
