using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference;

/// <summary>
/// What the next question would settle, answer by answer: the rules are asked again with each, so that nothing is told
/// which the answer does not keep.
/// </summary>
public static class QuestionOutcomes
{
    /// <summary>The most areas of a visit of which it is told: each takes as long as several more areas.</summary>
    public const int MostAreas = 20;

    /// <summary>The advice with the outcomes of each next question that has answers to choose one from.</summary>
    public static VisitAdvice WithOutcomes(this Advisor advisor, VisitAdvice advice)
    {
        if (advice.Areas.Length > MostAreas || advice.Areas.All(area => area.NextQuestion is null))
            return advice;
        LiveAdvice? live = null;
        return advice with
        {
            Areas =
            [
                .. advice.Areas.Select(area =>
                    area.NextQuestion is { } next
                    && advisor.Knowledge.QuestionOf(next.Id) is { Kind: QuestionKind.OneOf } question
                        ? area with
                        {
                            NextQuestion = next with { Outcomes = Of(area, question, Looked(advice.Visit, area)) },
                        }
                        : area
                ),
            ],
        };

        ImmutableArray<AnswerOutcome> Of(AreaAdvice area, Question question, AreaCase looked)
        {
            live ??= advisor.Open(looked);
            ImmutableArray<string> now = FirstThings.Of(area.Clear);
            return
            [
                .. question.Choices.Select(choice =>
                {
                    ImmutableArray<ClearAction> order = live.OrderOf(With(looked, question, choice));
                    ImmutableArray<string> then = FirstThings.Of(order);
                    ImmutableArray<string> drops = [.. now.Except(then, StringComparer.Ordinal)];
                    return new AnswerOutcome(
                        choice.Id,
                        [.. then.Except(now, StringComparer.Ordinal)],
                        drops,
                        !then.SequenceEqual(now) && !then.Except(now, StringComparer.Ordinal).Any()
                    )
                    {
                        Gone = [.. drops.Except(order.Select(one => one.Action), StringComparer.Ordinal)],
                    };
                }),
            ];
        }
    }

    private static AreaCase With(AreaCase looked, Question question, AnswerChoice choice) =>
        looked with
        {
            Area = looked.Area.Taking((question.Id, new Answer.Words(WordSet.Of(choice.Id)))),
        };

    private static AreaCase Looked(Visit visit, AreaAdvice area) =>
        new(visit.Date, area.Area, [.. visit.Areas.Where(other => other.Id != area.Area.Id), .. visit.Elsewhere]);
}
