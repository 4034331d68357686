using System.Globalization;
using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The facts of what keeps people out of an area on the day of the visit.</summary>
internal static class ClosureFacts
{
    /// <summary>One fact for each closure, the one that lasts longest first.</summary>
    public static IEnumerable<ClosureFact> Of(AreaCase seen, KnowledgeBase knowledge) =>
        Closures
            .Of(seen, knowledge)
            .Select((closure, index) => Of(closure, index.ToString("000", CultureInfo.InvariantCulture)));

    private static ClosureFact Of(Closure closure, string id) =>
        new(
            id,
            closure.Name,
            new Dictionary<string, Reading>
            {
                ["runs"] = closure.Runs == Truth.Yes ? Reading.Of(true) : new Reading.Open([.. closure.Needs], null),
                ["hours-left"] = closure.HoursLeft is { } hours
                    ? Reading.Of(hours)
                    : new Reading.Open([.. closure.Needs], null),
                ["where"] = Reading.Of(closure.IsHere ? "here" : "same-roof"),
                ["airing-counts"] = Reading.Of(closure.WaitsForAir),
            }
        );
}
