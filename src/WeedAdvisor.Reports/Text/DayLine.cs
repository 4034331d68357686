using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>What the weather of the day says of a clear action: why not today, or what the day must be like.</summary>
internal static class DayLine
{
    public static void Write(Page page, int left, ClearAction action)
    {
        if (!action.NotToday.IsEmpty)
            page.Write(left, "not today: ", string.Join(", ", action.NotToday));
        else if (!action.Conditions.IsEmpty)
            page.Write(left, "only ", string.Join(", ", action.Conditions));
    }
}
