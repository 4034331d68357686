using System.Collections.Immutable;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Turns treatments that are clear in some week into candidates of the search.</summary>
/// <param name="weekly">What the rules allow, week by week.</param>
/// <param name="weeds">The weeds of the plan.</param>
/// <param name="sums">What the year is reckoned from.</param>
/// <param name="knowledge">The knowledge.</param>
/// <param name="escapes">What came through earlier applications in the area.</param>
internal sealed class CandidateList(
    WeeklyAdvice weekly,
    IReadOnlyList<WeedPressure> weeds,
    YearCase sums,
    KnowledgeBase knowledge,
    ImmutableArray<Escape> escapes
)
{
    private const decimal DaysInWeek = 7;

    // Limits are printed in kilograms to two places, turned from pounds.
    private const decimal RoundingKgPerHa = 0.005m;

    private UsualNumbers Numbers => sums.Usual;

    /// <summary>The candidate of a treatment; null when it has no cost or helps against no weed of the plan.</summary>
    public SeasonCandidate? Of(Treatment treatment)
    {
        if (treatment.ResidualWeeks is not { } residual || WayCosting.UsdOfUse(sums, treatment) is not { } cost)
            return null;
        double left = (double)Numbers[UsualIds.ControlLeft] / 100;
        ImmutableArray<double> full = [.. weeds.Select(weed => FullControl(treatment, weed.Weed))];
        if (full.All(control => control == 0))
            return null;
        return new SeasonCandidate(
            treatment.Id,
            [
                .. Enumerable
                    .Range(0, SeasonYear.Weeks)
                    .Select(week => weekly.IsClear(treatment.Id, week) ? cost : (decimal?)null),
            ],
            [.. full.Select(control => ControlOverTime.Of(control, residual, left))],
            Doses(treatment),
            Sites(treatment)
        )
        {
            MinWeeksBetween = WeeksBetween(treatment),
            MaxUsesPerYear = UsesPerYear(treatment),
        };
    }

    /// <summary>
    /// The same for something that went on before the plan, whether or not it is still clear: it holds intervals and
    /// counts in the run of a site of action, and controls what the rules know it to control.
    /// </summary>
    public SeasonCandidate Past(Treatment treatment) =>
        new(
            treatment.Id,
            [.. Enumerable.Repeat((decimal?)null, SeasonYear.Weeks)],
            [
                .. weeds.Select(weed =>
                    ControlOverTime.Of(
                        FullControl(treatment, weed.Weed),
                        treatment.ResidualWeeks ?? new Span(0, 0),
                        (double)Numbers[UsualIds.ControlLeft] / 100
                    )
                ),
            ],
            Doses(treatment),
            Sites(treatment)
        )
        {
            MinWeeksBetween = WeeksBetween(treatment),
            MaxUsesPerYear = UsesPerYear(treatment),
        };

    // The product's own limits; those of its actives are rows of the problem.
    private static int? UsesPerYear(Treatment treatment)
    {
        int? uses = treatment.UsesPerYear is { } times ? (int)decimal.Floor(times) : null;
        return treatment.YearlyLimitKgAiHa is { } limit && ActiveAmounts.Published(treatment)?.Most is { } dose and > 0
            ? Math.Min(uses ?? int.MaxValue, (int)decimal.Floor((limit + RoundingKgPerHa) / dose))
            : uses;
    }

    // The longest interval of the product and its actives holds between it and every other product that shares one.
    private int WeeksBetween(Treatment treatment) =>
        LimitCheck.IntervalDays(treatment, knowledge) is { } days
            ? (int)decimal.Ceiling(days / DaysInWeek)
            : Numbers.Whole(UsualIds.UnknownInterval);

    // A weed that nobody rated is not credited with any control.
    private double FullControl(Treatment treatment, Weed weed) =>
        TreatmentControl.PercentOf(treatment, weed, knowledge, escapes) is { } percent
            ? (double)percent.Middle / 100
            : 0;

    private ImmutableArray<ActiveDose> Doses(Treatment treatment) => ProblemLimits.DosesOf(treatment, knowledge);

    // Where the scheme gives no group, or says only that it does not know one, the active itself stands for its site of
    // action.
    private static ImmutableArray<string> Sites(Treatment treatment) =>
        [
            .. treatment
                .Actives.Select(active =>
                    active.Group is { } group && PastProduct.SitesOf(treatment).Contains(group) ? group : active.Name
                )
                .Distinct(StringComparer.Ordinal),
        ];
}
