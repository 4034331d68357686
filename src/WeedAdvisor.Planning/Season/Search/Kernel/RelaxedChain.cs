using System.Numerics;
using System.Runtime.CompilerServices;

namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// The relaxed problem at given prices: the best chain of spots in which neighbours keep their intervals, and which
/// cells and resources it takes.
/// </summary>
internal sealed class RelaxedChain
{
    private readonly CompiledSeason _season;
    private readonly double[] _saving;
    private readonly double[] _best;
    private readonly int[] _bestWeek;
    private readonly int[] _next;

    /// <summary>Prepares the arrays.</summary>
    public RelaxedChain(CompiledSeason season)
    {
        _season = season;
        _saving = [.. season.Saving.Select(one => (double)one)];
        int places = (season.Weeks + 1 + CompiledSeason.Never) * season.Candidates;
        _best = new double[places];
        _bestWeek = new int[places];
        _next = new int[season.Open.Length];
        Takers = new int[season.Weeks * season.Rows];
        Left = new double[season.Resources.Length];
        Scale = [.. season.Resources.Select(row => row.Use.Select(use => (double)Math.Abs(use)).Append(1.0).Max())];
    }

    /// <summary>How many of the chain's applications are worth more than the price in each cell.</summary>
    public int[] Takers { get; }

    /// <summary>What the chain leaves of each resource.</summary>
    public double[] Left { get; }

    /// <summary>The greatest use of each resource by one application.</summary>
    public double[] Scale { get; }

    /// <summary>The most that any plan can save, at these prices.</summary>
    public double Solve(double[] cells, double[] rows, double[] floor)
    {
        double sum = 0;
        for (int cell = 0; cell < cells.Length; cell++)
            sum += cells[cell] - floor[cell];
        for (int row = 0; row < rows.Length; row++)
            sum += rows[row] * _season.Resources[row].Room;
        for (int week = _season.Weeks - 1; week >= 0; week--)
            FillWeek(week, cells, rows);
        return sum + Follow(cells);
    }

    private void FillWeek(int week, double[] cells, double[] rows)
    {
        int candidates = _season.Candidates;
        double[] best = _best;
        for (int candidate = 0; candidate < candidates; candidate++)
        {
            int spot = (candidate * _season.Weeks) + week,
                place = (week * candidates) + candidate;
            best[place] = best[place + candidates];
            _bestWeek[place] = _bestWeek[place + candidates];
            if (!_season.Open[spot])
                continue;
            double gain = Gain(spot, week, cells) - _season.Cost[spot];
            for (int row = 0; row < rows.Length; row++)
            {
                if (rows[row] != 0)
                    gain -= rows[row] * _season.Resources[row].Use[spot];
            }
            double after = 0;
            int follower = -1;
            ReadOnlySpan<int> delay = _season.NextDelay.AsSpan(candidate * candidates, candidates);
            for (int next = 0; next < delay.Length; next++)
            {
                double follows = best[((week + delay[next]) * candidates) + next];
                if (follows > after)
                    (after, follower) = (follows, next);
            }

            _next[spot] =
                follower < 0
                    ? -1
                    : (follower * _season.Weeks) + _bestWeek[((week + delay[follower]) * candidates) + follower];
            if (gain + after > best[place])
            {
                best[place] = gain + after;
                _bestWeek[place] = week;
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Gain(int spot, int week, double[] cells)
    {
        int start = _season.SavingStart[spot],
            length = _season.SavingStart[spot + 1] - start;
        ReadOnlySpan<double> saving = _saving.AsSpan(start, length),
            price = cells.AsSpan(week * _season.Rows, length);
        Vector<double> sum = Vector<double>.Zero;
        int at = 0;
        for (; at <= length - Vector<double>.Count; at += Vector<double>.Count)
            sum += Vector.Max(new Vector<double>(saving[at..]) - new Vector<double>(price[at..]), Vector<double>.Zero);
        double total = Vector.Sum(sum);
        for (; at < length; at++)
            total += Math.Max(0, saving[at] - price[at]);
        return total;
    }

    private double Follow(double[] cells)
    {
        Array.Clear(Takers);
        for (int row = 0; row < Left.Length; row++)
            Left[row] = _season.Resources[row].Room;
        double best = 0;
        int spot = -1;
        for (int candidate = 0; candidate < _season.Candidates; candidate++)
        {
            int place = (_season.Ready[candidate] * _season.Candidates) + candidate;
            if (_best[place] > best)
            {
                best = _best[place];
                spot = (candidate * _season.Weeks) + _bestWeek[place];
            }
        }
        for (; spot >= 0; spot = _next[spot])
        {
            int cell = spot % _season.Weeks * _season.Rows;
            foreach (long saving in _season.SavingOf(spot))
            {
                if (saving > cells[cell])
                    Takers[cell]++;
                cell++;
            }
            for (int row = 0; row < Left.Length; row++)
                Left[row] -= _season.Resources[row].Use[spot];
        }
        return best;
    }
}
