using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// What keeps people out of an area: it stands before anything to do there, with the work that waits for its end.
/// </summary>
internal static class KeepOutSection
{
    public static IEnumerable<Block> Of(Names names, AreaAdvice area, DateOnly day)
    {
        if (area.KeepOut is not { } keepOut)
            yield break;
        yield return Heading.Section($"Keep out {UntilWords.KeepOut(keepOut, day)}");
        yield return ItemList
            .Dashes(
                keepOut.Because.Select(reason => Line.FromString(Figures.Sentence(reason)) with { Tone = Tone.Warning })
            )
            .At(2);
        foreach (string need in keepOut.Needs.Select(names.Need))
            yield return new Keyed("ask: ", need).At(2);
        if (keepOut.Then.IsEmpty)
            yield break;
        yield return new Paragraph("From then, best first:").At(2);
        yield return new ItemList([
            .. keepOut.Then.Select(
                (action, at) =>
                    new Item(
                        Item.Rank(at + 1),
                        Line.FromTextPart(new Named(names.Action(action))) with
                        {
                            Action = action,
                        }
                    )
            ),
        ]);
    }
}
