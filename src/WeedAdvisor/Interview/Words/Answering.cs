using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Words;

/// <summary>Answers in words: what may be answered, and what was.</summary>
public static class Answering
{
    /// <summary>
    /// The answers a question offers, in order: its own, or those of the catalogue it asks for. Empty for numbers and
    /// dates.
    /// </summary>
    public static ImmutableArray<AnswerChoice> ChoicesOf(KnowledgeBase knowledge, Question question) =>
        question.Kind switch
        {
            QuestionKind.Region => ByName(knowledge.Regions.Values.Select(r => new AnswerChoice(r.Id, r.Name))),
            QuestionKind.Crops => ByName(knowledge.Crops.Values.Select(c => new AnswerChoice(c.Id, c.Name))),
            _ => question.Choices,
        };

    /// <summary>Whether several answers may be given at once.</summary>
    public static bool TakesSeveral(Question question) => question.Kind is QuestionKind.AnyOf or QuestionKind.Crops;

    /// <summary>What a number or a date must look like, in words.</summary>
    public static string Expected(Question question) =>
        question switch
        {
            { Kind: QuestionKind.Number, Between: { } between } =>
                $"a number of {UnitText(question.Unit)} from {Number(between.Low)} to {Number(between.High)}"
                    + Sizes(question),
            { Kind: QuestionKind.Number } => $"a number of {UnitText(question.Unit)}",
            { Kind: QuestionKind.Date, PastOnly: true } => "a date not after the visit, written 2026-04-30",
            { Kind: QuestionKind.Date } => "a date, written 2026-04-30",
            { Kind: QuestionKind.Name } => "a short name, such as house-2",
            { Kind: QuestionKind.Chemicals } =>
                "the active on the bag, several with commas between, such as oryzalin, vinegar; or none",
            _ => "one of the answers",
        };

    /// <summary>An answer in words for the grower.</summary>
    public static string Text(KnowledgeBase knowledge, Question question, Answer answer) =>
        answer switch
        {
            Answer.Words { Value.Count: 0 } => "none",
            Answer.Words words => string.Join(", ", words.Value.Select(word => TextOf(knowledge, question, word))),
            Answer.Number number => $"{Number(number.Value)} {UnitText(question.Unit)}",
            Answer.Date date => Date(date.Value),
            _ => "not known",
        };

    /// <summary>A weed seen, in one line.</summary>
    public static string Weed(KnowledgeBase knowledge, WeedSeen seen) =>
        string.Join(
            ", ",
            Parts(
                WeedName(knowledge, seen.Weed),
                seen.Stage is { } stage ? StageText(knowledge, stage) : "stage not known",
                (seen.CoverPercent is { } cover ? $"{Number(cover)} % cover" : "cover not known")
                    + (seen.PotsPercent is { } pots ? $" of {Number(pots)} % of the pots" : ""),
                seen.Stands is { } place ? PlaceOfWeed(place) : null
            )
        );

    /// <summary>Where a weed stands, as it is typed and told.</summary>
    public static string PlaceOfWeed(string place) => place == WeedSeen.InGround ? "beside the pots" : "in the pots";

    /// <summary>A weed's common name.</summary>
    public static string WeedName(KnowledgeBase knowledge, string id) =>
        knowledge.Weeds.TryGetValue(id, out Weed? weed) ? weed.Name : id;

    /// <summary>A growth stage in words.</summary>
    public static string StageText(KnowledgeBase knowledge, string stage) =>
        knowledge.Vocabulary.TryGetValue("stage", out WordList? list) ? list.TextOf(stage) : stage;

    /// <summary>The growth stages, in order.</summary>
    public static ImmutableArray<AnswerChoice> Stages(KnowledgeBase knowledge) =>
        knowledge.Vocabulary.TryGetValue("stage", out WordList? list)
            ? [.. list.Words.Select(pair => new AnswerChoice(pair.Key, pair.Value))]
            : [];

    /// <summary>A number as people write it.</summary>
    public static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A date as files write it.</summary>
    public static string Date(DateOnly date) => CalendarDay.Text(date);

    private static ImmutableArray<AnswerChoice> ByName(IEnumerable<AnswerChoice> choices) =>
        [
            .. choices
                .OrderBy(choice => choice.Text, StringComparer.OrdinalIgnoreCase)
                .ThenBy(choice => choice.Id, StringComparer.Ordinal),
        ];

    private static string Sizes(Question question) =>
        question.Sizes.IsEmpty ? "" : $", or a size: {string.Join(", ", question.Sizes.Select(size => size.Name))}";

    private static string TextOf(KnowledgeBase knowledge, Question question, string word) =>
        question.Kind == QuestionKind.Chemicals
            ? ChemicalText(knowledge.ChemicalOf(word))
            : ChoicesOf(knowledge, question).FirstOrDefault(choice => choice.Id == word)?.Text ?? word;

    // What nobody knows by this name says so at once: it may be a slip.
    private static string ChemicalText(ChemicalMeant meant) =>
        meant switch
        {
            { Nearest: { } near } => $"{meant.Name} (not known; did you mean {near}?)",
            { Uses.IsEmpty: true, Gone: null, Mixed.IsEmpty: true } => $"{meant.Name} (no use of it is held)",
            _ => meant.Name,
        };

    private static string UnitText(string? unit) =>
        unit switch
        {
            null => "",
            "usd/h" => "US dollars an hour",
            _ => unit,
        };

    private static IEnumerable<string> Parts(params string?[] parts) => parts.OfType<string>();
}
