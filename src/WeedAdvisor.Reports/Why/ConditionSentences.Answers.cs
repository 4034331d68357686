using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

// Answers, in the same words as the conditions on them.
public sealed partial class ConditionSentences
{
    /// <summary>An answer by itself, such as <c>drains freely</c>.</summary>
    public string Told(Question question, Answer answer) =>
        answer switch
        {
            Answer.Number number => Figures.Plain(number.Value),
            Answer.Words { Value.Count: > 0 } words
                when _words.Whole(FactKind.Site, question.Id, words.Value.First()) is null => _words.Say(
                FactKind.Site,
                question.Id,
                Reading.Of(words.Value)
            ),
            _ => Answered(question, answer),
        };

    /// <summary>One of several answers as a sentence.</summary>
    public string AnsweredByOneOf(Question question, ImmutableArray<Answer> answers)
    {
        string[] words =
        [
            .. answers.OfType<Answer.Words>().Where(one => one.Value.Count == 1).Select(one => one.Value.First()),
        ];
        string[] whole = [.. words.Select(word => _words.Whole(FactKind.Site, question.Id, word)).OfType<string>()];
        if (answers.Length == 1 || words.Length < answers.Length)
            return string.Join(", or ", answers.Select(answer => Answered(question, answer)));
        string[] others = [.. words.Where(word => _words.Whole(FactKind.Site, question.Id, word) is null)];
        return string.Join(
            ", or ",
            [
                .. others.Length == 0
                    ? []
                    : (string[])
                        [
                            $"{_words.Beginning(FactKind.Site, question.Id)} "
                                + ConditionWords.Some(
                                    [.. others.Select(word => _words.Say(FactKind.Site, question.Id, word))],
                                    "or"
                                ),
                        ],
                .. whole,
            ]
        );
    }

    /// <summary>An answer as a sentence, such as <c>water stands on the ground</c>.</summary>
    /// <param name="question">The question.</param>
    /// <param name="answer">The answer; null where none is given.</param>
    public string Answered(Question question, Answer? answer)
    {
        string begin = _words.Beginning(FactKind.Site, question.Id);
        return answer switch
        {
            Answer.Words { Value.Count: 0 } => $"{begin} none",
            Answer.Words { Value.Count: 1 } words => Asked(
                FactKind.Site,
                question.Id,
                new AttributeTest.Word(words.Value, false),
                ImmutableDictionary<string, Reading>.Empty
            ),
            Answer.Words words => $"{begin} {_words.Say(FactKind.Site, question.Id, Reading.Of(words.Value))}",
            Answer.Number number => $"{begin} {Figures.Plain(number.Value)}",
            Answer.Date date => $"{Names.Field(question.Id)}: {Figures.LongDay(date.Value)}",
            _ => $"{question.Ask.TrimEnd('?')}: not told",
        };
    }
}
