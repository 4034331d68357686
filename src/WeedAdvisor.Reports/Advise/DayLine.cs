using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What the weather of the day says of a clear action: why not today, or what the day must be like.</summary>
internal static class DayLine
{
    /// <summary>The same within a line.</summary>
    public static IEnumerable<string> InWords(ClearAction action) =>
        !action.NotToday.IsEmpty ? [$"not today: {string.Join(", ", action.NotToday)}"]
        : !action.Conditions.IsEmpty ? [$"only {string.Join(", ", action.Conditions)}"]
        : [];

    public static IEnumerable<Block> Of(ClearAction action)
    {
        if (!action.NotToday.IsEmpty)
            yield return new Keyed("not today: ", string.Join(", ", action.NotToday));
        else if (!action.Conditions.IsEmpty)
            yield return new Keyed("only ", string.Join(", ", action.Conditions));
    }
}
