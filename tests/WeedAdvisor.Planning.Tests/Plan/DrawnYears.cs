using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>Years drawn at random that keep the distances between two uses, priced without any search.</summary>
internal static class DrawnYears
{
    public static readonly int?[] Intervals = [1, 2, 3, 4, 6, 8, null];

    private const int MostUses = 6;

    /// <summary>The years of a case.</summary>
    /// <param name="plan">The case.</param>
    /// <param name="weeks">Weeks between rounds that are drawn; all when left out.</param>
    public static Gen<Way> Of(PlanCase plan, int?[]? weeks = null)
    {
        int?[] intervals = weeks ?? Intervals;
        SeasonCandidate[] candidates = [.. plan.Season!.Problem.Candidates];
        return Gen.Select(
                Gen.Int[0, intervals.Length - 1].Select(place => intervals[place]).Array[3],
                Gen.Int[-1, plan.Measures.Length - 1],
                Gen.Select(Gen.Int[0, candidates.Length - 1], Gen.Int[0, 51]).Array[0, MostUses]
            )
            .Select((rounds, measure, uses) => Priced(plan, rounds, measure, Kept(plan.Season, uses)));
    }

    private static ImmutableArray<(string Name, int Week)> Kept(SeasonCase season, (int, int)[] drawn)
    {
        int last = -99;
        var uses = ImmutableArray.CreateBuilder<(string Name, int Week)>();
        foreach ((int number, int week) in drawn.OrderBy(use => use.Item2))
        {
            SeasonCandidate candidate = season.Problem.Candidates[number];
            if (
                week - last < season.Problem.Limits.MinWeeksBetweenAny
                || candidate.Cost[week] is null
                || uses.Any(use => use.Name == candidate.Name)
            )
                continue;
            uses.Add((candidate.Name, week));
            last = week;
        }

        return uses.ToImmutable();
    }

    private static Way Priced(PlanCase plan, int?[] rounds, int measure, ImmutableArray<(string Name, int Week)> uses)
    {
        WayPlan standing = new StandingChoice(
            new YearRounds(rounds[0], rounds[1], rounds[2]),
            measure < 0 ? [] : [plan.Measures[measure]]
        ).Over(plan.Lies);
        return WayCosting
            .Of(
                plan.Year,
                standing with
                {
                    Parts =
                    [
                        .. standing.Parts,
                        .. uses.Select(use => new WayPart(ShippedRules.Knowledge.Treatments[use.Name], [use.Week])),
                    ],
                }
            )
            .Value!;
    }
}
