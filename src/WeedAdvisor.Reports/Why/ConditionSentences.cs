using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>A condition as a sentence, with how it stands here.</summary>
/// <param name="Truth">Whether it is met.</param>
/// <param name="Text">What the rule asks for, such as <c>the stock is newly potted plants</c>.</param>
/// <param name="Here">What was found, where the sentence does not say it already; null else.</param>
public sealed record ConditionSentence(Truth Truth, string Text, string? Here)
{
    /// <summary>The sentence with what was found.</summary>
    public string Full => Figures.Sentence(Here is null ? $"{Text}." : $"{Text}. Here: {Here.TrimEnd('.')}.");
}

/// <summary>Conditions of rules as sentences: every kind of pattern and of test.</summary>
/// <param name="knowledge">Where the words come from.</param>
public sealed partial class ConditionSentences(KnowledgeBase knowledge)
{
    private readonly ConditionWords _words = new(knowledge);

    /// <summary>
    /// The sentences of one condition on what it matched. A condition of which only words are at hand says these.
    /// </summary>
    public ImmutableArray<ConditionSentence> Of(MatchedPattern match) =>
        match.Asked switch
        {
            Pattern.Fact { Kind: FactKind.Site } site => OfTests(match, site, ""),
            Pattern.Fact fact when match.IsWithoutFact =>
            [
                new ConditionSentence(match.Truth, $"{Some(fact.Kind)} is here{Such(fact, match)}", "none"),
            ],
            Pattern.Fact { Tests.IsEmpty: true } fact when !fact.Kind.IsOfCatalogue() =>
            [
                new ConditionSentence(match.Truth, $"{Some(fact.Kind)} is here", match.Fact),
            ],
            Pattern.Fact fact => OfTests(match, fact, $"{match.Fact}: "),
            Pattern.HasFinding finding => [Finding(match, finding.Id)],
            Pattern.None { Inner: Pattern.HasFinding finding } => [NoFinding(match, finding.Id)],
            Pattern.Any { Inner: Pattern.HasFinding finding } => [Finding(match, finding.Id)],
            Pattern.None { Inner: Pattern.Fact { Kind: FactKind.Site } site } =>
            [
                new ConditionSentence(match.Truth, $"it is not so that {Tests(site, match)}", null),
            ],
            Pattern.Any { Inner: Pattern.Fact { Kind: FactKind.Site } site } =>
            [
                new ConditionSentence(match.Truth, Tests(site, match), null),
            ],
            Pattern.None { Inner: Pattern.Fact inner } =>
            [
                new ConditionSentence(
                    match.Truth,
                    $"no {Noun(inner.Kind)} is here{Such(inner, match)}",
                    match.Truth == Truth.Yes ? null : NotNone(match)
                ),
            ],
            Pattern.Any { Inner: Pattern.Fact inner } =>
            [
                new ConditionSentence(
                    match.Truth,
                    $"{Some(inner.Kind)} is here{Such(inner, match)}",
                    match.Truth == Truth.NotKnown ? NotNone(match) : match.Fact
                ),
            ],
            _ =>
            [
                new ConditionSentence(match.Truth, match.Pattern, match.Fact),
                .. match.Tests.Select(test => new ConditionSentence(
                    test.Truth,
                    $"{test.Attribute}: {test.Expected}",
                    test.Read
                )),
            ],
        };

    /// <summary>
    /// A condition on a weed, a crop or an earlier use as one sentence that names none, such as <c>a weed is here such
    /// that it is up</c>; null for any other condition.
    /// </summary>
    public string? Wanted(MatchedPattern match) =>
        Sought(match) is { } sought ? $"{Some(((Pattern.Fact)match.Asked!).Kind)} is here{sought}" : null;

    /// <summary>What such a condition is for, such as <c>a weed that is up</c>; null for any other condition.</summary>
    public string? For(MatchedPattern match) =>
        Sought(match) is { } sought ? Some(((Pattern.Fact)match.Asked!).Kind) + sought : null;

    private string? Sought(MatchedPattern match) =>
        match is { Asked: Pattern.Fact { Tests.IsEmpty: false } fact, IsWithoutFact: false }
        && fact.Kind != FactKind.Site
        && !fact.Kind.IsOfCatalogue()
            ? Such(fact, match)
            : null;

