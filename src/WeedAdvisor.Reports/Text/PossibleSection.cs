using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text.Brief;

namespace WeedAdvisor.Reports.Text;

/// <summary>What becomes possible, and when: by day and hour, then by state.</summary>
internal static class PossibleSection
{
    /// <summary>Writes the list.</summary>
    /// <param name="page">The page.</param>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="most">How many actions of one moment are named.</param>
    public static void Write(Page page, Names names, AreaAdvice area, DateOnly day, int most = int.MaxValue - 1)
    {
        var lines = BecomingPossible.Lines(area, day).ToArray();
        if (lines.Length == 0)
            return;
        page.Heading("What becomes possible, and when");
        foreach ((string when, var actions) in lines)
            page.Write(2, "- ", $"{when}: {Listing.Some(names.ActionsInOrder(actions), most)}");
    }
}
