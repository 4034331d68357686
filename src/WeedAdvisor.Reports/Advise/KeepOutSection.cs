using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// What keeps people out of an area: it stands before anything to do there, with the work that waits for its end.
/// </summary>
internal static class KeepOutSection
{
    /// <summary>The section.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="most">How much of the work that waits for its end is named.</param>
    public static IEnumerable<Block> Of(Names names, AreaAdvice area, DateOnly day, int most = int.MaxValue)
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
            .. keepOut
                .Then.Take(most)
                .Select(
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
