using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Unlock;

/// <summary>
/// Which other answers a question could have: of listed answers each; of several at once one more or one less; of a
/// number one on each side of every mark that a rule compares it with. Weeds, earlier uses, crops, region, days and
/// names stay as they are.
/// </summary>
/// <param name="knowledge">The knowledge.</param>
/// <param name="area">The area with what is told.</param>
internal sealed class OtherAnswers(KnowledgeBase knowledge, VisitArea area)
{
    // They tell of weeds and of earlier uses, which stay.
    private static readonly ImmutableArray<string> s_staying = [QuestionIds.PutOnLately, QuestionIds.ExpectedWeeds];

    private readonly Dictionary<string, ImmutableArray<AnswerChange>> _made = new(StringComparer.Ordinal);

    /// <summary>The other answers of a question; none of one whose answer stays.</summary>
    public ImmutableArray<AnswerChange> To(string id)
    {
        if (!_made.TryGetValue(id, out ImmutableArray<AnswerChange> made))
            _made[id] = made = Make(id);
        return made;
    }

    private ImmutableArray<AnswerChange> Make(string id)
    {
        if (s_staying.Contains(id) || knowledge.QuestionOf(id) is not { } question)
            return [];
        Answer? now = area.Told(id);
        WordSet told = now is Answer.Words words ? words.Value : WordSet.Empty;
        IEnumerable<Answer> others = question.Kind switch
        {
            QuestionKind.OneOf => question.Choices.Select(choice => new Answer.Words(WordSet.Of(choice.Id))),
            QuestionKind.AnyOf => question.Choices.Select(choice => new Answer.Words(
                told.Contains(choice.Id)
                    ? WordSet.Of(told.Where(word => word != choice.Id))
                    : WordSet.Of(told.Append(choice.Id))
            )),
            QuestionKind.Number => Marks(question).Select(number => new Answer.Number(number)),
            _ => [],
        };
        return [.. others.Where(other => !other.Equals(now)).Select(other => new AnswerChange(question, now, other))];
    }

    private IEnumerable<decimal> Marks(Question question)
    {
        decimal[] marks =
        [
            .. knowledge
                .Judgements.SelectMany(judgement => judgement.When)
                .Select(QuestionsBehind.FactIn)
                .Where(fact => fact?.Kind == FactKind.Site)
                .SelectMany(fact => fact!.Tests)
                .Where(one => one.Attribute == question.Id)
                .SelectMany(one => Limits(one.Test)),
        ];
        return marks
            .SelectMany(mark => (decimal[])[mark - 1, mark, mark + 1])
            .Where(value => question.Between is not { } span || (value >= span.Low && value <= span.High))
            .Distinct()
            .Order();
    }

    private static IEnumerable<decimal> Limits(AttributeTest test) =>
        test switch
        {
            AttributeTest.Limit limit => [limit.Value],
            AttributeTest.Every every => every.Tests.SelectMany(Limits),
            _ => [],
        };
}
