using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The next question with why it is asked.</summary>
internal static class QuestionSection
{
    public static IEnumerable<Block> Of(Names names, AreaAdvice area) =>
        [Heading.Section("Ask next"), .. Lines(names, area.NextQuestion).Select(line => new Paragraph(line).At(2))];

    private static IEnumerable<Line> Lines(Names names, NextQuestion? question)
    {
        if (question is null)
        {
            yield return "Nothing more: no open answer could change this advice.";
            yield break;
        }

        yield return $"{question.Text} ({question.Id})";
        yield return $"Why: {question.Why}";
        if (OutcomeWords.Of(names, question) is { IsEmpty: false } outcomes)
        {
            foreach (string outcome in outcomes)
                yield return outcome;
        }
        else if (!question.MayBring.IsEmpty)
            yield return Line.FromString(
                $"The answer may bring: {string.Join("; ", question.MayBring.Select(names.Action))}."
            );
    }
}
