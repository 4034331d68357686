namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// Drops a partial plan when another can do whatever it can do, at no more cost. docs/season-search.md says why the
/// test is safe.
/// </summary>
internal sealed class Dominance
{
    private const int WeeksBetweenFull = 4;

    private readonly CompiledSeason _season;
    private readonly LabelStore _labels;
    private readonly byte[] _nextLive;
    private readonly bool _hasShare;

    /// <summary>Prepares the weeks in which each candidate still matters.</summary>
    public Dominance(CompiledSeason season, Prices prices, LabelStore labels)
    {
        _season = season;
        _labels = labels;
        _hasShare = season.Problem.Limits.MaxShareOfSite is not null;
        int places = CompiledSeason.Never + 1;
        _nextLive = new byte[season.Candidates * places];
        for (int candidate = 0; candidate < season.Candidates; candidate++)
        {
            byte next = CompiledSeason.Never;
            for (int week = places - 1; week >= 0; week--)
            {
                if (week < season.Weeks && prices.Live[(candidate * season.Weeks) + week])
                    next = (byte)week;
                _nextLive[(candidate * places) + week] = next;
            }
        }
    }

    /// <summary>The partial plans that nothing dominates, cheapest first.</summary>
    /// <param name="labels">Partial plans up to the same week.</param>
    /// <param name="week">The first week still to decide.</param>
    public List<int> Thin(List<int> labels, int week)
    {
        labels.Sort(
            (one, other) =>
                _labels.Cost[one] != _labels.Cost[other]
                    ? _labels.Cost[one].CompareTo(_labels.Cost[other])
                    : _labels.Step[one].CompareTo(_labels.Step[other])
        );
        foreach (int label in labels)
        {
            MakeCanonical(label, week);
            _labels.Spent[label] = _labels.Cost[label] + Lanes.Sum(_labels.SavingFrom(label, week));
        }
        bool all = week % WeeksBetweenFull == 0;
        var kept = new List<int>(labels.Count);
        foreach (int label in labels)
        {
            if (IsDominated(label, kept, week, all))
                _labels.Drop(label);
            else
                kept.Add(label);
        }
        return kept;
    }

    private bool IsDominated(int label, List<int> kept, int week, bool all)
    {
        // A pair that was compared before is compared again only now and then: it rarely comes out otherwise.
        int last = week - 1;
        long spent = _labels.Spent[label];
        bool isNew = _labels.Since[label] == last;
        foreach (int other in kept)
        {
            if (
                _labels.Spent[other] <= spent
                && (all || isNew || _labels.Since[other] == last)
                && Dominates(other, label, week)
            )
                return true;
        }
        return false;
    }

    // The weeks up to the next one in which a candidate can matter make no difference.
    private void MakeCanonical(int label, int week)
    {
        Span<byte> canonical = _labels.Canonical(label);
        ReadOnlySpan<byte> ready = _labels.Ready(label);
        for (int candidate = 0; candidate < canonical.Length; candidate++)
        {
            ReadOnlySpan<byte> next = _nextLive.AsSpan(
                candidate * (CompiledSeason.Never + 1),
                CompiledSeason.Never + 1
            );
            canonical[candidate] =
                next[week] == CompiledSeason.Never ? (byte)0 : next[Math.Max(week, (int)ready[candidate])];
        }
    }

    private bool Dominates(int one, int other, int week) =>
        NoLater(_labels.Canonical(one), _labels.Canonical(other))
        && (_season.MaxRun == byte.MaxValue || NoLater(_labels.Runs(one), _labels.Runs(other)))
        && HasRoom(_labels.Room(one), _labels.Room(other))
        && NoMoreForbidden(one, other)
        && (
            !_hasShare
            || (
                _labels.Applications[one] >= _labels.Applications[other]
                && NoLater(_labels.Uses(one), _labels.Uses(other))
            )
        )
        && SavesEnough(one, other, week);

    private bool SavesEnough(int one, int other, int week)
    {
        // What the other saves beyond its last kept week is nothing, and the same holds for this one.
        ReadOnlySpan<long> mine = _labels.SavingFrom(one, week),
            its = _labels.SavingFrom(other, week);
        long margin = _labels.Cost[other] - _labels.Cost[one];
        if (mine.Length > its.Length)
        {
            foreach (long more in mine[its.Length..])
                margin -= more;
            mine = mine[..its.Length];
        }
        return margin >= 0 && Lanes.ExcessWithin(mine, its[..mine.Length], margin);
    }

    private bool NoMoreForbidden(int one, int other) =>
        _labels.Forbidden[one] == 0
        || (
            _labels.Applications[one] == _labels.Applications[other]
            && (_labels.Forbidden[one] & ~_labels.Forbidden[other]) == 0
        );

    private static bool NoLater(ReadOnlySpan<byte> one, ReadOnlySpan<byte> other)
    {
        for (int at = 0; at < one.Length; at++)
        {
            if (one[at] > other[at])
                return false;
        }
        return true;
    }

    private bool HasRoom(ReadOnlySpan<long> one, ReadOnlySpan<long> other)
    {
        for (int row = 0; row < one.Length; row++)
        {
            if (one[row] < other[row] && !_season.Resources[row].IsImplied)
                return false;
        }
        return true;
    }
}
