using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>
/// What a report has told of the practices. A later area refers to it and adds what is new there. Of a chemical each
/// area tells everything.
/// </summary>
internal sealed class Told
{
    private readonly Dictionary<string, (string Area, HashSet<string> Texts)> _practices = new(StringComparer.Ordinal);

    /// <summary>The area that told of the practice first, or null.</summary>
    public string? AreaOf(string practice) => _practices.TryGetValue(practice, out var told) ? told.Area : null;

    /// <summary>The points that were not told yet.</summary>
    public ImmutableArray<Point> WhatIsNew(string action, ImmutableArray<Point> points) =>
        _practices.TryGetValue(action, out var told)
            ? [.. points.Where(point => !told.Texts.Contains(point.Own))]
            : points;

    /// <summary>Remembers what an area tells of a practice.</summary>
    public void Add(string practice, string area, ImmutableArray<Point> points)
    {
        if (!_practices.TryGetValue(practice, out var told))
            _practices[practice] = told = (area, new HashSet<string>(StringComparer.Ordinal));
        told.Texts.UnionWith(points.Select(point => point.Own));
    }
}
