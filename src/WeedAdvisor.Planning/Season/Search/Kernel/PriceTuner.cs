namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// Looks for prices that give a tight bound, by steps along subgradients of the relaxed problem. Floating point is good
/// enough here: whatever comes out, <see cref="Prices"/> makes an exact and valid bound of it.
/// </summary>
internal sealed class PriceTuner
{
    private const int Patience = 8;
    private const double Decay = 0.6;
    private const double ReachAfresh = 0.2;
    private const double ReachAtEnd = 0.005;
    private const double RowWeight = 4;
    private const double LikelyShare = 0.95;
    private const double Memory = 0.6;

    private readonly RelaxedChain _chain;
    private readonly double[] _cells;
    private readonly double[] _rows;
    private readonly double[] _floor;
    private readonly double[] _cellStep;
    private readonly double[] _rowStep;
    private double _reach = 1;

    /// <summary>Starts from given prices, or from none.</summary>
    public PriceTuner(CompiledSeason season, PriceTuner? near = null)
    {
        _chain = new RelaxedChain(season);
        int cells = season.Weeks * season.Rows;
        _floor = new double[cells];
        for (int cell = 0; cell < Math.Min(cells, season.PastSaving.Length); cell++)
            _floor[cell] = season.PastSaving[cell];
        BestCells = near is not null && near.BestCells.Length == cells ? [.. near.BestCells] : [.. _floor];
        BestRows =
            near is not null && near.BestRows.Length == season.Resources.Length
                ? [.. near.BestRows]
                : new double[season.Resources.Length];
        _cells = new double[cells];
        _rows = new double[BestRows.Length];
        _cellStep = new double[cells];
        _rowStep = new double[BestRows.Length];
    }

    /// <summary>The best cell prices so far.</summary>
    public double[] BestCells { get; }

    /// <summary>The best resource prices so far, per unit of the resource.</summary>
    public double[] BestRows { get; }

    /// <summary>The lowest sum of savings that the prices allow so far.</summary>
    public double BestSaving { get; private set; } = double.MaxValue;

    /// <summary>Whether the prices are tuned for this problem.</summary>
    public bool IsTuned => BestSaving < double.MaxValue;

    /// <summary>Takes some steps.</summary>
    /// <param name="steps">How many at most.</param>
    /// <param name="known">The saving of the best known plan; null when none is known.</param>
    public void Tune(int steps, double? known)
    {
        _reach = Math.Max(_reach, ReachAfresh);
        Restart();
        int idle = 0;
        for (int step = 0; step < steps; step++)
        {
            double saving = _chain.Solve(_cells, _rows, _floor);
            if (saving < BestSaving - 1)
            {
                idle = saving < BestSaving - (1e-5 * Math.Abs(saving)) ? 0 : idle + 1;
                BestSaving = saving;
                _cells.CopyTo(BestCells, 0);
                _rows.CopyTo(BestRows, 0);
            }
            else
            {
                idle++;
            }
            if (idle >= Patience)
            {
                idle = 0;
                _reach *= Decay;
                Restart();
                continue;
            }
            double target = known ?? (BestSaving * LikelyShare);
            double above = saving - target;
            if (above < 1 || _reach < ReachAtEnd)
                return;
            Step(above);
        }
    }

    private void Restart()
    {
        BestCells.CopyTo(_cells, 0);
        for (int cell = 0; cell < _cells.Length; cell++)
            _cells[cell] = Math.Max(_cells[cell], _floor[cell]);
        BestRows.CopyTo(_rows, 0);
        Array.Clear(_cellStep);
        Array.Clear(_rowStep);
    }

    private void Step(double above)
    {
        double norm = 0;
        for (int cell = 0; cell < _cells.Length; cell++)
        {
            double slope = 1 - _chain.Takers[cell];
            slope = slope > 0 && _cells[cell] <= _floor[cell] ? 0 : slope;
            _cellStep[cell] = slope + (Memory * _cellStep[cell]);
            norm += _cellStep[cell] * _cellStep[cell];
        }
        for (int row = 0; row < _rows.Length; row++)
        {
            double slope = RowWeight * _chain.Left[row] / _chain.Scale[row];
            slope = slope > 0 && _rows[row] <= 0 ? 0 : slope;
            _rowStep[row] = slope + (Memory * _rowStep[row]);
            norm += _rowStep[row] * _rowStep[row];
        }
        if (norm <= 0)
            return;
        double length = _reach * above / norm;
        for (int cell = 0; cell < _cells.Length; cell++)
            _cells[cell] = Math.Max(_floor[cell], _cells[cell] - (length * _cellStep[cell]));
        for (int row = 0; row < _rows.Length; row++)
            _rows[row] = Math.Max(0, _rows[row] - (length * RowWeight * _rowStep[row] / _chain.Scale[row]));
    }
}
