using System.Globalization;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>What keeps people out of an area: it stands before anything to do there, with the work that waits for its end.</summary>
internal static class KeepOutSection
{
    public static void Write(Page page, Names names, AreaAdvice area, DateOnly day)
    {
        if (area.KeepOut is not { } keepOut)
            return;
        page.Heading($"Keep out {UntilWords.KeepOut(keepOut, day)}");
        foreach (string reason in keepOut.Because)
            page.Write(2, "- ", Figures.Sentence(reason));
        foreach (string need in keepOut.Needs.Select(names.Need))
            page.Write(2, "ask: ", need);
        if (keepOut.Then.IsEmpty)
            return;
        page.Write(2, "From then, best first:");
        for (int i = 0; i < keepOut.Then.Length; i++)
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(3);
            page.Write(0, $" {number}. ", names.Action(keepOut.Then[i]));
        }
    }
}
