using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>A group of crops that is treated alike, or a crop that is known to be sensitive.</summary>
public sealed record Crop : Record
{
    /// <summary>Name for the grower.</summary>
    public required string Name { get; init; }

    /// <summary>Ids of the groups it belongs to, as written in the record (without itself).</summary>
    public required WordSet Parents { get; init; }

    /// <summary>Itself and every group above it.</summary>
    public required WordSet IsA { get; init; }

    /// <summary>Words of list <c>crop-trait</c>.</summary>
    public required WordSet Traits { get; init; }

    /// <summary>What it bars or needs.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
