using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The actions that wait for an answer, grouped by what is needed, in the order of the work. The questions
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
        yield return new Heading(HeadingLevel.Minor, "What the answers may free, in the order of the work").At(2);
        yield return ItemList
            .Dashes(
                WaitingGroup
                    .InOrderOfWork(names, area.Waiting)
                    .Select(group => Line.FromString(WaitingWords.Of(names, area, group, int.MaxValue - 1)))
            )
            .At(4);
    }
}
