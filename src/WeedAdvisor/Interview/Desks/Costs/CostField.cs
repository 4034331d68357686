using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Interview.Desks.Costs;

/// <summary>A number that the costs of an area turn on. It can be typed, or moved from stop to stop.</summary>
/// <param name="Label">What it is, with its unit.</param>
/// <param name="Help">More about it.</param>
/// <param name="Low">The least that is taken.</param>
/// <param name="High">The most.</param>
/// <param name="IsWhole">Whether it has no decimals.</param>
/// <param name="Stops">Where it stops when it is moved, lowest first.</param>
public sealed record CostField(
    string Label,
    string Help,
    decimal Low,
    decimal High,
    bool IsWhole,
    ImmutableArray<decimal> Stops
)
{
    private const int BarColumns = 16;

    /// <summary>Pots of the area.</summary>
    public static CostField Pots { get; } =
        new(
            "Pots",
            "Pots in this area. Tools that have to be bought are shared by them.",
            1,
            YearCase.MostPots,
            IsWhole: true,
            [
                100,
                200,
                500,
                1000,
                2000,
                3000,
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
                1_000_000,
            ]
        );

    /// <summary>Cost of an hour, US dollars.</summary>
    public static CostField Wage { get; } =
        new(
            "An hour of work, USD",
            "What an hour costs with everything on it.",
            0,
            Planning.Weeding.Wage.Highest,
            IsWhole: false,
            Steps(0, 60, 1)
        );

    /// <summary>Weeks between rounds of weeding.</summary>
    public static CostField Interval { get; } =
        new(
            "Weeks between rounds",
            "Weeks between two rounds of weeding today. Every way starts from them; the best ones also show their own.",
            1,
            WeedingPlan.LongestInterval,
            IsWhole: true,
            Steps(1, 12, 1)
        );

    /// <summary>Weeds that a round passes over, percent.</summary>
    public static CostField Missed { get; } =
        new(
            "Missed by a round, %",
            "Of a hundred weeds large enough to pull, those that a round passes over.",
            0,
            100,
            IsWhole: false,
            Steps(0, 40, 1)
        );

    /// <summary>Seedlings that today's applications stop, percent.</summary>
    public static CostField Control { get; } =
        new(
            "Stopped by what you apply, %",
            "Of a hundred seedlings, how many today's applications stop all year, as you know it. Empty: what the "
                + "records "
                + "say. Costs stay those noted in the visit.",
            0,
            100,
            IsWhole: false,
            Steps(0, 100, 5)
        );

    /// <summary>All of them, in order.</summary>
    public static ImmutableArray<CostField> All { get; } = [Pots, Wage, Interval, Missed, Control];

    /// <summary>What may be written.</summary>
    public string Expected =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(IsWhole ? "a whole number" : "a number")} from {Low} to {High}"
        );

    /// <summary>Reads what is typed, the same in every culture; null when it is none of this field.</summary>
    public decimal? Read(string text) =>
        decimal.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
        && value >= Low
        && value <= High
        && (!IsWhole || value == decimal.Truncate(value))
            ? value
            : null;

    /// <summary>A value as it is typed.</summary>
    public static string Write(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>The next stop above or below a value; the value itself beyond the last stop.</summary>
    /// <param name="value">Where it stands.</param>
    /// <param name="direction">1 for more, -1 for less.</param>
    public decimal Next(decimal value, int direction)
    {
        ImmutableArray<decimal> there =
            direction > 0 ? [.. Stops.Where(stop => stop > value)] : [.. Stops.Where(stop => stop < value)];
        return there.IsEmpty ? value
            : direction > 0 ? there[0]
            : there[^1];
    }

    /// <summary>A value as a bar over the stops.</summary>
    public string Bar(decimal? value)
    {
        int passed = value is { } at ? Stops.Count(stop => stop <= at) : 0;
        int full = value is null
            ? 0
            : (int)Math.Round(BarColumns * passed / (double)Stops.Length, MidpointRounding.AwayFromZero);
        return $"[{new string('=', full)}{new string('.', BarColumns - full)}]";
    }

    private static ImmutableArray<decimal> Steps(int from, int to, int step) =>
        [.. Enumerable.Range(0, ((to - from) / step) + 1).Select(i => (decimal)(from + (i * step)))];
}
