using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Text.Brief;

/// <summary>What waits: the answers that most hangs on, and what stands nearest to being clear.</summary>
internal static class BriefWaiting
{
    private const int MostQuestions = 3;
    private const int MostGroups = 4;
    private const int MostNames = 4;

    public static void Write(Page page, Names names, AreaAdvice area)
    {
        if (area.Waiting.IsEmpty)
            return;
        page.Heading($"What waits for an answer: {names.CountActions([.. area.Waiting.Select(wait => wait.Action)])}");
        var questions = area.Waiting
            .SelectMany(wait => wait.Needs.Where(need => need.Kind == NeedKind.Question).Distinct())
            .GroupBy(need => need)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key)
            .ToArray();
        foreach (var question in questions.Take(MostQuestions))
            page.Write(2, "- ", $"{Figures.Count(question.Count(), "waits", "wait")} for: {names.Need(question.Key)}");
        if (questions.Length > MostQuestions)
        {
            string more = Figures.Count(questions.Length - MostQuestions, "more question", "more questions");
            page.Write(2, "- ", $"and {more}");
        }

        if (area.Waiting.Count(wait => wait.Needs.Any(need => need.Kind == NeedKind.Record)) is var onLabel and > 0)
            page.Write(2, "- ", $"{Figures.Count(onLabel, "waits", "wait")} for what only the label can tell");
        page.Write(2, "Nearest to being clear:");
        foreach (WaitingGroup group in WaitingGroup.Of(names, area.Waiting).Take(MostGroups))
        {
            string actions = Listing.Some(names.ActionsInOrder(group.Actions), MostNames);
            page.Write(2, "- ", $"after {group.Listed}: {actions}");
        }
    }
}
