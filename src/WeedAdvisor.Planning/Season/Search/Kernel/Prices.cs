namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// A price for each cell and each resource, and what follows from them: a bound on what a partial plan can still save.
/// Any prices of at least 0 give a valid bound; good ones give a tight bound. docs/season-search.md has the proof.
/// </summary>
internal sealed class Prices
{
    private const int FixedPoint = 16;

    private readonly CompiledSeason _season;
    private readonly long[] _suffix;
    private readonly long[] _best;
    private readonly long[] _rowPrice;

    /// <summary>Prices with their tables.</summary>
    /// <param name="season">The problem.</param>
    /// <param name="cells">A price for each cell.</param>
    /// <param name="rows">A price for each resource, per unit of it.</param>
    /// <param name="below">Only plans that cost less than this matter.</param>
    public Prices(CompiledSeason season, ReadOnlySpan<double> cells, ReadOnlySpan<double> rows, long below)
    {
        _season = season;
        Cell = new long[(season.Weeks + season.Reach) * season.Rows];
        for (int cell = 0; cell < cells.Length; cell++)
            Cell[cell] = (long)Math.Round(Math.Max(0, cells[cell]));
        _rowPrice = new long[season.Resources.Length];
        for (int row = 0; row < rows.Length; row++)
        {
            // Whole units for a need: its price must come out the same whether taken once or use by use.
            _rowPrice[row] = season.Resources[row].IsNeed
                ? (long)Math.Round(Math.Max(0, rows[row])) << FixedPoint
                : (long)Math.Round(Math.Max(0, rows[row]) * (1 << FixedPoint));
        }
        _suffix = new long[season.Weeks + 1];
        for (int week = season.Weeks - 1; week >= 0; week--)
            _suffix[week] = _suffix[week + 1] + Cell.AsSpan(week * season.Rows, season.Rows).ToArray().Sum();
        Gain = new long[season.Open.Length];
        for (int spot = 0; spot < Gain.Length; spot++)
            Gain[spot] = season.Open[spot] ? GainOf(spot) : 0;
        After = new long[Gain.Length];
        _best = new long[(season.Weeks + 1 + CompiledSeason.Never) * season.Candidates];
        Live = [.. season.Open];
        FillBack();
        Narrow(below);
        FillBack();
    }

    /// <summary>The price of each cell; zeros stand beyond the last week.</summary>
    public long[] Cell { get; }

    /// <summary>What each spot brings at these prices, its cost and what it uses taken off.</summary>
    public long[] Gain { get; }

    /// <summary>The most that can follow after a spot.</summary>
    public long[] After { get; }

    /// <summary>Spots that a plan cheaper than asked can still hold.</summary>
    public bool[] Live { get; }

    /// <summary>What the cells from a week on are priced at beyond what a plan already saves there.</summary>
    /// <param name="week">The week.</param>
    /// <param name="saving">What the plan saves from that week on, as far as it reaches.</param>
    public long OpenFrom(int week, ReadOnlySpan<long> saving) =>
        _suffix[week] - Lanes.SumOfLesser(saving, Cell.AsSpan(week * _season.Rows, saving.Length));

    /// <summary>What the room of a partial plan is priced at.</summary>
    public long OfRoom(ReadOnlySpan<long> room)
    {
        long sum = 0;
        for (int row = 0; row < room.Length; row++)
        {
            if (_rowPrice[row] != 0)
                sum += Shift((Int128)_rowPrice[row] * room[row]) + (_season.Resources[row].IsNeed ? 0 : 1);
        }
        return sum;
    }

    /// <summary>The most that can come when a candidate is the next one, in a week or later.</summary>
    public long BestFrom(int week, int candidate) => _best[(week * _season.Candidates) + candidate];

    private static long Shift(Int128 product) => (long)(product >> FixedPoint);

    private long GainOf(int spot)
    {
        ReadOnlySpan<long> saving = _season.SavingOf(spot);
        int week = spot % _season.Weeks;
        long gain = -_season.Cost[spot];
        ReadOnlySpan<long> price = Cell.AsSpan(week * _season.Rows, saving.Length);
        gain += Lanes.Excess(saving, price);
        for (int row = 0; row < _rowPrice.Length; row++)
        {
            if (_rowPrice[row] != 0)
                gain -= Shift((Int128)_rowPrice[row] * _season.Resources[row].Use[spot]);
        }
        return gain;
    }

    // Backwards through the weeks: the best chain of spots in which neighbours keep their intervals.
    private void FillBack()
    {
        int candidates = _season.Candidates;
        for (int week = _season.Weeks - 1; week >= 0; week--)
        {
            for (int candidate = 0; candidate < candidates; candidate++)
            {
                int spot = (candidate * _season.Weeks) + week;
                long after = 0;
                if (Live[spot])
                {
                    for (int next = 0; next < candidates; next++)
                    {
                        int delay = _season.NextDelay[(candidate * candidates) + next];
                        after = Math.Max(after, _best[((week + delay) * candidates) + next]);
                    }
                    After[spot] = after;
                }
                long later = _best[((week + 1) * candidates) + candidate];
                _best[(week * candidates) + candidate] = Live[spot] ? Math.Max(later, Gain[spot] + after) : later;
            }
        }
    }

    // Forwards: the best chain that can stand before each spot. A spot whose best chain is not good enough is out.
    private void Narrow(long below)
    {
        int candidates = _season.Candidates,
            weeks = _season.Weeks;
        long[] room = [.. _season.Resources.Select(row => row.Room)];
        long start = _season.CostOfNothing - OpenFrom(0, _season.PastSaving) - OfRoom(room);
        var until = new long[(weeks + 1) * candidates];
        for (int week = 0; week < weeks; week++)
        {
            for (int candidate = 0; candidate < candidates; candidate++)
            {
                int spot = (candidate * weeks) + week;
                long before = 0;
                for (int earlier = 0; earlier < candidates; earlier++)
                {
                    int from = week - _season.NextDelay[(earlier * candidates) + candidate];
                    if (from >= 0)
                        before = Math.Max(before, until[((from + 1) * candidates) + earlier]);
                }
                if (
                    Live[spot]
                    && (week < _season.Ready[candidate] || start - before - Gain[spot] - After[spot] >= below)
                )
                    Live[spot] = false;
                long sofar = until[(week * candidates) + candidate];
                until[((week + 1) * candidates) + candidate] = Live[spot]
                    ? Math.Max(sofar, before + Gain[spot])
                    : sofar;
            }
        }
    }
}
