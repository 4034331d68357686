using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

// What was found, told of the area and not of the rule.
public sealed partial class ConditionSentences
{
    private const string It = "it ",
        Its = "its ",
        They = "they ";

    /// <summary>What of the area meets a condition, as told of the area and not of the rule; nothing where it is not
    /// sure.</summary>
    public IEnumerable<string> Facts(MatchedPattern match) =>
        match.Asked switch
        {
            Pattern.Fact { Kind: FactKind.Site } => Met(match, FactKind.Site),
            Pattern.Fact { Kind: var kind } when match.Truth != Truth.No && !match.IsWithoutFact => Met(match, kind)
                is { Length: > 0 } met
                ? [Of(match.Fact, kind, met)]
                : [match.Fact],
            Pattern.Any { Inner: Pattern.Fact { Kind: not FactKind.Site } inner } when match.Truth == Truth.Yes => inner
                .Tests
                .IsEmpty
                ? [match.Fact]
                : [Of(match.Fact, inner.Kind, [.. TestsOf(inner, match)])],
            Pattern.HasFinding finding when match.Truth == Truth.Yes => [TextOf(finding.Id)],
            _ => Of(match).Where(sentence => sentence.Truth == Truth.Yes).Select(sentence => sentence.Text),
        };

    // What is told of one is one sentence: "common liverwort is up and is one of the mosses". Of several weeds it is
    // told of each.
    private static string Of(string fact, FactKind kind, string[] sentences)
    {
        string subject = kind == FactKind.Crop ? They : It;
        bool areSeveral = kind == FactKind.Weed && fact.Contains(", ", StringComparison.Ordinal);
        string[] does = [.. sentences.Where(sentence => sentence.StartsWith(subject, StringComparison.Ordinal))];
        string[] owns = [.. sentences.Where(sentence => sentence.StartsWith(Its, StringComparison.Ordinal))];
        // What closes an area is a sentence already.
        if (
            kind is FactKind.Closure or FactKind.Escape
            || does.Length == 0
            || does.Length + owns.Length < sentences.Length
        )
            return $"{fact}: {Listing.And(sentences)}";
        string told = Listing.And([.. does.Select(sentence => sentence[subject.Length..]), .. owns]);
        return areSeveral ? $"{fact}: each {told}" : $"{fact} {told}";
    }

    private string[] Met(MatchedPattern match, FactKind kind) =>
        [
            .. match
                .Tests.Where(test =>
                    test is { Truth: Truth.Yes, Found: not null }
                    && !(kind != FactKind.Site && test.Attribute == "id")
                    && !(kind == FactKind.Crop && SaysItsName(match.Fact, test))
                    && !(test.Asked is AttributeTest.Variable { Binds: true } && IsComparedLater(match, test))
                )
                .Select(test => FoundSentence(kind, match.Fact, test)),
        ];

    // That ferns count among ferns tells nothing.
    private bool SaysItsName(string fact, MatchedTest test) =>
        test is { Asked: AttributeTest.Word { Negated: false } asked, Found: Reading.Words found }
        && found.Value.Where(asked.Words.Contains).ToArray() is [var only]
        && _words.Say(FactKind.Crop, test.Attribute, only) == fact;

    // What a later test names again is said there.
    private static bool IsComparedLater(MatchedPattern match, MatchedTest test) =>
        match.Tests.Any(other => other != test && other.Attribute == test.Attribute);

    private string FoundSentence(FactKind kind, string fact, MatchedTest test)
    {
        if (
            test.Found is Reading.Words { Value: { Count: 1 } only }
            && _words.Whole(kind, test.Attribute, only.First()) is { } whole
        )
            return whole;
        string found =
            test is { Asked: AttributeTest.Word { Negated: false } asked, Found: Reading.Words many }
            && many.Value.Any(asked.Words.Contains)
                ? Named(kind, fact, test.Attribute, [.. many.Value.Where(asked.Words.Contains)])
                : _words.Say(kind, test.Attribute, test.Found!);
        return _words.Found(kind, test.Attribute, found) ?? $"{_words.Beginning(kind, test.Attribute)} {found}";
    }

    // That hydrangeas count among hydrangeas tells nothing where they count among shrubs as well.
    private string Named(FactKind kind, string fact, string attribute, string[] words)
    {
        string[] said = [.. words.Select(word => _words.Say(kind, attribute, word))];
        return ConditionWords.Some(said.Length > 1 ? [.. said.Where(one => one != fact)] : said, "and");
    }
}
