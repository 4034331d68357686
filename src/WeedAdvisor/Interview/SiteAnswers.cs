using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>
/// Whether questions apply in an area, judged from the answers given so far. A question whose condition rests on an
/// answer that is missing may apply: nothing is taken for granted.
/// </summary>
public sealed class SiteAnswers
{
    private readonly Dictionary<string, Question> _questions;
    private readonly VisitArea _area;
    private readonly Dictionary<string, Truth> _applies = new(StringComparer.Ordinal);
    private readonly HashSet<string> _underway = new(StringComparer.Ordinal);

    /// <summary>Looks at an area.</summary>
    public SiteAnswers(KnowledgeBase knowledge, VisitArea area)
    {
        _questions = knowledge.Questions.ToDictionary(q => q.Id, StringComparer.Ordinal);
        _area = area;
    }

    /// <summary>Whether a question applies here.</summary>
    public Truth Applies(Question question)
    {
        if (_applies.TryGetValue(question.Id, out Truth known))
            return known;
        if (!_underway.Add(question.Id))
            return Truth.NotKnown;
        Truth truth = question.AskedWhen.Aggregate(
            Truth.Yes, (sofar, condition) => Truths.And(sofar, Holds(condition.Test, Read(condition.Attribute))));
        _underway.Remove(question.Id);
        return _applies[question.Id] = truth;
    }

    /// <summary>The questions that have not been answered in any way and on which it depends whether this one applies.</summary>
    public ImmutableArray<string> WaitsFor(Question question) =>
        Applies(question) != Truth.NotKnown
            ? []
            :
            [
                .. question.AskedWhen
                    .Select(condition => condition.Attribute)
                    .Where(id => _questions.TryGetValue(id, out Question? other)
                        && !_area.Answers.ContainsKey(id)
                        && Applies(other) != Truth.No),
            ];

    private Reading Read(string attribute)
    {
        if (!_questions.TryGetValue(attribute, out Question? question))
            return Reading.NotKnown(Need.Question(attribute));
        Truth applies = Applies(question);
        if (applies == Truth.No)
            return Reading.Absent;
        return _area.Answers.GetValueOrDefault(attribute) switch
        {
            Answer.Words words => Reading.Of(words.Value),
            Answer.Number number => Reading.Of(number.Value),
            _ when applies == Truth.Yes && question.Kind == QuestionKind.OneOf =>
                Reading.NotKnown(Need.Question(attribute), WordSet.Of(question.Choices.Select(c => c.Id))),
            _ => Reading.NotKnown(Need.Question(attribute)),
        };
    }

    private static Truth Holds(AttributeTest test, Reading reading) => test switch
    {
        AttributeTest.Word word => word.Negated
            ? Truths.Not(reading.IsAnyOf(word.Words))
            : reading.IsAnyOf(word.Words),
        AttributeTest.Limit limit => reading.Compares(limit.Comparison, limit.Value),
        AttributeTest.Every every => every.Tests.Aggregate(
            Truth.Yes, (sofar, inner) => Truths.And(sofar, Holds(inner, reading))),
        _ => Truth.NotKnown,
    };
}
