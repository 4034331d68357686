using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Plan;

/// <summary>The rounds of a plan, said alike on the page of an area and of the nursery.</summary>
internal static class RoundsWords
{
    /// <summary>How often, to stand behind "weed".</summary>
    public static Line Of(YearCase year, Way way)
    {
        int weeks = way.Plan.SpreadWeeks;
        return weeks == 1
            ? Line.FromString(way.Plan.Rounds.InWords)
            : Line.Of(
                $"{way.Plan.Rounds.InWords}; the first round is spread over {weeks} weeks, "
                    + $"{new Amount(Math.Ceiling((decimal)year.Pots / weeks), "pots", "#,0")} a week{Laid(way)}"
            );
    }

    private static string Laid(Way way) =>
        way.Plan.Parts.Any(part => part.FollowsFirstRound) ? ", and what is laid goes on behind it" : "";
}
