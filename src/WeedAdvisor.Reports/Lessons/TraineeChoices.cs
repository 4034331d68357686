using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Certainties;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Text;
using Then = WeedAdvisor.Knowledge.Judgements.Consequence;

namespace WeedAdvisor.Reports.Lessons;

/// <summary>What a trainee may put into an order of the work.</summary>
public static class TraineeChoices
{
    private const int MostBarred = 8;

    /// <summary>
    /// The work that some rule speaks for here, habits of the nursery left out: what is clear, what waits, and those of
    /// the barred that the best case is made for, which a trainee has to see for himself.
    /// </summary>
    /// <param name="area">The advice.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <returns>Ids in the order of their names, which tells nothing of the order of the work.</returns>
    public static ImmutableArray<string> Of(AreaAdvice area, KnowledgeBase knowledge)
    {
        var names = new Names(knowledge);
        return
        [
            .. area
                .Clear.Where(one => one.Horizon != Horizon.Habit)
                .Select(one => one.Action)
                .Concat(area.Waiting.Select(one => one.Action))
                .Concat(BarredWithACase(area))
                .Distinct(StringComparer.Ordinal)
                .OrderBy(names.Action, StringComparer.OrdinalIgnoreCase),
        ];
    }

    // Those with the best case: they tempt most.
    private static IEnumerable<string> BarredWithACase(AreaAdvice area)
    {
        HashSet<string> barred = [.. area.Barred.Select(one => one.Action)];
        return area.AllConclusions()
            .Where(reason => reason is { IsCertain: true, Then: Then.Argument { IsDoubt: false }, Action: not null })
            .Where(reason => barred.Contains(reason.Action!))
            .GroupBy(reason => reason.Action!, StringComparer.Ordinal)
            .OrderByDescending(reasons => CertaintyFactor.Combine(reasons.Select(reason => reason.Certainty)))
            .ThenBy(reasons => reasons.Key, StringComparer.Ordinal)
            .Take(MostBarred)
            .Select(reasons => reasons.Key);
    }
}
