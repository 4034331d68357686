using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>What every record of the knowledge folder carries.</summary>
public abstract record Record
{
    private readonly ImmutableArray<string> _sources;
    private readonly ImmutableArray<string> _memory;

    /// <summary>The record's id: kebab-case, unique in its catalogue.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// Where each of its values comes from; nothing for a record that is one sentence and cites as a whole.
    /// </summary>
    public Origins From { get; init; } = Origins.None;

    /// <summary>
    /// Keys of the sources it rests on: those of its values, or what it cites as a whole. <c>common-practice</c>,
    /// <c>memory</c> and <c>invented</c> are keys too.
    /// </summary>
    public ImmutableArray<string> Sources
    {
        get => _sources.IsDefault ? From.Sources : _sources;
        init => _sources = value;
    }

    /// <summary>Names of the fields whose value is from memory and not confirmed.</summary>
    public ImmutableArray<string> Memory
    {
        get => _memory.IsDefault ? From.Memory : _memory;
        init => _memory = value;
    }

    /// <summary>Where the record stands.</summary>
    public required Place Where { get; init; }
}
