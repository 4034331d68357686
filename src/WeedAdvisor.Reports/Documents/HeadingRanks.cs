namespace WeedAdvisor.Reports.Documents;

/// <summary>
/// The ranks of the headings of one page in their order, from 2 below the title: none is left out on the way down, and
/// headings that stand beside each other have the same.
/// </summary>
internal sealed class HeadingRanks
{
    private readonly Stack<(int Level, int Rank)> _above = [];

    /// <summary>The rank of the next heading.</summary>
    public int Of(HeadingLevel level)
    {
        int own = level switch
        {
            HeadingLevel.Title => 1,
            HeadingLevel.Area => 2,
            HeadingLevel.Minor => 4,
            _ => 3,
        };
        while (_above.TryPeek(out (int Level, int Rank) last) && last.Level >= own)
            _above.Pop();
        int rank = 1 + (_above.TryPeek(out (int Level, int Rank) over) ? over.Rank : 1);
        _above.Push((own, rank));
        return rank;
    }
}
