using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Entry;

/// <summary>
/// Which areas of a visit may share a roof, found once for the whole visit: a nursery of a thousand areas is not walked
/// through a thousand times. Areas that have nothing to tell the others are left out.
/// </summary>
internal sealed class Roofs
{
    private readonly Visit _visit;
    private readonly KnowledgeBase _knowledge;
    private readonly ImmutableArray<VisitArea> _all;
    private readonly ILookup<string, int> _byHouse;
    private readonly ImmutableArray<int> _closed;

    /// <summary>Looks at all areas of a visit.</summary>
    public Roofs(Visit visit, KnowledgeBase knowledge)
    {
        _visit = visit;
        _knowledge = knowledge;
        _all = [.. visit.Areas, .. visit.Elsewhere];
        _closed =
        [
            .. Enumerable
                .Range(0, _all.Length)
                .Where(place => !PutOnLately.IsSilent(_all[place], visit.Date) && !Roof.IsOpen(_all[place], knowledge)),
        ];
        _byHouse = _closed.ToLookup(place => Roof.HouseOf(_all[place]) ?? "", StringComparer.Ordinal);
    }

    /// <summary>
    /// An area with those others that are not known to stand under another roof and have something to tell.
    /// </summary>
    /// <param name="index">Its place in the visit, from 0.</param>
    public AreaCase CaseOf(int index)
    {
        VisitArea area = _visit.Areas[index];
        if (Roof.IsOpen(area, _knowledge))
            return new AreaCase(_visit.Date, area, []);
        // An unnamed house may be any.
        IEnumerable<int> others = Roof.HouseOf(area) is { } house ? _byHouse[house].Concat(_byHouse[""]) : _closed;
        return new AreaCase(
            _visit.Date,
            area,
            [.. others.Where(place => place != index).Order().Select(place => _all[place]).Where(MayShare)]
        );

        bool MayShare(VisitArea other) => Roof.Of(area, other, _knowledge).Shared != Truth.No;
    }
}
