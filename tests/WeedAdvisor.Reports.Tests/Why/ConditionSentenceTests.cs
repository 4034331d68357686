using System.Collections.Immutable;
using System.Text.RegularExpressions;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Nearest;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Why;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Why;

/// <summary>Every kind of condition reads as a sentence: whatever it asks and however it stands.</summary>
public sealed partial class ConditionSentenceTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly ConditionSentences s_sentences = new(s_knowledge);
    private static readonly ConditionWords s_words = new(s_knowledge);

    private static readonly AttributeTest[] s_tests =
    [
        new AttributeTest.Word(WordSet.Of("moss"), false),
        new AttributeTest.Word(WordSet.Of("moss", "grass"), false),
        new AttributeTest.Word(WordSet.Of("moss", "grass"), true),
        .. Enum.GetValues<Comparison>().Select(comparison => new AttributeTest.Limit(comparison, 3)),
        new AttributeTest.Variable("one", Binds: true, Negated: false),
        new AttributeTest.Variable("one", Binds: false, Negated: false),
        new AttributeTest.Variable("one", Binds: false, Negated: true),
        new AttributeTest.Variable("open", Binds: false, Negated: true),
        .. Enum.GetValues<Comparison>().Select(comparison => new AttributeTest.VariableLimit(comparison, "number")),
        new AttributeTest.Every([
            new AttributeTest.Limit(Comparison.AtLeast, 3),
            new AttributeTest.VariableLimit(Comparison.LessThan, "number"),
        ]),
    ];

    private static readonly Reading[] s_readings =
    [
        Reading.Of("moss"),
        Reading.Of(WordSet.Of("moss", "sedge")),
        Reading.Of(7),
        Reading.Absent,
        Reading.NotKnown(Need.Question("stock")),
    ];

    private static readonly ImmutableDictionary<string, Reading> s_bound = new Dictionary<string, Reading>
    {
        ["one"] = Reading.Of("moss"),
        ["number"] = Reading.Of(4),
        ["open"] = Reading.NotKnown(Need.Question("stock")),
    }.ToImmutableDictionary();

    [Fact]
    public void Every_test_on_every_kind_of_fact_and_every_reading_is_a_sentence()
    {
        Assert.Equal(
            typeof(AttributeTest).GetNestedTypes().Length,
            s_tests.Select(test => test.GetType()).Distinct().Count()
        );
        IEnumerable<(FactKind Kind, AttributeTest Test, Reading Found, Truth Truth)> all =
            from kind in Enum.GetValues<FactKind>()
            from test in s_tests
            from found in s_readings
            from truth in Enum.GetValues<Truth>()
            select (kind, test, found, truth);
        foreach ((FactKind kind, AttributeTest test, Reading found, Truth truth) in all)
        {
            var fact = new Pattern.Fact(kind, [new AttributeCondition("an-attribute", test)]);
            var matched = new MatchedTest("an-attribute", "", found.Text, truth) { Asked = test, Found = found };
            foreach (Pattern pattern in (Pattern[])[fact, new Pattern.None(fact), new Pattern.Any(fact)])
                AssertReads(Match(pattern, truth, matched));
        }
    }

    [Fact]
    public void Findings_and_facts_that_are_not_there_are_sentences()
    {
        var wet = new Pattern.HasFinding("surface-stays-wet");
        foreach (Truth truth in Enum.GetValues<Truth>())
        {
            foreach (Pattern pattern in (Pattern[])[wet, new Pattern.None(wet), new Pattern.Any(wet)])
                AssertReads(Match(pattern, truth));
        }

        foreach (FactKind kind in Enum.GetValues<FactKind>().Where(kind => kind != FactKind.Site))
        {
            AssertReads(Match(new Pattern.Fact(kind, []), Truth.No) with { IsWithoutFact = true });
            if (!kind.IsOfCatalogue())
                AssertReads(Match(new Pattern.Fact(kind, []), Truth.Yes));
        }
    }

    [Fact]
    public void Every_condition_of_the_rules_reads_as_a_sentence_in_why_and_why_not()
    {
        Visit[] visits =
        [
            ShippedRules.Demo,
            ShippedRules.Visit("mist-house-with-liverwort"),
            ShippedRules.Visit("nothing-answered"),
        ];
        HashSet<string> read = new(StringComparer.Ordinal);
        foreach (Visit visit in visits)
        {
            for (int i = 0; i < visit.Areas.Length; i++)
            {
                AreaCase looked = AreaCase.Of(visit, i);
                NearestRules nearest = NearestRules.In(s_knowledge, looked);
                IEnumerable<Reason> all = ShippedRules
                    .Advisor.Open(looked)
                    .Advice.AllConclusions()
                    .Concat(
                        s_knowledge.Practices.Keys.SelectMany(id => nearest.Supporting(id)).Select(near => near.Reason)
                    );
                foreach (Reason reason in all.Where(reason => read.Add(reason.Judgement + reason.IsCertain)))
                {
                    foreach (MatchedPattern match in reason.Matched)
                        AssertReads(match);
                }
            }
        }

        Assert.InRange(read.Count, 300, int.MaxValue);
    }

    [Fact]
    public void Every_attribute_that_a_rule_can_test_has_its_words()
    {
        WordList list = s_knowledge.Vocabulary[ConditionWords.List];
        string[] keys =
        [
            .. s_knowledge.Questions.Select(question => ConditionWords.KeyOf(FactKind.Site, question.Id)),
            .. Enum.GetValues<FactKind>()
                .SelectMany(kind =>
                    AttributeSchema.Of(kind).Select(attribute => ConditionWords.KeyOf(kind, attribute.Name))
                ),
        ];
        Assert.DoesNotContain(keys, key => !list.Contains(key));
        // A flag and a yes or no are whole sentences.
        string[] flags =
        [
            .. Enum.GetValues<FactKind>()
                .SelectMany(kind =>
                    AttributeSchema
                        .Of(kind)
                        .Where(attribute => attribute.Shape == AttributeShape.Flag)
                        .Select(attribute => ConditionWords.KeyOf(kind, attribute.Name))
                )
                .SelectMany(key => (string[])[$"{key}.true", $"{key}.false"]),
        ];
        Assert.DoesNotContain(flags, key => !list.Contains(key));
    }

    [Fact]
    public void No_words_stand_for_an_attribute_that_is_not_there()
    {
        HashSet<string> known =
        [
            .. s_knowledge.Questions.Select(question => ConditionWords.KeyOf(FactKind.Site, question.Id)),
            .. Enum.GetValues<FactKind>()
                .SelectMany(kind =>
                    AttributeSchema.Of(kind).Select(attribute => ConditionWords.KeyOf(kind, attribute.Name))
                ),
        ];
        string[] told =
        [
            .. s_knowledge
                .Vocabulary[ConditionWords.List]
                .Words.Select(word => word.Key)
                .Where(key => !key.StartsWith("say.", StringComparison.Ordinal)),
        ];
        Assert.DoesNotContain(told, key => !known.Contains(string.Join('.', key.Split('.').Take(2))));
    }

    [Fact]
    public void What_was_found_is_told_in_a_sentence_with_its_figure_and_one_is_one()
    {
        WordList list = s_knowledge.Vocabulary[ConditionWords.List];
        string[] found = [.. list.Words.Select(word => word.Key).Where(IsFound)];
        Assert.NotEmpty(found);
        Assert.DoesNotContain(found, key => list.TextOf(key).Split('#').Length != 2);
        Assert.Equal("it is weeded every 1 week", s_words.Found(FactKind.Site, "weeding-interval", "1"));
        Assert.Equal("it is weeded every 2.5 weeks", s_words.Found(FactKind.Site, "weeding-interval", "2.5"));
        Assert.Null(s_words.Found(FactKind.Site, "stock", "1"));

        static bool IsFound(string key) => key.EndsWith(".found", StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_list_begins_with_what_the_rule_compares()
    {
        var test = new AttributeTest.Variable("one", Binds: false, Negated: false);
        string[] weeds = [.. Enumerable.Range(1, 9).Select(i => $"a-weed-{i}"), "moss"];
        MatchedPattern match = Match(
            new Pattern.Fact(FactKind.Treatment, [new AttributeCondition("misses", test)]),
            Truth.NotKnown,
            new MatchedTest("misses", "", "", Truth.NotKnown) { Asked = test, Found = Reading.Of(WordSet.Of(weeds)) }
        );
        Assert.Equal(
            "moss, a weed 1, a weed 2, a weed 3, a weed 4, a weed 5 and 4 more",
            Assert.Single(s_sentences.Of(match)).Here
        );
        Assert.Equal("stay", s_words.Say(FactKind.Site, "an-attribute", "stay"));
    }

    private static MatchedPattern Match(Pattern pattern, Truth truth, params MatchedTest[] tests) =>
        new("", "Common moss", truth, [.. tests], []) { Asked = pattern, Bound = s_bound };

    private static void AssertReads(MatchedPattern match)
    {
        foreach (ConditionSentence sentence in s_sentences.Of(match))
            AssertIsSentence(sentence.Full);
        foreach (string fact in s_sentences.Facts(match))
            AssertIsSentence(fact + ".");
    }

    // A sentence holds no sign of the rule language: no slot, no variable, no word joined by hyphens as an id is, and
    // it does not end in the middle.
    private static void AssertIsSentence(string text)
    {
        Assert.DoesNotMatch(RuleLanguage(), text);
        Assert.Matches(@"^\S.*[^\s:,]\.$", text);
    }

    [GeneratedRegex(@"[\$\{\}\[\]]|: *\.|\.\.|  |: *or |\bread:|\btrue\b|\bfalse\b(?<!-)")]
    private static partial Regex RuleLanguage();
}
