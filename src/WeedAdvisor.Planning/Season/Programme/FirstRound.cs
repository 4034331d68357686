using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>What a round says of the work where the first is spread over weeks.</summary>
internal static class FirstRound
{
    /// <summary>Behind the name of what is laid.</summary>
    public const string ByParts = ", part by part behind the first round";

    /// <summary>Whether something is laid behind the first round as that goes on.</summary>
    public static bool IsByParts(WayPlan plan, string action) =>
        plan.SpreadWeeks > 1 && plan.Parts.Any(part => part.FollowsFirstRound && part.Action.Id == action);

    /// <summary>The round of a week.</summary>
    /// <param name="way">The way; it has a round in that week.</param>
    /// <param name="week">The week, from 0.</param>
    public static string Words(Way way, int week)
    {
        int parts = way.Plan.SpreadWeeks;
        if (parts == 1 || week >= parts)
            return "Weeding round: pull what is up before it seeds.";
        bool walksOthers = week > 0 && way.Parts[0].Season.Rounds.Any(round => round.Week == week);
        return $"Weeding round, the first spread over {parts} weeks: clean part {week + 1} of {parts} of the pots"
            + $"{(walksOthers ? ", and walk those that are clean already" : "")}.";
    }
}
