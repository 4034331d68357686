using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Entry;

/// <summary>An application that keeps people out of an area on the day of the visit, or may do so.</summary>
/// <param name="Use">The application.</param>
/// <param name="Name">What was put on, where and when, as the beginning of a sentence.</param>
/// <param name="IsHere">Whether it was put on in the area itself; else it was under the same roof.</param>
/// <param name="Runs">Yes when it keeps people out for sure.</param>
/// <param name="Needs">What would have to be known; empty when that is sure.</param>
/// <param name="HoursLeft">Hours from the beginning of the visit's day until it ends, by the clock of the place; null
/// when not known.</param>
/// <param name="WaitsForAir">Whether the interval is over by then and only the house has not been aired.</param>
public sealed record Closure(
    PastApplication Use,
    string Name,
    bool IsHere,
    Truth Runs,
    IReadOnlyList<Need> Needs,
    decimal? HoursLeft,
    bool WaitsForAir
);
