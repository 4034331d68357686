using System.Collections.Immutable;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>
/// What a report has told of the practices. A later area refers to it and adds what is new there. Of a chemical each
/// area tells everything.
/// </summary>
internal sealed class Told
{
    private readonly Dictionary<string, (string Area, HashSet<string> Texts)> _practices = new(StringComparer.Ordinal);

    /// <summary>
    /// What an area tells of its actions after those before it, in their order; what it tells of practices is
    /// remembered.
    /// </summary>
    /// <param name="area">The area's name.</param>
    /// <param name="actions">The actions that it tells in full, with all there is to say of each.</param>
    /// <param name="names">Tells chemicals from practices.</param>
    public Dictionary<string, ToldAction> Next(
        string area,
        ImmutableArray<(string Action, ImmutableArray<Point> Points)> actions,
        Names names
    )
    {
        var next = actions.ToDictionary(
            one => one.Action,
            one => new ToldAction(WhatIsNew(one.Action, one.Points), AreaOf(one.Action)),
            StringComparer.Ordinal
        );
        foreach ((string action, ImmutableArray<Point> points) in actions)
        {
            if (!names.IsTreatment(action))
                Add(action, area, points);
        }

        return next;
    }

    private string? AreaOf(string practice) => _practices.TryGetValue(practice, out var told) ? told.Area : null;

    private ImmutableArray<Point> WhatIsNew(string action, ImmutableArray<Point> points) =>
        _practices.TryGetValue(action, out var told)
            ? [.. points.Where(point => !told.Texts.Contains(point.Own))]
            : points;

    private void Add(string practice, string area, ImmutableArray<Point> points)
    {
        if (!_practices.TryGetValue(practice, out var told))
            _practices[practice] = told = (area, new HashSet<string>(StringComparer.Ordinal));
        told.Texts.UnionWith(points.Select(point => point.Own));
    }
}

/// <summary>What an area tells of an action.</summary>
/// <param name="Points">What no area before it told.</param>
/// <param name="ToldIn">The area that told of it first; null when it was told in none.</param>
internal sealed record ToldAction(ImmutableArray<Point> Points, string? ToldIn);
