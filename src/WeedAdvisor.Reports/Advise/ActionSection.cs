using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The clear actions in full, by horizon, in the order of the work.</summary>
internal static class ActionSection
{
    public static IEnumerable<Block> Of(Names names, DateOnly day, AreaAdvice area, SharedCautions shared)
    {
        if (area.Clear.IsEmpty)
        {
            yield return Heading.Section(Horizons.Title(Horizon.ThisWeek));
            yield return new Paragraph("Nothing is clear to do now.").At(2);
        }

        foreach (ActionGroup group in ActionGroup.Of(area))
        {
            yield return Heading.Section(Horizons.Title(group.Horizon));
            foreach (WorkLine line in group.Lines)
            {
                if (!line.Others.IsEmpty)
                    yield return new Paragraph($"One of these is enough: {names.Word("one-of", line.Best.OneOf!)}.").At(
                        2
                    );
                foreach (ClearAction action in line.Others.Prepend(line.Best))
                {
                    foreach (
                        Block block in ActionBlock.Of(
                            names,
                            day,
                            action,
                            area.Reading,
                            names.Dates(action.Action, area.Reading, day),
                            shared
                        )
                    )
                    {
                        yield return block;
                    }
                }
            }
        }
    }
}
