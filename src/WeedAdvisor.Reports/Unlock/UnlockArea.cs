using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Unlock;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.Unlock;

/// <summary>
/// What would have to change before an action stands otherwise in an area: what the grower can do or has not told yet,
/// what only time changes, and what nothing changes.
/// </summary>
/// <param name="advisor">Gives the advice.</param>
public sealed class UnlockArea(Advisor advisor)
{
    private readonly KnowledgeBase _knowledge = advisor.Knowledge;
    private readonly AnswerSetLines _lines = new(new ConditionSentences(advisor.Knowledge));

    /// <summary>The blocks.</summary>
    public IEnumerable<Block> Of(AreaAdvice area, AreaCase looked, CatalogueAction action)
    {
        if (Unlocks.Of(advisor, looked, area, action.Id) is not { } unlocks)
            return [];
        return
        [
            new Paragraph(
                Line.FromString(
                    $"Here: {StatusWords.Of(area, action.Id, new Names(_knowledge).NeedInShort, looked.Date)}."
                ) with
                {
                    Tone = Tone.Strong,
                }
            ),
            .. Clear(unlocks, area, action.Id, looked.Date),
            .. First(unlocks, area, action.Id),
            .. Bar(unlocks, area, action.Id),
            .. action is Treatment ? SafetyBlocks.Standing([]) : [],
            new Blank(),
            new Paragraph(
                "Weeds and earlier uses stay as they are told; up to three answers are changed together. The visit "
                    + "is not changed. Tell only what is true there: a wrong answer clears nothing."
            ),
        ];
    }

    private IEnumerable<Block> Clear(Unlocks unlocks, AreaAdvice area, string action, DateOnly day)
    {
        if (unlocks.Clear.IsSo)
            yield break;
        yield return Heading.Section("What would clear it");
        foreach (Block block in InHand(unlocks))
            yield return block;
        if (unlocks.Clear.Sets.IsEmpty)
        {
            yield return new Paragraph(
                unlocks.Clear.IsCutShort
                    ? "None was found; not all sets of answers were tried."
                    : "No three answers together would clear it" + More(area, action) + "."
            ).At(2);
            if (Waiting(area, action, day) is { } end)
                yield return new Paragraph($"By waiting alone: {end}.").At(2);
            yield break;
        }

        if (unlocks.ClearReach != UnlockReach.Grower)
        {
            yield return new Paragraph(
                unlocks.ClearReach == UnlockReach.Time
                    ? "Only time brings it. It would be clear if:"
                    : "What holds it back is as it is. It would be clear only where:"
            ).At(2);
        }

        foreach (Block block in _lines.Of(unlocks.Clear.Sets))
            yield return block;
        if (Waiting(area, action, day) is { } wait)
            yield return new Paragraph($"By waiting alone: {wait}.").At(2);
    }

    // What waits for more answers than are changed together is told as that.
    private static string More(AreaAdvice area, string action) =>
        area.Waiting.FirstOrDefault(one => one.Action == action) is { } waiting
        && waiting.Needs.Length > UnlockSearch.MostChanges
            ? $": it waits for {waiting.Needs.Length}"
            : "";

    private static IEnumerable<Block> InHand(Unlocks unlocks) =>
        unlocks.ClearReach == UnlockReach.Grower && !unlocks.Clear.Sets.IsEmpty
            ?
            [
                new Paragraph(
                    unlocks.Clear.Sets.All(set => set.Changes.All(change => change.IsUntold))
                        ? "Nothing need be done: an answer that is missing would, if it is this:"
                        : "What you can change or have not told yet:"
                ).At(2),
            ]
        : unlocks.Clear.Sets.IsEmpty ? []
        : [new Paragraph("Nothing that you can do or tell clears it.").At(2)];

    // The day, hour or state that ends what bars it.
    private static string? Waiting(AreaAdvice area, string action, DateOnly day) =>
        area.Barred.FirstOrDefault(one => one.Action == action) is { Status: ActionStatus.NotYet } barred
            ? StatusWords.EndOf(barred, day)
            : null;

    private IEnumerable<Block> First(Unlocks unlocks, AreaAdvice area, string action)
    {
        if (unlocks.First.IsSo)
            return [new Blank(), new Paragraph("It is the first of what is for its time already.")];
        bool isAlike =
            unlocks.First.Sets.Length == unlocks.Clear.Sets.Length
            && unlocks
                .First.Sets.Zip(unlocks.Clear.Sets)
                .All(pair => pair.First.Changes.SequenceEqual(pair.Second.Changes));
        if (unlocks.First.Sets.IsEmpty)
        {
            return area.StatusOf(action) is ActionStatus.Clear or ActionStatus.ClearUnless
                ?
                [
                    Heading.Section("What would bring it first"),
                    new Paragraph(
                        unlocks.First.IsCutShort
                            ? "None was found; not all sets of answers were tried."
                            : "Nothing that you can do or tell."
                    ).At(2),
                ]
                : [];
        }

        return
        [
            Heading.Section("What would bring it first of what is for its time"),
            .. isAlike ? [new Paragraph("The same.").At(2)] : _lines.Of(unlocks.First.Sets),
        ];
    }

    private IEnumerable<Block> Bar(Unlocks unlocks, AreaAdvice area, string action) =>
        area.Barred.Any(one => one.Action == action) ? []
        : unlocks.Bar.Sets.IsEmpty
            ? [Heading.Section("What would bar it"), new Paragraph("Nothing within three answers.").At(2)]
        : [Heading.Section("What would bar it"), .. _lines.Of(unlocks.Bar.Sets)];
}
