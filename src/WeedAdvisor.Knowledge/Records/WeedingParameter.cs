namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// A number that the hand-weeding model needs. Its id carries the unit and is one of
/// <see cref="WeedingParameterLimits.All"/>.
/// </summary>
public sealed record WeedingParameter : Record
{
    /// <summary>What it is, for the grower.</summary>
    public required string Name { get; init; }

    /// <summary>The value, in the unit that the id names.</summary>
    public required decimal Value { get; init; }

    /// <summary>The range in which it may lie; one number, the value, when it is held to be certain.</summary>
    public required Span Range { get; init; }
}
