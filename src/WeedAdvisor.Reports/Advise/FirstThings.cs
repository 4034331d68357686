using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>For a visit to several areas: what to ask and do first in each.</summary>
internal static class FirstThings
{
    public static IEnumerable<Block> Of(Names names, VisitAdvice advice) =>
    [
        Heading.Section("First things"),
        new ItemList(
        [
            .. advice.Areas.Select(area => new Item(Item.Dash, new Named(area.Area.Name))
            {
                Below =
                [
                    new Keyed("ask: ", area.NextQuestion?.Text ?? "nothing more").At(4),
                    new Keyed("do:  ", ToDo(names, area, advice.Visit.Date)).At(4),
                ],
            }),
        ]).At(2),
    ];

    // Who is not to go in is told that, and no work that is done elsewhere.
    private static Line ToDo(Names names, AreaAdvice area, DateOnly day) =>
        area.KeepOut is { } keepOut
            ? Line.FromString($"keep out {UntilWords.KeepOut(keepOut, day)}") with { Tone = Tone.Warning }
        : area.Clear is [var first, ..]
            ? Line.FromTextPart(new Named(names.Action(first.Action))) with { Action = first.Action }
        : "nothing is clear yet";
}
