using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>The next question with why it is asked.</summary>
internal static class QuestionSection
{
    public static void Write(Page page, AreaAdvice area)
    {
        page.Heading("Ask next");
        if (area.NextQuestion is not { } question)
        {
            page.Write(2, "Nothing more: no open answer could change this advice.");
            return;
        }

        page.Write(2, $"{question.Text} ({question.Id})");
        page.Write(2, $"Why: {question.Why}");
        if (question.Settles > 0)
            page.Write(2, $"{Figures.Count(question.Settles, "conclusion waits", "conclusions wait")} for the answer.");
    }
}
