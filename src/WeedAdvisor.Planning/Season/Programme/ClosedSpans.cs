using System.Collections.Immutable;
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
    public static ImmutableArray<ClosedSpan> Of(SeasonCase season, KnowledgeBase knowledge)
    {
        var spans = ImmutableArray.CreateBuilder<ClosedSpan>();
        HashSet<string> preventives = Preventives(season, knowledge);
        string? before = null;
        for (int week = 0; week < SeasonYear.Weeks; week++)
        {
            (string Key, string Words)? reason = Reason(season, week, preventives);
            if (reason is { } same && same.Key == before)
                spans[^1] = spans[^1] with { ToWeek = week };
            else if (reason is { } other)
                spans.Add(new ClosedSpan(week, week, other.Words));
            before = reason?.Key;
        }

        return spans.ToImmutable();
    }

    private static (string Key, string Words)? Reason(SeasonCase season, int week, HashSet<string> preventives)
    {
        if (season.Request.Closed.Contains(week))
            return (Asked, Asked);
        if (season.Treatments.Any(treatment => season.Weekly.IsClear(treatment.Id, week)))
            return null;
        AreaAdvice advice = season.Weekly.On(season.Year.DayOf(week));
        string? common = advice.Barred
            .Where(barred => preventives.Contains(barred.Action))
            .SelectMany(barred => barred.Because.Select(reason => reason.Judgement).Distinct(StringComparer.Ordinal))
            .GroupBy(judgement => judgement, StringComparer.Ordinal)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .FirstOrDefault()?.Key;
        if (common is not null)
            return (common, $"for most of them: {Words(advice, preventives, common)}");
        string plain = advice.Waiting.Any(waiting => preventives.Contains(waiting.Action)) ? Unanswered : Nothing;
        return (plain, plain);
    }

    // Where not one is ever clear the reason is looked for among all that stop seed.
    private static HashSet<string> Preventives(SeasonCase season, KnowledgeBase knowledge) => season.Treatments.IsEmpty
        ? [.. knowledge.Treatments.Values.Where(treatment => treatment.Role == "preemergence").Select(treatment => treatment.Id)]
        : [.. season.Treatments.Select(treatment => treatment.Id)];

    private static string Words(AreaAdvice advice, HashSet<string> preventives, string judgement) => advice.Barred
        .Where(barred => preventives.Contains(barred.Action))
        .SelectMany(barred => barred.Because)
        .First(reason => reason.Judgement == judgement)
        .Text;
}
