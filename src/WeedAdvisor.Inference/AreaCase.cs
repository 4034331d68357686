using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference;

/// <summary>
/// An area on the day on which it is looked at, with the other areas of the visit, whose roof it may share.
/// </summary>
/// <param name="Date">The day.</param>
/// <param name="Area">The area.</param>
/// <param name="Others">The other areas of the visit.</param>
public sealed record AreaCase(DateOnly Date, VisitArea Area, ImmutableArray<VisitArea> Others)
{
    /// <summary>An area that shares its roof with no other.</summary>
    public static AreaCase Alone(DateOnly date, VisitArea area) => new(date, area, []);

    /// <summary>An area of a visit, by its place in the list from 0.</summary>
    public static AreaCase Of(Visit visit, int index) =>
        new(visit.Date, visit.Areas[index], visit.Areas.RemoveAt(index).AddRange(visit.Elsewhere));
}
