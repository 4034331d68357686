using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rounds;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <content>The ways that are asked for: other rounds, another cover, another product.</content>
public sealed partial class PlanDesk
{
    private const int LongestInterval = 52;

    private static readonly ImmutableArray<int?> s_intervals =
    [
        .. IntervalComparison.UsualIntervals.Select(weeks => (int?)weeks),
        null,
    ];

    private void MoveRounds(PartOfYear part, Way shown, int direction)
    {
        int at = s_intervals.IndexOf(shown.Plan.Rounds.In(part));
        int to = Math.Clamp(at < 0 ? 1 : at + direction, 0, s_intervals.Length - 1);
        if (to != at)
            SetRounds(new RoundsWish(part, s_intervals[to]));
    }

    private void SetRounds(RoundsWish wish)
    {
        YearRounds now = Shown!.Plan.Rounds;
        YearRounds rounds = wish.Part switch
        {
            PartOfYear.Spring => now with { Spring = wish.Weeks },
            PartOfYear.Summer => now with { Summer = wish.Weeks },
            _ => now with { AutumnAndWinter = wish.Weeks },
        };
        Change(
            Wishes.With(wish),
            Shown.Plan with
            {
                Rounds = rounds,
                IntervalWeeks = rounds.Spring ?? rounds.Summer ?? rounds.AutumnAndWinter ?? LongestInterval,
            },
            $"{LabelOf(new PlanRow(PlanRowKind.Rounds, wish.Part))}: {Every(wish.Weeks)}"
        );
    }

    private void MoveMeasure(Way shown, int direction)
    {
        if (Open is not { } open)
        {
            Refuse("What can be laid is known as soon as the first search is done.");
            return;
        }

        Practice?[] all = [null, .. open.Measures];
        int at = Array.FindIndex(all, one => one is not null && shown.Plan.Parts.Any(part => part.Action.Id == one.Id));
        int to = Math.Clamp(Math.Max(0, at) + direction, 0, all.Length - 1);
        if (to == Math.Max(0, at))
            return;
        Practice? chosen = all[to];
        Change(
            Wishes with
            {
                Measure = chosen?.Id ?? PlanWishes.NoMeasure,
            },
            shown.Plan with
            {
                Parts =
                [
                    .. shown.Plan.Parts.Where(part => open.Measures.All(measure => measure.Id != part.Action.Id)),
                    .. chosen is null ? [] : (WayPart[])[new WayPart(chosen, []) { FollowsFirstRound = true }],
                ],
            },
            chosen?.Name ?? "Nothing laid"
        );
    }

    // Another product in the same week: this one is dropped, that one must go on.
    private void MoveProduct(PlanRow row, int direction)
    {
        string[] others =
        [
            .. (Open?.Season?.Problem.Candidates ?? [])
                .Where(candidate =>
                    candidate.Name == row.Product
                    || (
                        Open!.Season!.Problem.CostIn(candidate, row.Week) is not null
                        && !Wishes.Dropped.Contains(candidate.Name)
                    )
                )
                .Select(candidate => candidate.Name),
        ];
        int at = Array.IndexOf(others, row.Product);
        if (at < 0 || others.Length < 2)
        {
            Refuse("No other product may go on in this week.");
            return;
        }

        string other = others[(at + direction + others.Length) % others.Length];
        WayPlan without = Without(part => part.Action.Id == row.Product ? part.Weeks.Remove(row.Week) : part.Weeks);
        WayPart? there = without.Parts.FirstOrDefault(part => part.Action.Id == other);
        WayPart with = there is null
            ? new WayPart(_knowledge.Treatments[other], [row.Week])
            : there with
            {
                Weeks = [.. there.Weeks.Append(row.Week).Distinct().Order()],
            };
        Change(
            Wishes with
            {
                Dropped = Wishes.Dropped.Add(row.Product),
                Kept = Wishes.Kept.Remove(row.Product).Remove(other).Add(other),
            },
            without with
            {
                Parts =
                [
                    .. without.Parts.Where(part => part.Action.Id != other && part.Action.Id != row.Product),
                    with,
                ],
            },
            $"{NameOf(other)} in place of {NameOf(row.Product)}"
        );
    }

    private WayPlan Without(Func<WayPart, ImmutableArray<int>> left) =>
        Shown!.Plan with
        {
            Parts =
            [
                .. Shown
                    .Plan.Parts.Select(part => part.Action is Treatment ? part with { Weeks = left(part) } : part)
                    .Where(part => part.Action is not Treatment || !part.Weeks.IsEmpty),
            ],
        };
}
