using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// What conditions of rules are called: attributes from the list <c>condition</c> of the vocabulary, their words by the
/// texts of answers and the names of records. What stands in neither is said by its own word.
/// </summary>
/// <param name="knowledge">Where the words come from.</param>
public sealed class ConditionWords(KnowledgeBase knowledge)
{
    /// <summary>The list of the vocabulary that says how attributes read.</summary>
    public const string List = "condition";

    private const string ShortWord = "say.";
    private const string FoundKey = ".found";
    private const string Answers = "answers:";
    private const int MostWords = 6;

    private readonly WordList _list = knowledge.Vocabulary.GetValueOrDefault(List) ?? new WordList(List, []);
    private readonly ImmutableDictionary<string, string> _words = WordsOf(knowledge);

    /// <summary>The key of an attribute in the list.</summary>
    public static string KeyOf(FactKind kind, string attribute) =>
        kind switch
        {
            FactKind.Practice or FactKind.Treatment => $"action.{attribute}",
            _ => $"{kind.ToString().ToLowerInvariant()}.{attribute}",
        };

    /// <summary>The words with which a sentence about an attribute begins, such as <c>the stock is</c>.</summary>
    public string Beginning(FactKind kind, string attribute)
    {
        string key = KeyOf(kind, attribute);
        return _list.Contains(key) ? _list.TextOf(key) : $"{Names.Field(attribute)}:";
    }

    /// <summary>The whole sentence of an attribute that is one word; null when the list has none.</summary>
    public string? Whole(FactKind kind, string attribute, string word)
    {
        string key = $"{KeyOf(kind, attribute)}.{word}";
        return _list.Contains(key) ? _list.TextOf(key) : null;
    }

    /// <summary>What was found of an attribute as a whole sentence; null when the list has none.</summary>
    /// <param name="kind">The kind of fact.</param>
    /// <param name="attribute">The attribute.</param>
    /// <param name="found">What was found, in plain words.</param>
    public string? Found(FactKind kind, string attribute, string found)
    {
        string key = $"{KeyOf(kind, attribute)}{FoundKey}";
        return _list.Contains(key)
            ? _list
                .TextOf(key)
                .Replace("(s)", found == "1" ? "" : "s", StringComparison.Ordinal)
                .Replace("#", found, StringComparison.Ordinal)
            : null;
    }

    /// <summary>A word of an attribute in plain words.</summary>
    public string Say(FactKind kind, string attribute, string word) =>
        _list.Contains(ShortWord + word) ? _list.TextOf(ShortWord + word)
        : QuestionOf(kind, attribute) is { } question && AnswerOf(question, word) is { } answer ? answer
        : _words.GetValueOrDefault(word) ?? Names.Field(word);

    /// <summary>What was read of an attribute.</summary>
    public string Say(FactKind kind, string attribute, Reading reading) =>
        reading switch
        {
            Reading.Words words => Some([.. words.Value.Select(word => Say(kind, attribute, word))], "and"),
            Reading.Number number => Figures.Plain(number.Value),
            Reading.Nothing => "none",
            _ => "not known",
        };

    /// <summary>Several words with a word before the last, the rest of many counted.</summary>
    public static string Some(IReadOnlyList<string> words, string last)
    {
        if (words.Count > MostWords + 1)
        {
            string more = (words.Count - MostWords).ToString(CultureInfo.InvariantCulture);
            return $"{string.Join(", ", words.Take(MostWords))} {last} {more} more";
        }

        return words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} {last} {words[^1]}";
    }

    // Attributes of records that hold answers, such as the places an action is meant for, read as these.
    private static string? QuestionOf(FactKind kind, string attribute) =>
        kind == FactKind.Site && AttributeSchema.DerivedSite.All(one => one.Name != attribute) ? attribute
        : AttributeSchema.Of(kind).FirstOrDefault(one => one.Name == attribute)?.Words is { } words
        && words.StartsWith(Answers, StringComparison.Ordinal)
            ? words[Answers.Length..]
        : null;

    private string? AnswerOf(string question, string word) =>
        knowledge.QuestionOf(question)?.Choices.FirstOrDefault(choice => choice.Id == word)?.Text;

    private static ImmutableDictionary<string, string> WordsOf(KnowledgeBase knowledge)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (Crop crop in knowledge.Crops.Values)
            words[crop.Id] = crop.Name;
        foreach (Weed weed in knowledge.Weeds.Values)
            words[weed.Id] = weed.Name;
        foreach (
            CatalogueAction action in knowledge.Practices.Values.Concat<CatalogueAction>(knowledge.Treatments.Values)
        )
            words[action.Id] = action.Name;
        foreach (Region region in knowledge.Regions.Values)
            words[region.Id] = region.Name;
        return words.ToImmutableDictionary(StringComparer.Ordinal);
    }
}
