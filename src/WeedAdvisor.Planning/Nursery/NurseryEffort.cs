using System.Collections.Immutable;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>How closely areas are looked at, by how many there are: a grower waits for all of them together.</summary>
internal static class NurseryEffort
{
    /// <summary>The most areas of which all rounds are looked at.</summary>
    public const int MostInFull = 8;

    private static readonly ImmutableArray<int?> s_few = [1, 2, 4, 8];

    private static readonly ImmutableArray<YearRounds> s_coarse =
    [
        .. from spring in s_few from summer in s_few from cool in s_few select new YearRounds(spring, summer, cool),
        new YearRounds(null, null, null),
    ];

    /// <summary>The effort for each of so many areas.</summary>
    public static PlanEffort Of(int areas) =>
        areas <= MostInFull ? new PlanEffort() : new PlanEffort { Rounds = s_coarse, MostSearched = 20 };
}