    /// <summary>What a rule asks for by a test, as a sentence.</summary>
    /// <param name="kind">The kind of fact.</param>
    /// <param name="attribute">The attribute.</param>
    /// <param name="test">The test.</param>
    /// <param name="bound">What the variables stand for.</param>
    public string Asked(
        FactKind kind,
        string attribute,
        AttributeTest test,
        ImmutableDictionary<string, Reading> bound
    ) =>
        test is AttributeTest.Word { Negated: false, Words: { Count: 1 } only }
        && _words.Whole(kind, attribute, only.First()) is { } whole
            ? whole
            : $"{_words.Beginning(kind, attribute)} {Ending(kind, attribute, test, bound)}";

    private ImmutableArray<ConditionSentence> OfTests(MatchedPattern match, Pattern.Fact fact, string head) =>
        [
            .. match
                .Tests.Where(test => !(test.Asked is AttributeTest.Variable { Binds: true } && IsNamed(test)))
                .Select(test => OfTest(match, fact.Kind, test, head)),
        ];

    // A name given to what is known asks nothing: what uses it later says it.
    private static bool IsNamed(MatchedTest test) => test.Truth == Truth.Yes;

    private ConditionSentence OfTest(MatchedPattern match, FactKind kind, MatchedTest test, string head)
    {
        string text = test.Asked is { } asked
            ? Asked(kind, test.Attribute, asked, match.Bound)
            : $"{Names.Field(test.Attribute)}: {test.Expected}";
        string here = test.Found is { } found ? Found(kind, test, found, match.Bound) : test.Read;
        return new ConditionSentence(test.Truth, head + text, SaysItself(test) ? null : here);
    }

    // Of a long list what the rule asks for comes first.
    private string Found(FactKind kind, MatchedTest test, Reading found, ImmutableDictionary<string, Reading> bound) =>
        found is Reading.Words { Value: { Count: 1 } only }
        && _words.Whole(kind, test.Attribute, only.First()) is { } whole
            ? whole
        : found is Reading.Words words && Compared(test.Asked, bound) is { } asked
            ? ConditionWords.Some(
                [
                    .. words
                        .Value.OrderByDescending(asked.Contains)
                        .Select(word => _words.Say(kind, test.Attribute, word)),
                ],
                "and"
            )
        : _words.Say(kind, test.Attribute, found);

    private static WordSet? Compared(AttributeTest? asked, ImmutableDictionary<string, Reading> bound) =>
        asked switch
        {
            AttributeTest.Word word => word.Words,
            AttributeTest.Variable variable => (bound.GetValueOrDefault(variable.Name) as Reading.Words)?.Value,
            AttributeTest.Every every => every
                .Tests.Select(one => Compared(one, bound))
                .OfType<WordSet>()
                .LastOrDefault(),
            _ => null,
        };

    private static bool SaysItself(MatchedTest test) =>
        test is { Truth: Truth.Yes, Asked: AttributeTest.Word { Negated: false, Words.Count: 1 } }
        || test is { Truth: Truth.Yes, Asked: AttributeTest.Variable { Negated: false } };

    private string Ending(
        FactKind kind,
        string attribute,
        AttributeTest test,
        ImmutableDictionary<string, Reading> bound
    )
    {
        return test switch
        {
            AttributeTest.Word { Negated: false } word => Listed(word.Words),
            AttributeTest.Word word => $"anything but {Listed(word.Words)}",
            AttributeTest.Limit limit => $"{Than(limit.Comparison)} {Figures.Plain(limit.Value)}",
            AttributeTest.Variable { Binds: true } => "known",
            AttributeTest.Variable { Negated: false } variable => BoundTo(variable.Name),
            AttributeTest.Variable variable => $"anything but {BoundTo(variable.Name)}",
            AttributeTest.VariableLimit limit => $"{Than(limit.Comparison)} {BoundTo(limit.Name)}",
            AttributeTest.Every every => string.Join(
                " and ",
                every.Tests.Select(one => Ending(kind, attribute, one, bound))
            ),
            _ => throw new InvalidOperationException($"no words for the test {test.GetType().Name}"),
        };

        string Listed(WordSet words) =>
            ConditionWords.Some([.. words.Select(word => _words.Say(kind, attribute, word))], "or");

        string BoundTo(string name) =>
            bound.GetValueOrDefault(name) switch
            {
                Reading.Words words => Listed(words.Value),
                Reading.Number number => Figures.Plain(number.Value),
                Reading.Nothing or null => "what is not there",
                _ => "what is not known yet",
            };
    }

