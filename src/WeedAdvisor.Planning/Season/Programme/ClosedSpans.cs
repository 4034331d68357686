using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Finds the weeks in which no preventive may go on, and why.</summary>
internal static class ClosedSpans
{
    private const string Asked = "closed by your wish";
    private const string Unanswered = "an answer is missing for every one of them";
    private const string Nothing = "none is clear";

    /// <summary>Runs of weeks with the same reason. The words are those of the first week.</summary>
    /// <param name="season">The case.</param>
    /// <param name="ask">A line to the rules: words that count days are those of the span's first day.</param>
    /// <param name="knowledge">The knowledge.</param>
    public static ImmutableArray<ClosedSpan> Of(
        SeasonCase season,
        Func<AreaCase, AreaAdvice> ask,
        KnowledgeBase knowledge
    )
    {
        var spans = ImmutableArray.CreateBuilder<ClosedSpan>();
        HashSet<string> preventives = Preventives(season, knowledge);
        string? before = null;
        for (int week = 0; week < SeasonYear.Weeks; week++)
        {
            string? reason = Reason(season, week, preventives);
            if (reason is not null && reason == before)
                spans[^1] = spans[^1] with { ToWeek = week };
            else if (reason is not null)
                spans.Add(
                    new ClosedSpan(
                        week,
                        week,
                        WordsOf(reason, ask(season.Through.On(season.Year.DayOf(week))), preventives)
                    )
                );
            before = reason;
        }

        return spans.ToImmutable();
    }

    private static string? Reason(SeasonCase season, int week, HashSet<string> preventives)
    {
        if (season.Request.Closed.Contains(week))
            return Asked;
        if (season.Treatments.Any(treatment => season.Weekly.IsClear(treatment.Id, week)))
            return null;
        AreaAdvice advice = season.Weekly.On(season.Year.DayOf(week));
        string? common = advice
            .Barred.Where(barred => preventives.Contains(barred.Action))
            .SelectMany(barred => barred.Because.Select(reason => reason.Judgement).Distinct(StringComparer.Ordinal))
            .GroupBy(judgement => judgement, StringComparer.Ordinal)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .FirstOrDefault()
            ?.Key;
        return common ?? (advice.Waiting.Any(waiting => preventives.Contains(waiting.Action)) ? Unanswered : Nothing);
    }

    // Where not one is ever clear the reason is looked for among all that stop seed.
    private static HashSet<string> Preventives(SeasonCase season, KnowledgeBase knowledge) =>
        season.Treatments.IsEmpty
            ?
            [
                .. knowledge
                    .Treatments.Values.Where(treatment => treatment.Role == "preemergence")
                    .Select(treatment => treatment.Id),
            ]
            : [.. season.Treatments.Select(treatment => treatment.Id)];

    // A reason is a judgement, or stands for itself.
    private static string WordsOf(string reason, AreaAdvice advice, HashSet<string> preventives) =>
        advice
            .Barred.Where(barred => preventives.Contains(barred.Action))
            .SelectMany(barred => barred.Because)
            .FirstOrDefault(one => one.Judgement == reason)
            is { } found
            ? $"for most of them: {found.Text}"
            : reason;
}
