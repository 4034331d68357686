using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>What an interview remembers of an area beside its answers. It lasts as long as the interview.</summary>
/// <param name="NotKnown">Questions that the grower could not answer and that leave no mark in the area itself.</param>
/// <param name="Skipped">Questions passed over for now.</param>
/// <param name="Again">Questions not known that are being put once more.</param>
/// <param name="Parked">Answers to questions that have stopped applying, kept in case they apply again.</param>
public sealed record QuestionNotes(
    ImmutableHashSet<string> NotKnown,
    ImmutableHashSet<string> Skipped,
    ImmutableHashSet<string> Again,
    ImmutableSortedDictionary<string, Answer> Parked
)
{
    /// <summary>Questions of the whole nursery whose answer is to be given for this area alone.</summary>
    public ImmutableHashSet<string> OnlyHere { get; init; } = ImmutableHashSet.Create<string>(StringComparer.Ordinal);

    /// <summary>Nothing to remember.</summary>
    public static QuestionNotes Empty { get; } =
        new(
            ImmutableHashSet.Create<string>(StringComparer.Ordinal),
            ImmutableHashSet.Create<string>(StringComparer.Ordinal),
            ImmutableHashSet.Create<string>(StringComparer.Ordinal),
            ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal)
        );

    /// <summary>The notes without anything on one question.</summary>
    public QuestionNotes Without(string question) =>
        this with
        {
            NotKnown = NotKnown.Remove(question),
            Skipped = Skipped.Remove(question),
            Again = Again.Remove(question),
            Parked = Parked.Remove(question),
            OnlyHere = OnlyHere.Remove(question),
        };
}
