using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The next question with why it is asked.</summary>
internal static class QuestionSection
{
    public static IEnumerable<Block> Of(AreaAdvice area) =>
        [Heading.Section("Ask next"), .. Lines(area.NextQuestion).Select(line => new Paragraph(line).At(2))];

    private static IEnumerable<Line> Lines(NextQuestion? question)
    {
        if (question is null)
        {
            yield return "Nothing more: no open answer could change this advice.";
            yield break;
        }

        yield return $"{question.Text} ({question.Id})";
        yield return $"Why: {question.Why}";
        if (question.Settles > 0)
            yield return Line.Of(
                $"{Amounts.Count(question.Settles, "conclusion waits", "conclusions wait")} for the answer."
            );
    }
}
