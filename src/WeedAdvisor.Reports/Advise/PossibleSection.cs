using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What becomes possible, and when: by day and hour, then by state.</summary>
internal static class PossibleSection
{
    /// <summary>The list.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="most">How many actions of one moment are named.</param>
    public static IEnumerable<Block> Of(Names names, AreaAdvice area, DateOnly day, int most = int.MaxValue - 1)
    {
        Line[] lines =
        [
            .. BecomingPossible
                .Lines(area, day)
                .Select(line =>
                    Line.FromString($"{line.When}: {Listing.Some(names.ActionsInOrder(line.Actions), most)}")
                ),
        ];
        return lines.Length == 0
            ? []
            : [Heading.Section("What becomes possible, and when"), ItemList.Dashes(lines).At(2)];
    }
}
