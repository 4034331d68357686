using WeedAdvisor.Interview.Desks.Costs;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <content>The numbers: hours, dollars, pots, moved from stop to stop or typed.</content>
public sealed partial class PlanDesk
{
    private const int MostLetters = 9;
    private const decimal Most = 1_000_000_000;

    private static readonly CostField s_hours = new(
        "Hours a week, at most",
        "",
        0,
        Most,
        IsWhole: false,
        [0, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200, 300, 400, 600, 1000, 2000]
    );

    private static readonly CostField s_dollars = new(
        "Materials and tools, at most",
        "",
        0,
        Most,
        IsWhole: false,
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
        ]
    );

    private string _typed = "";

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
        CostField limits = row.Kind switch
        {
            PlanRowKind.Pots => CostField.Pots,
            PlanRowKind.Budget => s_dollars,
            _ => s_hours,
        };
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

    // The next stop; above the last one, and above what is open, there is no limit.
    private static decimal? Next(CostField field, decimal? wish, decimal open, int direction)
    {
        decimal from = wish ?? open;
        decimal next = field.Next(from, direction);
        return direction < 0 ? next
            : wish is not null && next > from ? next
            : null;
    }
}
