using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// How long a step of the work takes, or how much a tool does, from the quick hand to the slow one: one range, or one
/// for each of several pot widths. Its id, one of <see cref="WorkingTimeIds.All"/>, names the unit.
/// </summary>
public sealed record WorkingTime : Record
{
    /// <summary>What it is, for the grower.</summary>
    public required string Name { get; init; }

    /// <summary>The range where the pot does not matter; null where it does.</summary>
    public Span? Value { get; init; }

    /// <summary>The ranges by pot width, narrowest first; empty where the pot does not matter.</summary>
    public ImmutableArray<TimeAtWidth> ByPotWidth { get; init; } = [];

    /// <summary>
    /// The range for a pot: between two widths that are given by straight line, beyond the first and the last as
    /// theirs.
    /// </summary>
    /// <param name="widthCm">Width of the pot, centimetres.</param>
    public Span At(decimal widthCm)
    {
        if (Value is { } value)
            return value;
        TimeAtWidth above = ByPotWidth.FirstOrDefault(row => row.WidthCm >= widthCm) ?? ByPotWidth[^1];
        TimeAtWidth below = ByPotWidth.LastOrDefault(row => row.WidthCm <= widthCm) ?? ByPotWidth[0];
        if (above.WidthCm <= below.WidthCm)
            return above.Value;
        decimal share = (widthCm - below.WidthCm) / (above.WidthCm - below.WidthCm);
        return new Span(
            below.Value.Low + (share * (above.Value.Low - below.Value.Low)),
            below.Value.High + (share * (above.Value.High - below.Value.High))
        );
    }
}

/// <summary>A range at one pot width.</summary>
/// <param name="WidthCm">Width of the pot, centimetres.</param>
/// <param name="Value">The range, in the unit that the id names.</param>
public sealed record TimeAtWidth(decimal WidthCm, Span Value);
