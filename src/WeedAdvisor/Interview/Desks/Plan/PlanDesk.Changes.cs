using WeedAdvisor.Interview.Desks.Costs;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <content>What is changed under the cursor.</content>
public sealed partial class PlanDesk
{
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
                MoveRounds(row.Part, shown, direction);
                break;
            case PlanRowKind.Measure:
                MoveMeasure(shown, direction);
                break;
            case PlanRowKind.Use:
                MoveProduct(row, direction);
                break;
            case PlanRowKind.Hours:
                SetHours(Next(s_hours, Wishes.Hours, BusiestWeekHours, direction));
                break;
            case PlanRowKind.Budget:
                SetBudget(Next(s_dollars, Wishes.Budget, SpentUsd, direction));
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
}
