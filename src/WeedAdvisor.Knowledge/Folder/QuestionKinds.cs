using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>
/// The kinds of the questions that the program itself reads. One of another kind would load well and never be
/// understood, so that what it asks would pass for not told.
/// </summary>
internal static class QuestionKinds
{
    /// <summary>One problem for each such question of another kind.</summary>
    public static IEnumerable<Problem> Wrong(IEnumerable<Question> questions) =>
        questions
            .Where(question => KindOf(question.Id) is { } kind && kind != question.Kind)
            .Select(question => new Problem(
                question.Where,
                $"the question '{question.Id}' of kind {Word(question.Kind)}",
                $"kind {Word(KindOf(question.Id)!.Value)}: the program itself reads this question"
            ));

    private static QuestionKind? KindOf(string id) =>
        id switch
        {
            QuestionIds.Place => QuestionKind.OneOf,
            QuestionIds.Cover => QuestionKind.OneOf,
            QuestionIds.Heated => QuestionKind.OneOf,
            QuestionIds.House => QuestionKind.Name,
            QuestionIds.Stock => QuestionKind.OneOf,
            QuestionIds.Crops => QuestionKind.Crops,
            QuestionIds.Growth => QuestionKind.OneOf,
            QuestionIds.Shipping => QuestionKind.OneOf,
            QuestionIds.ComesNext => QuestionKind.OneOf,
            QuestionIds.ComesNextOn => QuestionKind.Date,
            QuestionIds.Organic => QuestionKind.OneOf,
            QuestionIds.Region => QuestionKind.Region,
            QuestionIds.Moisture => QuestionKind.OneOf,
            QuestionIds.Surroundings => QuestionKind.OneOf,
            QuestionIds.Spacing => QuestionKind.OneOf,
            QuestionIds.Mulch => QuestionKind.OneOf,
            QuestionIds.MulchDepth => QuestionKind.Number,
            QuestionIds.Rounds => QuestionKind.Number,
            QuestionIds.Wage => QuestionKind.Number,
            QuestionIds.Pots => QuestionKind.Number,
            QuestionIds.PotWidth => QuestionKind.Number,
            QuestionIds.Equipment => QuestionKind.AnyOf,
            QuestionIds.Licensed => QuestionKind.OneOf,
            QuestionIds.PottedOn => QuestionKind.Date,
            QuestionIds.CoveringPlanned => QuestionKind.OneOf,
            QuestionIds.CoveringDate => QuestionKind.Date,
            QuestionIds.Weather => QuestionKind.AnyOf,
            QuestionIds.InHand => QuestionKind.Chemicals,
            QuestionIds.PutOnLately => QuestionKind.OneOf,
            QuestionIds.Weeds => QuestionKind.Weeds,
            QuestionIds.ExpectedWeeds => QuestionKind.OneOf,
            QuestionIds.Past => QuestionKind.Past,
            _ => null,
        };

    private static string Word(QuestionKind kind) =>
        kind switch
        {
            QuestionKind.OneOf => "one-of",
            QuestionKind.AnyOf => "any-of",
            _ => kind.ToString().ToLowerInvariant(),
        };
}
