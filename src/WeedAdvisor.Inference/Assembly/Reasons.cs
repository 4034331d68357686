using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Makes the reason tree of a conclusion from its condition tree and what that matched.</summary>
internal sealed class Reasons : IReasonDetails
{
    private readonly ImmutableDictionary<string, string> _plainWords;

    /// <summary>Reasons that speak with the words of a knowledge base.</summary>
    public Reasons(KnowledgeBase knowledge) => _plainWords = PlainWordsOf(knowledge);

    /// <summary>The reason behind a conclusion.</summary>
    public Reason Of(Conclusion conclusion) => new(conclusion, this);

    /// <inheritdoc/>
    public Said SaidOf(Conclusion conclusion) => SaidOf(conclusion.Judgement.Because, conclusion);

    /// <inheritdoc/>
    public Said CautionOf(Conclusion conclusion) =>
        SaidOf(((Consequence.Caution)conclusion.Judgement.Then).Text, conclusion);

    /// <summary>A text of a rule with its slots filled in, in plain words.</summary>
    public string Fill(string text, Conclusion conclusion) => SaidOf(text, conclusion).Text;

    private Said SaidOf(string text, Conclusion conclusion) =>
        Wording.Fill(text, conclusion.Match, conclusion.Bindings, Say, conclusion.Action?.Name);

    private string Say(string word) => _plainWords.GetValueOrDefault(word, word);

    /// <inheritdoc/>
    public ImmutableArray<MatchedPattern> MatchedBy(Conclusion conclusion)
    {
        var matched = ImmutableArray.CreateBuilder<MatchedPattern>(conclusion.Match.Length);
        Bindings bindings = Bindings.None;
        for (int i = 0; i < conclusion.Match.Length; i++)
        {
            Pattern pattern = conclusion.Judgement.When[i];
            PatternHolds outcome = PatternHolds.Of(pattern, conclusion.Match[i], bindings);
            // Of what is not there no test tells anything.
            bool isWithoutFact = conclusion.Match[i] is Matched.One { Fact: var fact } && NoFact.Is(fact);
            matched.Add(
                new MatchedPattern(
                    Wording.Of(pattern),
                    NameOf(conclusion.Match[i]),
                    isWithoutFact ? Truth.No : outcome.Truth,
                    isWithoutFact ? [] : TestsOf(pattern, conclusion.Match[i], bindings),
                    conclusion.Match[i] is Matched.Evidence evidence ? [.. evidence.Conclusions.Select(Of)] : []
                )
                {
                    Asked = pattern,
                    Bound = outcome.Bindings.Values.ToImmutableDictionary(StringComparer.Ordinal),
                    IsWithoutFact = isWithoutFact,
                }
            );
            bindings = outcome.Bindings;
        }

        return matched.MoveToImmutable();
    }

    /// <inheritdoc/>
    public ImmutableArray<MatchedSubject> SubjectsOf(Conclusion conclusion)
    {
        var subjects = ImmutableArray.CreateBuilder<MatchedSubject>(conclusion.Match.Length);
        for (int i = 0; i < conclusion.Match.Length; i++)
            subjects.Add(new MatchedSubject(Wording.Of(conclusion.Judgement.When[i]), NameOf(conclusion.Match[i])));
        return subjects.MoveToImmutable();
    }

    private static string NameOf(Matched matched) =>
        matched switch
        {
            Matched.One one => one.Fact.Name,
            Matched.Several { Facts.IsEmpty: true } or Matched.Evidence { Conclusions.IsEmpty: true } => "none",
            Matched.Several several => string.Join(", ", several.Facts.Select(fact => fact.Name)),
            Matched.Evidence evidence => string.Join(
                ", ",
                evidence.Conclusions.Select(one => one.Judgement.Id).Distinct(StringComparer.Ordinal)
            ),
            _ => "",
        };

    private static ImmutableArray<MatchedTest> TestsOf(Pattern pattern, Matched matched, Bindings bindings)
    {
        if (pattern is not Pattern.Fact fact || matched is not Matched.One one)
            return [];
        var tests = ImmutableArray.CreateBuilder<MatchedTest>(fact.Tests.Length);
        foreach ((string attribute, AttributeTest test) in fact.Tests)
        {
            Reading reading = one.Fact.Read(attribute);
            if (test is AttributeTest.Variable { Binds: true } variable)
                bindings = bindings.With(variable.Name, reading);
            tests.Add(
                new MatchedTest(attribute, Wording.Of(test), reading.Text, TestTruth.Of(test, reading, bindings))
                {
                    Words = reading is Reading.Words words ? [.. words.Value] : [],
                    Asked = test,
                    Found = reading,
                }
            );
        }

        return tests.MoveToImmutable();
    }

    // Names of records and texts of answers, so that a slot reads as words and not as an id.
    private static ImmutableDictionary<string, string> PlainWordsOf(KnowledgeBase knowledge)
    {
        var words = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (AnswerChoice choice in knowledge.Questions.SelectMany(question => question.Choices))
            words.TryAdd(choice.Id, choice.Text);
        foreach (Crop crop in knowledge.Crops.Values)
            words[crop.Id] = crop.Name;
        foreach (Weed weed in knowledge.Weeds.Values)
            words[weed.Id] = weed.Name;
        return words.ToImmutable();
    }
}
