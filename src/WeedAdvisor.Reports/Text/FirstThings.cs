using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>For a visit to several areas: what to ask and do first in each.</summary>
internal static class FirstThings
{
    public static void Write(Page page, Names names, VisitAdvice advice)
    {
        page.Heading("First things");
        foreach (AreaAdvice area in advice.Areas)
        {
            page.Write(2, "- ", area.Area.Name);
            page.Write(6, "ask: ", area.NextQuestion?.Text ?? "nothing more");
            page.Write(6, "do:  ", ToDo(names, area, advice.Visit.Date));
        }
    }

    // Who is not to go in is told that, and no work that is done elsewhere.
    private static string ToDo(Names names, AreaAdvice area, DateOnly day) =>
        area.KeepOut is { } keepOut ? $"keep out {UntilWords.KeepOut(keepOut, day)}"
        : area.Clear is [var first, ..] ? names.Action(first.Action)
        : "nothing is clear yet";
}
