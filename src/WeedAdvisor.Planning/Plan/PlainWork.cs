using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// The work of a year in which no preventive is planned: what is laid in the first week, and the rounds.
/// </summary>
internal static class PlainWork
{
    private const int DaysInWeek = 7;

    /// <summary>The work, by day.</summary>
    public static ImmutableArray<PlannedWork> Of(YearCase year, StandingChoice choice, Way way)
    {
        return WorkOrder.Of(
            [
                .. choice.Measures.Select(measure =>
                    InWeek(
                        0,
                        PlannedWorkKind.Practice,
                        measure.Id,
                        $"{measure.Name}{Behind(measure)}. Weed the pots first.",
                        way.Plan.SpreadWeeks
                    )
                ),
                .. way.Season.Rounds.Select(round =>
                    InWeek(round.Week, PlannedWorkKind.Round, null, FirstRound.Words(way, round.Week))
                ),
            ],
            year.Knowledge
        );

        string Behind(Practice measure) => FirstRound.IsByParts(way.Plan, measure.Id) ? FirstRound.ByParts : "";

        PlannedWork InWeek(int week, PlannedWorkKind kind, string? action, string text, int weeks = 1)
        {
            DateOnly day = year.Day.AddDays(week * DaysInWeek);
            return new PlannedWork(day, day.AddDays((weeks * DaysInWeek) - 1), kind, action, text);
        }
    }
}
