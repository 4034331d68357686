using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>An area as if some of its answers were other ones: what is asked when it is asked "what if".</summary>
public static class AnswersTaken
{
    /// <summary>The area with other answers to some questions.</summary>
    /// <param name="area">The area.</param>
    /// <param name="answers">The answers by question.</param>
    public static VisitArea Taking(this VisitArea area, params IEnumerable<(string Question, Answer Answer)> answers) =>
        area with
        {
            Answers = area.Answers.SetItems(answers.Select(one => KeyValuePair.Create(one.Question, one.Answer))),
        };

    /// <summary>What is told in answer to a question, as it was told; null where nothing is.</summary>
    public static Answer? Told(this VisitArea area, string question) => area.Answers.GetValueOrDefault(question);
}
