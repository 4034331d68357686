using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.World;

/// <summary>
/// Every usual value, for knowledge that a test makes by hand: the hours of the law and counts of weeds as shipped,
/// else 1.
/// </summary>
public static class UsualValues
{
    public static UsualNumbers Of(params (string Id, decimal Value)[] others) =>
        new(UsualIds.All.ToImmutableSortedDictionary(id => id, id => Number(id, others), StringComparer.Ordinal));

    private static UsualNumber Number(string id, (string Id, decimal Value)[] others) =>
        new()
        {
            Id = id,
            Name = id,
            Value = others.Where(other => other.Id == id).Select(other => (decimal?)other.Value).FirstOrDefault()
                ?? Fixed(id),
            Sources = ["invented"],
            Where = Place.Whole("test"),
        };

    // 40 CFR 156.208(c)(2) and 170.405(b)(3).
    private static decimal Fixed(string id) =>
        id switch
        {
            UsualIds.EntryHours => 48,
            UsualIds.EntryHoursOfAnything => 72,
            UsualIds.HoursUnaired => 24,
            UsualIds.HotDay => 29,
            UsualIds.WeedsToCome => 4,
            UsualIds.WeedsBlownIn => 2,
            UsualIds.LeftWhenYoung => 50,
            UsualIds.LeftWhenMature => 25,
            UsualIds.SeedsThatCount => 1000,
            UsualIds.LeastGain => 35,
            UsualIds.RosetteWeeks => 9,
            UsualIds.RosetteMonth => 8,
            UsualIds.SeedPresses => 182,
            _ => 1,
        };
}