    private string Such(Pattern.Fact fact, MatchedPattern match)
    {
        if (fact.Tests.IsEmpty)
            return "";
        string[] sentences = [.. TestsOf(fact, match)];
        string[] told = [.. sentences.Select(AfterThat).OfType<string>()];
        string[] owned = [.. sentences.Select(AfterWhose).OfType<string>()];
        if (told.Length + owned.Length < sentences.Length)
            return $" such that {Listing.And(sentences)}";
        if (told.Length > 0)
            told[0] = $"that {told[0]}";
        return $" {Listing.And([.. told, .. owned])}";
    }

    // "it is up" as it stands in "a weed that is up".
    private static string? AfterThat(string sentence) => Rest(sentence, "it ") ?? Rest(sentence, "they ");

    // "its stage is ..." as it stands in "a weed whose stage is ...".
    private static string? AfterWhose(string sentence) =>
        (Rest(sentence, "its ") ?? Rest(sentence, "their ")) is { } owned ? $"whose {owned}" : null;

    private static string? Rest(string sentence, string begin) =>
        sentence.StartsWith(begin, StringComparison.Ordinal) ? sentence[begin.Length..] : null;

    private string Tests(Pattern.Fact fact, MatchedPattern match) => string.Join(" and ", TestsOf(fact, match));

    private IEnumerable<string> TestsOf(Pattern.Fact fact, MatchedPattern match) =>
        fact.Tests.Select(one => Asked(fact.Kind, one.Attribute, one.Test, match.Bound).TrimEnd(':'));

    private ConditionSentence Finding(MatchedPattern match, string id) =>
        new(match.Truth, $"it is found that {TextOf(id)}", match.Truth == Truth.Yes ? null : HereOf(match.Truth));

    private ConditionSentence NoFinding(MatchedPattern match, string id) =>
        new(
            match.Truth,
            $"it is not found that {TextOf(id)}",
            match.Truth switch
            {
                Truth.Yes => null,
                Truth.No => "it is found",
                _ => "not known yet",
            }
        );

    private static string HereOf(Truth truth) => truth == Truth.No ? "it is not found" : "not known yet";

    /// <summary>What a finding says, as it stands within a sentence.</summary>
    public string TextOf(string finding)
    {
        string text = knowledge.Findings.GetValueOrDefault(finding)?.Text.TrimEnd('.') ?? Names.Field(finding);
        return text.Length > 1 && !char.IsUpper(text[1]) ? char.ToLowerInvariant(text[0]) + text[1..] : text;
    }

    private static string NotNone(MatchedPattern match) =>
        match.Truth == Truth.No ? match.Fact : $"not known of {match.Fact}";

    private static string Some(FactKind kind) =>
        $"{(kind is FactKind.Closure or FactKind.Past ? "an" : "a")} {Noun(kind)}";

    private static string Noun(FactKind kind) =>
        kind switch
        {
            FactKind.Site => "area",
            FactKind.Weed => "weed",
            FactKind.Crop => "crop",
            FactKind.Practice => "practice",
            FactKind.Treatment => "chemical",
            FactKind.Action => "practice or chemical",
            FactKind.Past => "earlier use",
            FactKind.Closure => "entry interval",
            FactKind.Limit => "limit of an active",
            FactKind.Escape => "weed that came through",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a kind of fact"),
        };

    private static string Than(Comparison comparison) =>
        comparison switch
        {
            Comparison.LessThan => "less than",
            Comparison.AtMost => "at most",
            Comparison.AtLeast => "at least",
            Comparison.MoreThan => "more than",
            _ => throw new ArgumentOutOfRangeException(nameof(comparison), comparison, "not a comparison"),
        };
}
