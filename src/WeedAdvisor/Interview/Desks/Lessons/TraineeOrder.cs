using System.Collections.Immutable;

namespace WeedAdvisor.Interview.Desks.Lessons;

/// <summary>A trainee's order of the work while he puts it together.</summary>
/// <param name="Choices">Ids of the actions that he may choose from.</param>
/// <param name="Named">Ids of those he has named, the first first.</param>
public sealed record TraineeOrder(ImmutableArray<string> Choices, ImmutableArray<string> Named)
{
    /// <summary>Nothing to choose from.</summary>
    public static TraineeOrder None { get; } = new([], []);

    /// <summary>The place of a choice in the order, from 1; null while it has none.</summary>
    /// <param name="choice">Its place among the choices, from 0.</param>
    public int? PlaceOf(int choice) => Named.IndexOf(Choices[choice]) is var at and >= 0 ? at + 1 : null;

    /// <summary>The order with a choice put last, or taken out where it has a place.</summary>
    /// <param name="choice">Its place among the choices, from 0.</param>
    public TraineeOrder Turned(int choice) =>
        this with
        {
            Named = PlaceOf(choice) is null ? Named.Add(Choices[choice]) : Named.Remove(Choices[choice]),
        };
}
