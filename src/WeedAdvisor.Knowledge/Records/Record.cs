using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>What every record of the knowledge folder carries.</summary>
public abstract record Record
{
    /// <summary>The record's id: kebab-case, unique in its catalogue.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// Keys of the sources it rests on; never empty. <c>common-practice</c>, <c>memory</c> and <c>invented</c> are keys
    /// too.
    /// </summary>
    public required ImmutableArray<string> Sources { get; init; }

    /// <summary>Names of the fields whose value is from memory and not confirmed.</summary>
    public ImmutableArray<string> Memory { get; init; } = [];

    /// <summary>Where the record stands.</summary>
    public required Place Where { get; init; }
}
