using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The actions that wait for an answer, grouped by what is needed: those nearest to being clear first. The questions
/// are written out once, above, and named by their ids after that.
/// </summary>
internal static class WaitingSection
{
    public static IEnumerable<Block> Of(Names names, AreaAdvice area)
    {
        if (area.Waiting.IsEmpty)
            yield break;
        yield return Heading.Section(
            $"What waits for an answer: {names.CountActions([.. area.Waiting.Select(w => w.Action)])}"
        );
        yield return new Heading(HeadingLevel.Minor, "What is needed").At(2);
        yield return ItemList
            .Dashes(
                area.Waiting.SelectMany(wait => wait.Needs)
                    .Distinct()
                    .Order()
                    .Select(names.NeedOfAny)
                    .Distinct()
                    .Select(need => Line.FromString(need.InFull))
            )
            .At(4);
        yield return new Heading(HeadingLevel.Minor, "What each answer may free; the fewest answers first").At(2);
        yield return ItemList
            .Dashes(
                WaitingGroup
                    .Of(names, area.Waiting)
                    .Select(group =>
                        Line.FromString(
                            $"after {group.Listed}: {string.Join("; ", names.ActionsInOrder(group.Actions))}"
                        )
                    )
            )
            .At(4);
    }
}
