using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>What waits: the answers that most hangs on, and what stands nearest to being clear.</summary>
internal static class BriefWaiting
{
    private const int MostQuestions = 3;
    private const int MostGroups = 4;
    private const int MostNames = 4;

    public static IEnumerable<Block> Of(Names names, AreaAdvice area)
    {
        if (area.Waiting.IsEmpty)
            yield break;
        yield return Heading.Section(
            $"What waits for an answer: {names.CountActions([.. area.Waiting.Select(wait => wait.Action)])}"
        );
        yield return ItemList.Dashes(Asked(names, area)).At(2);
        yield return new Heading(HeadingLevel.Minor, "Nearest to being clear:").At(2);
        yield return ItemList
            .Dashes(
                WaitingGroup
                    .Of(names, area.Waiting)
                    .Take(MostGroups)
                    .Select(group =>
                        Line.FromString(
                            $"after {group.Listed}: {Listing.Some(names.ActionsInOrder(group.Actions), MostNames)}"
                        )
                    )
            )
            .At(2);
    }

    private static IEnumerable<Line> Asked(Names names, AreaAdvice area)
    {
        var questions = area
            .Waiting.SelectMany(wait => wait.Needs.Where(need => need.Kind == NeedKind.Question).Distinct())
            .GroupBy(need => need)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key)
            .ToArray();
        foreach (var question in questions.Take(MostQuestions))
            yield return $"{Figures.Count(question.Count(), "waits", "wait")} for: {names.Need(question.Key)}";
        if (questions.Length > MostQuestions)
            yield return $"and {Figures.Count(questions.Length - MostQuestions, "more question", "more questions")}";
        if (area.Waiting.Count(wait => wait.Needs.Any(need => need.Kind == NeedKind.Record)) is var onLabel and > 0)
            yield return $"{Figures.Count(onLabel, "waits", "wait")} for what only the label can tell";
    }
}
