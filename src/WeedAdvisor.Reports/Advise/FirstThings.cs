using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>For a visit to several areas: what to ask and do first in each.</summary>
internal static class FirstThings
{
    /// <summary>The list.</summary>
    /// <param name="items">One item for each area.</param>
    public static IEnumerable<Block> Of(IEnumerable<Item> items) =>
        [Heading.Section("First things"), new ItemList([.. items]).At(2)];

    /// <summary>What to ask and do first in one area.</summary>
    public static Item Of(Names names, AreaAdvice area, DateOnly day) =>
        new(Item.Dash, new Named(area.Area.Name))
        {
            Below =
            [
                new Keyed("ask: ", area.NextQuestion?.Text ?? "nothing more").At(4),
                new Keyed("do:  ", ToDo(names, area, day)).At(4),
            ],
        };

    // Who is not to go in is told that, and no work that is done elsewhere.
    private static Line ToDo(Names names, AreaAdvice area, DateOnly day) =>
        area.KeepOut is { } keepOut
            ? Line.FromString($"keep out {UntilWords.KeepOut(keepOut, day)}") with
            {
                Tone = Tone.Warning,
            }
        : area.Clear is [var first, ..]
            ? Line.Of($"{new Named(names.Action(first.Action))}{StatusWords.UnlessInWords(first)}") with
            {
                Action = first.Action,
            }
        : "nothing is clear yet";
}
