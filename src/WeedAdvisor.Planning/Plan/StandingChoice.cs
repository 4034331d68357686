using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// What stands all the year in a plan: how often the pots are weeded, and what is laid or changed once.
/// </summary>
/// <param name="Rounds">The rounds.</param>
/// <param name="Measures">Covers, ways of feeding or filling that are new; at most one cover.</param>
public sealed record StandingChoice(YearRounds Rounds, ImmutableArray<Practice> Measures)
{
    private const int Longest = 52;

    /// <summary>
    /// Weeks over which the first round and what is laid after it are spread, an equal part of the pots in each.
    /// </summary>
    public int SpreadWeeks { get; init; } = 1;

    /// <summary>The choice as a way through the year with no preventive, on top of what lies there already.</summary>
    /// <param name="lies">What lies there already.</param>
    public WayPlan Over(WayPlan lies) =>
        lies with
        {
            Id = "plan",
            Means = Measures.IsEmpty ? "Rounds alone" : string.Join(" and ", Measures.Select(measure => measure.Name)),
            IntervalWeeks = Rounds.Spring ?? Rounds.Summer ?? Rounds.AutumnAndWinter ?? Longest,
            Rounds = Rounds,
            SpreadWeeks = SpreadWeeks,
            StatedControl = null,
            Parts =
            [
                .. lies.Parts,
                .. Measures.Select(measure => new WayPart(measure, []) { FollowsFirstRound = true }),
            ],
        };
}
