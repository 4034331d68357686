using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Entry;

/// <summary>Whether two areas stand under one roof that holds vapour.</summary>
/// <param name="Shared">No when one of them is in the open or the houses differ; not known while a name is
/// missing.</param>
/// <param name="Needs">What would have to be known; empty unless that is not known.</param>
internal sealed record Roof(Truth Shared, ImmutableArray<Need> Needs)
{
    private const string EnclosedCovers = "enclosed-cover";

    /// <summary>The roof of two areas.</summary>
    public static Roof Of(VisitArea area, VisitArea other, KnowledgeBase knowledge)
    {
        if (IsOpen(area, knowledge) || IsOpen(other, knowledge))
            return new Roof(Truth.No, []);
        string? here = HouseOf(area),
            there = HouseOf(other);
        if (here is not null && there is not null && here != there)
            return new Roof(Truth.No, []);
        ImmutableArray<Need> needs =
        [
            .. Word(area, QuestionIds.Cover) is null || Word(other, QuestionIds.Cover) is null
                ? new[] { Need.Question(QuestionIds.Cover) }
                : [],
            .. here is null || there is null ? new[] { Need.Question(QuestionIds.House) } : [],
        ];
        return new Roof(needs.IsEmpty ? Truth.Yes : Truth.NotKnown, needs);
    }

    /// <summary>Whether the area is known to lie in the open: what is put on there closes no house.</summary>
    public static bool IsOpen(VisitArea area, KnowledgeBase knowledge) =>
        Word(area, QuestionIds.Cover) is { } cover
        && knowledge.Vocabulary.TryGetValue(EnclosedCovers, out WordList? enclosed)
        && !enclosed.Contains(cover);

    /// <summary>The name of the house; null when it is not told.</summary>
    public static string? HouseOf(VisitArea area) => Word(area, QuestionIds.House);

    private static string? Word(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words { Value.Count: 1 } words ? words.Value.First() : null;
}
