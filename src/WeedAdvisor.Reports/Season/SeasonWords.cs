using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Reports.Season;

/// <summary>Plain words for what a season plan holds.</summary>
public static class SeasonWords
{
    /// <summary>What kind of work it is.</summary>
    public static string Kind(PlannedWorkKind kind) => kind switch
    {
        PlannedWorkKind.Apply => "put on",
        PlannedWorkKind.CleanUp => "clean up",
        PlannedWorkKind.WaterIn => "water in",
        PlannedWorkKind.LookAgain => "look again",
        PlannedWorkKind.Round => "weeding round",
        PlannedWorkKind.Practice => "without chemicals",
        PlannedWorkKind.Film => "film",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "a kind of work without words"),
    };

    /// <summary>Why a plan has no application.</summary>
    public static string Nothing(YearPlan plan) => plan.Case.Treatments.IsEmpty
        ? "Nothing: no preventive that helps against these weeds is clear here in any week."
        : "Nothing: hands cost less here than any preventive would save.";

    /// <summary>Why a weed is in the plan.</summary>
    public static string Origin(WeedOrigin origin) => origin switch
    {
        WeedOrigin.Seen => "seen or expected",
        WeedOrigin.Seeding => "seen with ripe seed",
        WeedOrigin.CameThrough => "came through before",
        WeedOrigin.BlownIn => "may fly in",
        _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, "an origin without words"),
    };
}
