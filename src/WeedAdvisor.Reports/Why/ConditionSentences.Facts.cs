using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Why;

// What was found, told of the area and not of the rule.
public sealed partial class ConditionSentences
{
    private const string It = "it ";

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

    // One weed is said in its own sentence: "common liverwort is up and is one of the mosses".
    private static string Of(string fact, FactKind kind, string[] sentences) =>
        kind == FactKind.Weed
        && !fact.Contains(", ", StringComparison.Ordinal)
        && sentences.All(sentence => sentence.StartsWith(It, StringComparison.Ordinal))
            ? $"{fact} {string.Join(" and ", sentences.Select(sentence => sentence[It.Length..]))}"
            : $"{fact}: {string.Join(" and ", sentences)}";

    private string[] Met(MatchedPattern match, FactKind kind) =>
        [
            .. match
                .Tests.Where(test =>
                    test is { Truth: Truth.Yes, Found: not null }
                    && !(kind != FactKind.Site && test.Attribute == "id")
                    && !(test.Asked is AttributeTest.Variable { Binds: true } && IsComparedLater(match, test))
                )
                .Select(test => FoundSentence(kind, test)),
        ];

    // What a later test names again is said there.
    private static bool IsComparedLater(MatchedPattern match, MatchedTest test) =>
        match.Tests.Any(other => other != test && other.Attribute == test.Attribute);

    private string FoundSentence(FactKind kind, MatchedTest test)
    {
        if (
            test.Found is Reading.Words { Value: { Count: 1 } only }
            && _words.Whole(kind, test.Attribute, only.First()) is { } whole
        )
            return whole;
        bool isOneOfMany =
            test is { Asked: AttributeTest.Word { Negated: false } asked, Found: Reading.Words many }
            && many.Value.Any(asked.Words.Contains);
        string found = isOneOfMany
            ? ConditionWords.Some(
                [
                    .. ((Reading.Words)test.Found!)
                        .Value.Where(((AttributeTest.Word)test.Asked!).Words.Contains)
                        .Select(word => _words.Say(kind, test.Attribute, word)),
                ],
                "and"
            )
            : _words.Say(kind, test.Attribute, test.Found!);
        return $"{_words.Beginning(kind, test.Attribute)} {found}";
    }
}
