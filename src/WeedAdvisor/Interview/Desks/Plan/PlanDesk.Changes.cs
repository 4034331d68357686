using System.Collections.Immutable;
using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rounds;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <content>What is changed under the cursor.</content>
public sealed partial class PlanDesk
{
    private const int LongestInterval = 52,
        MostLetters = 9;

    private static readonly ImmutableArray<int?> s_intervals =
    [
        .. IntervalComparison.UsualIntervals.Select(weeks => (int?)weeks),
        null,
    ];

    private static readonly ImmutableArray<decimal> s_hours =
    [
        0,
        1,
        2,
        3,
        4,
        5,
        6,
        8,
        10,
        12,
        15,
        20,
        25,
        30,
        40,
        50,
        60,
        80,
        100,
        120,
        150,
        200,
        300,
        400,
        600,
        1000,
        2000,
        4000,
    ];

    private static readonly ImmutableArray<decimal> s_dollars =
    [
        0,
        50,
        100,
        150,
        200,
        250,
        300,
        400,
        500,
        750,
        1000,
        1500,
        2000,
        3000,
        4000,
        5000,
        7500,
        10_000,
        15_000,
        20_000,
        30_000,
        50_000,
        75_000,
        100_000,
        200_000,
        500_000,
    ];

    private static readonly CostField s_most = new("", "", 0, 1_000_000_000, IsWhole: false, []);

    private string _typed = "";

    /// <summary>Moves what is under the cursor to its next or its former stop.</summary>
    /// <param name="direction">1 for the next, -1 for the former.</param>
    public void Move(int direction)
    {
        if (Row is not { } row || Shown is not { } shown)
            return;
        _typed = "";
        switch (row.Kind)
        {
            case PlanRowKind.Rounds:
                int at = s_intervals.IndexOf(shown.Plan.Rounds.In(row.Part));
                int to = Math.Clamp(at < 0 ? 1 : at + direction, 0, s_intervals.Length - 1);
                if (to != at)
                    SetRounds(new RoundsWish(row.Part, s_intervals[to]));
                break;
            case PlanRowKind.Measure:
                MoveMeasure(shown, direction);
                break;
            case PlanRowKind.Use:
                MoveProduct(row, direction);
                break;
            case PlanRowKind.Hours:
                SetHours(Next(s_hours, Wishes.Hours ?? BusiestWeekHours, direction, Wishes.Hours is not null));
                break;
            case PlanRowKind.Budget:
                SetBudget(Next(s_dollars, Wishes.Budget ?? SpentUsd, direction, Wishes.Budget is not null));
                break;
            case PlanRowKind.Pots:
                SetPots((int)CostField.Pots.Next(Year!.Pots, direction));
                break;
            default:
                Refuse("Delete takes this wish back.");
                break;
        }
    }

    /// <summary>Takes the wish of the row under the cursor back, so that the search may choose there again.</summary>
    public void Free()
    {
        if (Row is not { } row || Shown is null)
            return;
        _typed = "";
        PlanWishes freed = row.Kind switch
        {
            PlanRowKind.Rounds => Wishes.WithoutRounds(row.Part),
            PlanRowKind.Measure => Wishes with { Measure = null },
            PlanRowKind.Use => Wishes with { Kept = Wishes.Kept.Remove(row.Product) },
            PlanRowKind.Closed => Wishes with { Closed = Wishes.Closed.Remove(row.Week) },
            PlanRowKind.Dropped => Wishes with { Dropped = Wishes.Dropped.Remove(row.Product) },
            PlanRowKind.Hours => Wishes with { Hours = null },
            PlanRowKind.Budget => Wishes with { Budget = null },
            _ => Wishes with { Pots = null },
        };
        if (freed.Key == Wishes.Key)
            Refuse("There is no wish of yours here to take back.");
        else
            Change(freed, Shown.Plan, "Wish taken back");
    }

    /// <summary>Closes the week of the use under the cursor: nothing goes on in it.</summary>
    public void CloseWeek()
    {
        if (Row is { Kind: PlanRowKind.Closed })
            Free();
        else if (Row is not { Kind: PlanRowKind.Use, Week: var week })
            Refuse("Go to a product that goes on: Space closes its week.");
        else
            Change(
                Wishes with
                {
                    Closed = Wishes.Closed.Add(week),
                },
                Without(part => part.Weeks.Remove(week)),
                $"Week of {DayOf(week)} closed"
            );
    }

