using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Interview.Desks.Season;

/// <content>The wishes, and how they are changed under the cursor.</content>
public sealed partial class SeasonDesk
{
    /// <summary>Closes the week under the cursor, or opens it again.</summary>
    public void ToggleWeek()
    {
        if (Plan is not null)
            Toggle([Week], $"Week of {Answering.Date(DayUnderCursor)}");
    }

    /// <summary>Closes the month under the cursor; opens it when all of it is closed.</summary>
    public void ToggleMonth()
    {
        if (Plan is not { } plan)
            return;
        DateOnly day = DayUnderCursor;
        Toggle(
            [
                .. Enumerable
                    .Range(0, SeasonYear.Weeks)
                    .Where(week =>
                        plan.Case.Year.DayOf(week) is var one && one.Month == day.Month && one.Year == day.Year
                    ),
            ],
            day.ToString("MMMM yyyy", CultureInfo.InvariantCulture)
        );
    }

    /// <summary>
    /// Drops the product that goes on in the week under the cursor; where nothing does, takes back the last one
    /// dropped.
    /// </summary>
    public void DropOrTakeBack()
    {
        SeasonRequest wishes = Wishes;
        if (Use is { } use)
        {
            Product(
                wishes with
                {
                    Dropped = wishes.Dropped.Add(use.Name),
                    MustUse = wishes.MustUse.Remove(use.Name),
                },
                $"{Name(use.Name)} dropped"
            );
        }
        else if (wishes.Dropped is [.., var last])
        {
            Change(wishes with { Dropped = wishes.Dropped.Remove(last) }, $"{Name(last)} may go on again");
        }
        else
        {
            Refuse("Nothing goes on in this week: go to an application with Up or Down.");
        }
    }

    /// <summary>
    /// Asks that the product of the week under the cursor goes on some time, or lets it go; where nothing goes on, lets
    /// go the last one asked for.
    /// </summary>
    public void KeepOrLetGo()
    {
        SeasonRequest wishes = Wishes;
        if (Use is { } use && !wishes.MustUse.Contains(use.Name))
            Product(wishes with { MustUse = wishes.MustUse.Add(use.Name) }, $"{Name(use.Name)} must go on");
        else if ((Use?.Name ?? wishes.MustUse.LastOrDefault()) is { } kept)
            Change(wishes with { MustUse = wishes.MustUse.Remove(kept) }, $"{Name(kept)} need not go on");
        else
            Refuse("Nothing goes on in this week: go to an application with Up or Down.");
    }

    /// <summary>Goes on to the next rotation: once, twice, any number running.</summary>
    public void NextRotation() =>
        Change(
            Wishes with
            {
                RunOfSite = Wishes.RunOfSite switch
                {
                    1 => 2,
                    2 => null,
                    _ => 1,
                },
            },
            "Rotation changed"
        );

    /// <summary>Allows one application more, or one fewer than the plan now has.</summary>
    /// <param name="more">1 for more, -1 for fewer.</param>
    public void AllowMore(int more)
    {
        if (Plan is not { } plan)
            return;
        int most = plan.Case.Problem.Wishes.AtMost ?? SeasonYear.Weeks;

        // A limit above what the plan has changes nothing: fewer is counted from the plan.
        int from = more < 0 ? Math.Min(most, plan.Plan?.Applications.Length ?? most) : most;
        int now = Math.Clamp(from + more, 0, SeasonYear.Weeks);
        if (now != most)
            Change(Wishes with { AtMost = now }, $"At most {SeasonLines.Applications(now)}");
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo()
    {
        if (_before.TryPop(out SeasonRequest? before))
        {
            Ask(before);
            Tell("Last change taken back");
        }
        else
        {
            Refuse("There is no change to take back.");
        }
    }

    /// <summary>Takes all wishes back.</summary>
    public void Reset()
    {
        if (!IsFree(Wishes))
            Change(new SeasonRequest(), "All wishes taken back");
    }

    private static bool IsFree(SeasonRequest wishes) =>
        wishes.Closed.IsEmpty
        && wishes.Dropped.IsEmpty
        && wishes.MustUse.IsEmpty
        && wishes.AtMost is null
        && wishes.RunOfSite == 1;

    private void Toggle(ImmutableArray<int> weeks, string what)
    {
        ImmutableSortedSet<int> closed = Wishes.Closed;
        bool opens = weeks.All(closed.Contains);
        Change(
            Wishes with
            {
                Closed = opens ? closed.Except(weeks) : closed.Union(weeks),
            },
            $"{what} {(opens ? "open again" : "closed")}"
        );
    }

    private void Product(SeasonRequest wishes, string told)
    {
        if (wishes.Dropped.Length + wishes.MustUse.Length > MostProducts)
            Refuse(
                FormattableString.Invariant($"No more than {MostProducts} products can be dropped or kept at once.")
            );
        else
            Change(wishes, told);
    }

    private void Change(SeasonRequest wishes, string told)
    {
        if (Plan is null)
            return;
        _before.Push(Wishes);
        Ask(wishes);
        Tell(told);
    }
}
