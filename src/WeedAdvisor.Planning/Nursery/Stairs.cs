namespace WeedAdvisor.Planning.Nursery;

/// <summary>
/// The pairs of hours and dollars seen so far of which none takes less of both: hours rise along it, dollars fall.
/// </summary>
internal sealed class Stairs
{
    private readonly List<decimal> _hours = [];
    private readonly List<decimal> _usd = [];

    /// <summary>Takes a pair up; false when one that is there takes no more of either.</summary>
    public bool Add(decimal hours, decimal usd)
    {
        int at = _hours.BinarySearch(hours);
        int before = at >= 0 ? at : ~at - 1;
        if (before >= 0 && _usd[before] <= usd)
            return false;
        int from = at >= 0 ? at : ~at;
        int to = from;
        while (to < _usd.Count && _usd[to] >= usd)
            to++;
        _hours.RemoveRange(from, to - from);
        _usd.RemoveRange(from, to - from);
        _hours.Insert(from, hours);
        _usd.Insert(from, usd);
        return true;
    }
}
