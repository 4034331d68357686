using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Chooses the question whose answer settles most of what is still possible. A conclusion that waits for several
/// answers counts in equal parts for each. What concerns an action that is barred anyway does not count, and a rule
/// that says one caution with many actions counts once: else the caution of all chemicals would outweigh what clears
/// them.
/// </summary>
internal sealed class QuestionChoice(KnowledgeBase knowledge)
{
    // What a bar or a caution weighs against an argument of certainty 1: keeping someone from harm comes first.
    private const double WeightOfBar = 1.0;
    private const double WeightOfCaution = 0.2;

    private readonly ImmutableDictionary<string, Question> _questions = knowledge.Questions.ToImmutableDictionary(
        question => question.Id,
        StringComparer.Ordinal
    );

    /// <summary>The next question; null when no answer could change the advice.</summary>
    /// <param name="cases">What was concluded about each action.</param>
    /// <param name="conclusions">Everything that was concluded.</param>
    /// <param name="answered">A question that is answered as far as the grower can; null for none.</param>
    public NextQuestion? Next(
        IReadOnlyCollection<ActionCase> cases,
        IEnumerable<Conclusion> conclusions,
        string? answered
    )
    {
        HashSet<string> barred = [.. cases.Where(one => one.IsBarred).Select(one => one.Action)];
        var score = new Dictionary<string, double>(StringComparer.Ordinal);
        var settles = new Dictionary<string, int>(StringComparer.Ordinal);
        var cautions = new Dictionary<(string Rule, string Need), double>();
        foreach (Conclusion conclusion in conclusions)
        {
            if (conclusion.IsCertain || (conclusion.Action is { } action && barred.Contains(action.Id)))
                continue;
            foreach (Need need in conclusion.Needs.Where(need => need.Kind == NeedKind.Question && need.Id != answered))
            {
                settles[need.Id] = settles.GetValueOrDefault(need.Id) + 1;
                double share = WeightOf(conclusion) / conclusion.Needs.Length;
                (string, string) said = (conclusion.Judgement.Id, need.Id);
                if (conclusion.Judgement.Then is Consequence.Caution)
                    cautions[said] = Math.Max(share, cautions.GetValueOrDefault(said));
                else
                    score[need.Id] = score.GetValueOrDefault(need.Id) + share;
            }
        }

        foreach (((_, string need), double share) in cautions.OrderBy(pair => pair.Key))
            score[need] = score.GetValueOrDefault(need) + share;

        Question? next = score
            .Keys.Select(id => _questions.GetValueOrDefault(id))
            .OfType<Question>()
            .OrderByDescending(question => Math.Round(score[question.Id], 9))
            .ThenBy(question => question.Order)
            .FirstOrDefault();
        return next is null ? null : new NextQuestion(next.Id, next.Ask, next.Why, settles[next.Id]);
    }

    private static double WeightOf(Conclusion conclusion) =>
        conclusion.Judgement.Then switch
        {
            Consequence.Bar => WeightOfBar,
            Consequence.Caution => WeightOfCaution,
            _ => conclusion.Certainty,
        };
}
