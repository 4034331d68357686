using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>
/// An amount as a kitchen scale or a graded jug can show it, in metric and US units. Always rounded down, so that no
/// dose passes a label's or a published maximum by rounding.
/// </summary>
public static class MeasuringOut
{
    // Marks on scales and jugs: up to the amount (not included), the step between marks. The last serves all that is
    // more.
    private static readonly ImmutableArray<Mark> s_grams =
    [
        new(10, "g", 0.1m),
        new(5000, "g", 1),
        new(null, "kg", 0.1m),
    ];
    private static readonly ImmutableArray<Mark> s_ounces = [new(16, "oz", 0.1m), new(null, "lb", 0.1m)];
    private static readonly ImmutableArray<Mark> s_millilitres =
    [
        new(10, "mL", 0.1m),
        new(100, "mL", 1),
        new(1000, "mL", 5),
        new(5000, "mL", 50),
        new(null, "L", 0.1m),
    ];
    private static readonly ImmutableArray<Mark> s_fluidOunces =
    [
        new(0.5m, "tsp", 0.25m),
        new(8, "fl-oz", 0.125m),
        new(32, "fl-oz", 0.25m),
        new(128, "fl-oz", 1),
        new(null, "gal", 0.125m),
    ];

    /// <summary>The amount as it can be measured out: metric, then US.</summary>
    /// <param name="amount">A weight or a volume, zero or more.</param>
    /// <returns>
    /// None to two amounts, none of them more than <paramref name="amount"/>. A system is left out when the amount is
    /// less than its smallest mark: it cannot be measured that way.
    /// </returns>
    /// <exception cref="ArgumentException">It is neither a weight nor a volume, or it is below zero.</exception>
    public static ImmutableArray<Quantity> Of(Quantity amount)
    {
        if (amount.Value < 0)
            throw new ArgumentException($"{amount} is below zero", nameof(amount));
        if (amount.Dimension == Dimension.Weight)
            return [.. Down(amount, s_grams), .. Down(amount, s_ounces)];
        return amount.Dimension == Dimension.Volume
            ? [.. Down(amount, s_millilitres), .. Down(amount, s_fluidOunces)]
            : throw new ArgumentException($"{amount} is neither weighed nor poured", nameof(amount));
    }

    private static ImmutableArray<Quantity> Down(Quantity amount, ImmutableArray<Mark> marks)
    {
        // The bounds of a system's marks are all in the unit that it counts small amounts in.
        string bounds = marks[0].Unit == "tsp" ? "fl-oz" : marks[0].Unit;
        decimal size = amount.In(bounds);
        Mark mark = marks.First(mark => mark.Below is not { } below || size < below);

        // Conversions leave a trace in the last digits; a whole number of steps must stay one. The trace is never
        // weighed.
        decimal steps = Math.Floor(Math.Round(amount.In(mark.Unit) / mark.Step, 12));
        return steps == 0 ? [] : [Quantity.Of(steps * mark.Step, mark.Unit)];
    }

    private sealed record Mark(decimal? Below, string Unit, decimal Step);
}
