using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>A part of the year in which rounds keep one interval.</summary>
public enum PartOfYear
{
    /// <summary>March to May in the north, September to November in the south.</summary>
    Spring,

    /// <summary>June to August in the north, December to February in the south.</summary>
    Summer,

    /// <summary>The six months between summer and spring.</summary>
    AutumnAndWinter,
}

/// <summary>Finds the part of the year in which a day lies.</summary>
public static class PartsOfYear
{
    private const int March = 3,
        June = 6,
        September = 9;

    /// <summary>The part of a day.</summary>
    public static PartOfYear Of(DateOnly day, Hemisphere hemisphere) =>
        hemisphere.NorthernMonth(day.Month) switch
        {
            >= March and < June => PartOfYear.Spring,
            >= June and < September => PartOfYear.Summer,
            _ => PartOfYear.AutumnAndWinter,
        };
}
