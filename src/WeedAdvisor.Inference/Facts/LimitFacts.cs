using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The facts of limits that are reached, or may be: one for each limit, with all the treatments that it keeps out.</summary>
internal static class LimitFacts
{
    /// <summary>The facts, in a fixed order.</summary>
    public static IEnumerable<LimitFact> Of(ImmutableArray<PastApplication>? past, DateOnly day, KnowledgeBase knowledge) =>
        past is { IsEmpty: true }
            ? []
            : knowledge.Treatments.Values
                .SelectMany(treatment => LimitCheck.Of(treatment, day, past, knowledge), (treatment, verdict) => (treatment.Id, Verdict: verdict))
                .GroupBy(one => Key(one.Verdict), StringComparer.Ordinal)
                .Select((same, index) => Of(
                    index.ToString("000", CultureInfo.InvariantCulture), same.First().Verdict, WordSet.Of(same.Select(one => one.Id)), day));

    private static string Key(LimitVerdict verdict) => string.Join(
        '|', verdict.Kind, verdict.Active, verdict.Holds, verdict.Until, verdict.Text, string.Join(',', verdict.Needs.Select(need => need.Id)));

    private static LimitFact Of(string id, LimitVerdict verdict, WordSet treatments, DateOnly day) =>
        new(id, verdict.Text, new Dictionary<string, Reading>
        {
            ["holds"] = verdict.Holds == Truth.Yes ? Reading.Of(true) : new Reading.Open(verdict.Needs, null),
            ["treatments"] = Reading.Of(treatments),
            ["active"] = verdict.Active is { } active ? Reading.Of(active) : Reading.Absent,
            ["kind"] = Reading.Of(verdict.Kind.ToString().ToLowerInvariant()),
            ["days-left"] = verdict.Until is { } until
                ? Reading.Of(until.DayNumber - day.DayNumber)
                : Reading.Of(DaysInYear),
        });

    // Where no day can be told a whole year is the longest that a limit lasts.
    private const int DaysInYear = 366;
}
