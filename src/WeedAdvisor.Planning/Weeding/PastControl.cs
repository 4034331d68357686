using System.Collections.Immutable;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What earlier applications still stop.</summary>
public static class PastControl
{
    private const int DaysInWeek = 7;

    /// <summary>
    /// Preventives that still act on the day of the visit, each with the weeks since it went on, begun ones counted and
    /// one at least; oldest first.
    /// </summary>
    public static ImmutableArray<(Treatment Treatment, int WeeksAgo)> Acting(
        VisitArea area,
        DateOnly visit,
        KnowledgeBase knowledge
    ) =>
        [
            .. (area.Past ?? [])
                .Where(past => past.Date is { } day && day <= visit)
                .Where(past => knowledge.RecordOf(past) is { Role: "preemergence" })
                .OrderBy(past => past.Date)
                .Select(past =>
                    (
                        Treatment: knowledge.RecordOf(past)!,
                        WeeksAgo: Math.Max(
                            1,
                            (visit.DayNumber - past.Date!.Value.DayNumber + DaysInWeek - 1) / DaysInWeek
                        )
                    )
                )
                .Where(past => past.Treatment.ResidualWeeks is { } residual && past.WeeksAgo < residual.High),
        ];

    /// <summary>
    /// Share of a weed's seedlings that is stopped in each week from the visit on, 0 to 1: that of the best application
    /// still acting. Empty when none is. A weed that nobody rated is not stopped, and one that came through here again
    /// and again is not credited with what failed on it.
    /// </summary>
    public static ImmutableArray<double> Of(
        Weed weed,
        ImmutableArray<(Treatment Treatment, int WeeksAgo)> acting,
        ImmutableArray<Escape> escapes,
        int weeks,
        KnowledgeBase knowledge
    )
    {
        if (acting.IsEmpty || weeks < 1)
            return [];
        double left = (double)knowledge.Usual[UsualIds.ControlLeft] / 100;
        double[] control = new double[weeks];
        foreach ((Treatment treatment, int weeksAgo) in acting)
        {
            if (TreatmentControl.PercentOf(treatment, weed, knowledge, escapes) is not { } percent)
                continue;
            ImmutableArray<double> course = ControlOverTime.Of(
                (double)percent.Middle / 100,
                treatment.ResidualWeeks!.Value,
                left
            );
            for (int week = 0; week < weeks && week + weeksAgo < course.Length; week++)
                control[week] = Math.Max(control[week], course[week + weeksAgo]);
        }

        return [.. control];
    }
}
