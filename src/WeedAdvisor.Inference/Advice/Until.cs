using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Advice;

/// <summary>What ends the bars of an action: the last of its days and hours, and every state it waits for.</summary>
/// <param name="From">The first moment at which no day or hour stands against it, by the clock of the place; null
/// without any.</param>
/// <param name="HasHour">Whether the moment is an hour and not the beginning of a day.</param>
/// <param name="States">States in plain words, such as <c>when the flush has hardened</c>; each once.</param>
public sealed record Until(DateTime? From, bool HasHour, ImmutableArray<string> States)
{
    /// <summary>The day on which it becomes possible as far as days go; null without any.</summary>
    public DateOnly? Day => From is { } from ? DateOnly.FromDateTime(from) : null;

    /// <summary>Whether the day is not one that can be told: a state, or a moment that nobody knows.</summary>
    public bool IsOpen => From is null && States.IsEmpty;
}
