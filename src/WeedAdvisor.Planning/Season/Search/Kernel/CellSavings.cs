using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// What applications save in each cell. A cover wish is a row of its own whose cells cost more than any plan when they
/// are not held, so that the search needs no second way to look at it.
/// </summary>
internal sealed class CellSavings
{
    private readonly SeasonProblem _problem;
    private readonly long[][] _escape;
    private readonly (int Weed, CoverWish Wish)[] _covers;

    /// <summary>Prepares the escape costs.</summary>
    public CellSavings(SeasonProblem problem, bool feasibilityOnly)
    {
        _problem = problem;
        _escape =
        [
            .. problem.Weeds.Select(weed =>
                feasibilityOnly ? new long[problem.Weeks] : [.. weed.EscapeCost.Select(Units.OfMoney)]
            ),
        ];
        _covers =
        [
            .. problem.Wishes.MustCover.Select(wish =>
                (problem.Weeds.Select(weed => weed.Name).ToImmutableArray().IndexOf(wish.Weed), wish)
            ),
        ];
        long dearest = feasibilityOnly
            ? 0
            : problem
                .Candidates.SelectMany(one => one.Cost)
                .Select(cost => Units.OfMoney(cost ?? 0))
                .DefaultIfEmpty()
                .Max();
        Ceiling = _escape.Sum(weed => weed.Sum()) + (dearest * problem.Weeks) + 1;
        Rows = problem.Weeds.Length + _covers.Length;
        Reach = Math.Clamp(
            Math.Max(
                problem.Candidates.Select(AgesOf).DefaultIfEmpty().Max(),
                problem.History.Select(past => AgesOf(past.Used) + past.Week).DefaultIfEmpty().Max()
            ),
            1,
            problem.Weeks
        );
    }

    /// <summary>Weeds and cover wishes.</summary>
    public int Rows { get; }

    /// <summary>The most weeks of the plan that one application acts in.</summary>
    public int Reach { get; }

    /// <summary>More than any plan costs.</summary>
    public long Ceiling { get; }

    /// <summary>What all cells cost when nothing acts.</summary>
    public long EscapeOfAll =>
        _escape.Sum(weed => weed.Sum()) + (Ceiling * _covers.Sum(cover => cover.Wish.To - cover.Wish.From + 1));

    /// <summary>
    /// What a candidate saves from its week on, week by week, without weeks at the end that save nothing.
    /// </summary>
    public long[] From(SeasonCandidate candidate, int week, int weeks)
    {
        var cells = new long[Math.Min(weeks, AgesOf(candidate)) * Rows];
        Fill(cells, candidate, week, firstAge: 0);
        int end = cells.Length;
        while (end >= Rows && !cells.AsSpan(end - Rows, Rows).ContainsAnyExcept(0L))
            end -= Rows;
        return cells[..end];
    }

    /// <summary>What the past applications save in the first weeks of the plan.</summary>
    public long[] Past()
    {
        var best = new long[Reach * Rows];
        foreach (PastUse past in _problem.History)
        {
            var cells = new long[best.Length];
            Fill(cells, past.Used, week: 0, firstAge: -past.Week);
            Lanes.Raise(best, cells);
        }
        return best;
    }

    private void Fill(long[] cells, SeasonCandidate candidate, int week, int firstAge)
    {
        for (int weed = 0; weed < _escape.Length; weed++)
        {
            ImmutableArray<double> control = candidate.Control[weed];
            for (int later = 0; later < cells.Length / Rows && firstAge + later < control.Length; later++)
                cells[(later * Rows) + weed] = Units.Saved(_escape[weed][week + later], control[firstAge + later]);
        }
        for (int row = 0; row < _covers.Length; row++)
        {
            (int weed, CoverWish wish) = _covers[row];
            ImmutableArray<double> control = candidate.Control[weed];
            for (int later = 0; later < cells.Length / Rows && firstAge + later < control.Length; later++)
            {
                if (week + later >= wish.From && week + later <= wish.To && control[firstAge + later] >= wish.Control)
                    cells[(later * Rows) + _escape.Length + row] = Ceiling;
            }
        }
    }

    private static int AgesOf(SeasonCandidate candidate) =>
        candidate.Control.Select(ages => ages.Length).DefaultIfEmpty().Max();
}