    /// <summary>Drops the product under the cursor: it does not go on at all; again: it may.</summary>
    public void Drop()
    {
        if (Row is { Kind: PlanRowKind.Dropped })
            Free();
        else if (Row is not { Kind: PlanRowKind.Use, Product: var id })
            Refuse("Go to a product that goes on: D drops it.");
        else
            Change(
                Wishes with
                {
                    Dropped = Wishes.Dropped.Add(id),
                    Kept = Wishes.Kept.Remove(id),
                },
                Without(part => part.Action.Id == id ? [] : part.Weeks),
                $"{NameOf(id)} dropped"
            );
    }

    /// <summary>Asks that the product under the cursor goes on some time, or lets it go.</summary>
    public void Keep()
    {
        if (Row is not { Kind: PlanRowKind.Use, Product: var id })
            Refuse("Go to a product that goes on: K keeps it.");
        else if (Wishes.Kept.Contains(id))
            Free();
        else
            Change(Wishes with { Kept = Wishes.Kept.Add(id) }, Shown!.Plan, $"{NameOf(id)} must go on");
    }

    /// <summary>Types a digit, or a point, of the number under the cursor.</summary>
    /// <returns>Whether it was one, on a row with a number.</returns>
    public bool Type(char letter)
    {
        if (Row is not { IsNumber: true } || !(char.IsAsciiDigit(letter) || letter == '.'))
            return false;
        if (_typed.Length < MostLetters)
            _typed += letter;
        Tell("");
        return true;
    }

    /// <summary>Takes the last letter that was typed back.</summary>
    /// <returns>Whether there was one.</returns>
    public bool Rub()
    {
        if (_typed.Length == 0)
            return false;
        _typed = _typed[..^1];
        return true;
    }

    /// <summary>Takes the number that was typed.</summary>
    /// <returns>Whether one was typed.</returns>
    public bool EndTyping()
    {
        if (_typed.Length == 0 || Row is not { } row)
            return false;
        string typed = _typed;
        _typed = "";
        CostField limits = row.Kind == PlanRowKind.Pots ? CostField.Pots : s_most;
        if (limits.Read(typed) is not { } value)
            Refuse($"{LabelOf(row)}: {limits.Expected}, not '{typed}'.");
        else if (row.Kind == PlanRowKind.Hours)
            SetHours(value);
        else if (row.Kind == PlanRowKind.Budget)
            SetBudget(value);
        else
            SetPots((int)value);
        return true;
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo()
    {
        _typed = "";
        if (!_before.TryPop(out (PlanWishes Wishes, Way Shown) before))
        {
            Refuse("There is no change to take back.");
            return;
        }

        Wishes = before.Wishes;
        Year = Read(Wishes.Pots).Value;
        Ask(before.Shown);
        Tell("Last change taken back");
    }

    /// <summary>Takes all wishes but the pots back.</summary>
    public void Reset()
    {
        if (Shown is { } shown && !Wishes.IsFree)
            Change(new PlanWishes { Pots = Wishes.Pots }, shown.Plan, "All wishes taken back");
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
                    .. chosen is null ? [] : (WayPart[])[new WayPart(chosen, [])],
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

    private void SetHours(decimal? hours)
    {
        if (hours != Wishes.Hours)
            Change(
                Wishes with
                {
                    Hours = hours,
                },
                Shown!.Plan,
                hours is { } most ? $"At most {Plain(most)} hours a week" : "Hours left open"
            );
    }

    private void SetBudget(decimal? dollars)
    {
        if (dollars != Wishes.Budget)
            Change(
                Wishes with
                {
                    Budget = dollars,
                },
                Shown!.Plan,
                dollars is { } most ? $"At most {Dollars(most)} to spend" : "Budget left open"
            );
    }

    private void SetPots(int pots)
    {
        if (pots != Year!.Pots)
            Change(Wishes with { Pots = pots }, Shown!.Plan, $"{Plain(pots)} pots");
    }

    private void Change(PlanWishes wishes, WayPlan asked, string told)
    {
        Outcome<YearCase, string> year = Read(wishes.Pots);
        Outcome<Way, string> way = year.IsGood
            ? WayCosting.Of(year.Value, asked)
            : Outcome<Way, string>.Bad(year.Refusals);
        if (!way.IsGood)
        {
            Refuse(string.Join(' ', way.Refusals));
            return;
        }

        _before.Push((Wishes, Shown!));
        Wishes = wishes;
        Year = year.Value;
        Ask(way.Value);
        Tell(told);
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

    // The next stop; beyond the last one there is no limit any more.
    private static decimal? Next(ImmutableArray<decimal> stops, decimal from, int direction, bool isWish)
    {
        decimal[] there = direction > 0 ? [.. stops.Where(stop => stop > from)] : [.. stops.Where(stop => stop < from)];
        return there.Length == 0 ? (direction > 0 ? null : stops[0])
            : direction < 0 ? there[^1]
            : isWish ? there[0]
            : null;
    }
}
