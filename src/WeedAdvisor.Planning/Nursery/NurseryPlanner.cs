using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>How far the plan of a nursery is.</summary>
/// <param name="Done">Areas that are done.</param>
/// <param name="All">Areas there are.</param>
/// <param name="Area">The name of the area that was done last.</param>
public sealed record NurseryProgress(int Done, int All, string Area);

/// <summary>
/// Plans all areas of a visit together: each by itself with the ways that spare hours or money, on all cores; then the
/// hours and the money go where they save most.
/// </summary>
public static class NurseryPlanner
{
    private const int ActionsTold = 2;

    /// <summary>
    /// The plan; refused, with one sentence, when no area can be planned or nothing keeps the hours and the money.
    /// </summary>
    /// <param name="advisor">Gives advice.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="request">What is asked; hours and budget are those of the whole nursery.</param>
    /// <param name="progress">Told when an area is done; null when nobody listens.</param>
    /// <param name="stop">Stops early: the areas that are finished are shared out.</param>
    public static Outcome<NurseryPlan, string> Of(
        Advisor advisor,
        Visit visit,
        PlanRequest request,
        IProgress<NurseryProgress>? progress = null,
        CancellationToken stop = default
    )
    {
        if (request.HoursPerWeek <= 0)
            return Refused("Hours a week for the whole nursery are more than 0: pots that nobody weeds have no plan.");
        if (request.BudgetUsd <= 0)
            return Refused("A budget for the whole nursery is more than $0: bags and gloves alone cost money.");
        Looked[] looked = Look(advisor, visit, request, progress, stop);
        Looked[] planned = [.. looked.Where(one => one.Ways is { Ways.IsEmpty: false })];
        if (planned.Length == 0)
            return Refused(NoArea(looked));
        var shared = new SharedNursery([.. planned.Select(one => one.Ways!)], request, stop);
        return shared.At(request.HoursPerWeek, request.BudgetUsd) is { } shares
            ? Outcome<NurseryPlan, string>.Good(Told(advisor, visit, request, looked, shared, shares))
            : Refused(TooLittle(planned, request));
    }

    private static Looked[] Look(
        Advisor advisor,
        Visit visit,
        PlanRequest request,
        IProgress<NurseryProgress>? progress,
        CancellationToken stop
    )
    {
        PlanEffort effort = NurseryEffort.Of(visit.Areas.Length) with
        {
            SpreadsFirstRounds = request.HoursPerWeek is not null,
        };
        PlanRequest alone = request with { HoursPerWeek = null, BudgetUsd = null };
        var looked = new Looked[visit.Areas.Length];
        int done = 0;
        Parallel.For(0, looked.Length, index =>
        {
            looked[index] = stop.IsCancellationRequested
                ? new Looked(visit.Areas[index], null, ["Stopped before it was planned."], [])
                : Look(advisor, AreaCase.Of(visit, index), alone, effort, stop);
            progress?.Report(
                new NurseryProgress(Interlocked.Increment(ref done), looked.Length, visit.Areas[index].Name)
            );
        });
        return looked;
    }

    private static Looked Look(
        Advisor advisor,
        AreaCase found,
        PlanRequest request,
        PlanEffort effort,
        CancellationToken stop
    )
    {
        Outcome<PlanCase, string> plan = PlanCase.Of(advisor, found, request);
        if (!plan.IsGood)
            return new Looked(found.Area, null, Bare(found.Area, plan.Refusals), ToDo(advisor.Open(found).Advice));
        AreaWays ways = PlanSearch.WaysOf(plan.Value, effort, stop);
        return ways.Ways.IsEmpty
            ? new Looked(found.Area, ways, ["No year has in it all that must be in it."], [])
            : new Looked(found.Area, ways, [], []);

        ImmutableArray<string> ToDo(AreaAdvice advice) =>
            [
                .. advice
                    .Clear.Select(clear => advisor.Knowledge.ActionOf(clear.Action))
                    .OfType<CatalogueAction>()
                    .Select(action => action.Name)
                    .Take(ActionsTold),
            ];
    }

    // The area stands over it already.
    private static ImmutableArray<string> Bare(VisitArea area, ImmutableArray<string> why) =>
        [
            .. why.Select(one =>
                one.StartsWith(area.Name + ": ", StringComparison.Ordinal) ? one[(area.Name.Length + 2)..] : one
            ),
        ];

    private static NurseryPlan Told(
        Advisor advisor,
        Visit visit,
        PlanRequest request,
        Looked[] looked,
        SharedNursery shared,
        NurseryShares shares
    )
    {
        KnowledgeBase knowledge = advisor.Knowledge;
        Looked[] planned = [.. looked.Where(one => one.Ways is { Ways.IsEmpty: false })];
        ImmutableArray<SharedArea> areas =
        [
            .. planned.Select(
                (one, i) =>
                    new SharedArea(one.Area, one.Ways!.Plan, shares.Plans[i], shares.Offers[i], shared.FirstOf(i))
                    {
                        Wanted = shared.WantedBy(i),
                        Mowing = SourceCleaned.Of(
                            advisor,
                            AreaCase.Of(visit, visit.Areas.IndexOf(one.Area)),
                            one.Ways.Plan,
                            shares.Plans[i],
                            one.Ways.Plan.Case.Request with
                            {
                                HoursPerWeek = shares.Offers[i].HoursPerWeek,
                                BudgetUsd = shares.Offers[i].SpentUsd,
                            }
                        ),
                    }
            ),
        ];
        const decimal ten = 10;
        return new NurseryPlan
        {
            Visit = visit,
            Knowledge = knowledge,
            Request = request,
            Areas =
            [
                .. areas
                    .OrderByDescending(area => area.First.UsdAnHour)
                    .ThenBy(area => area.Area.Id, StringComparer.Ordinal),
            ],
            Unplanned = [.. looked.Except(planned).Select(one => new UnplannedArea(one.Area, one.Why, one.ToDo))],
            LeastUsd = Math.Min(shared.LeastAt(request.HoursPerWeek, request.BudgetUsd), shares.Usd),
            Hours = shared.Curve(request.BudgetUsd),
            TenMore = request.HoursPerWeek is { } hours ? Other(hours + ten) : null,
            TenFewer = Other((request.HoursPerWeek ?? shares.HoursPerWeek) - ten),
            Sources = NurserySources.Of(
                visit,
                knowledge,
                [.. areas.Select((area, i) => (area, planned[i].Ways!.Ways))]
            ),
            IsCutShort = planned.Any(one => one.Ways!.Plan.IsCutShort),
            IsCoarse = visit.Areas.Length > NurseryEffort.MostInFull,
        };

        OtherHours? Other(decimal hours) =>
            shared.At(hours, request.BudgetUsd) is { } other
                ? new OtherHours(
                    hours,
                    other.Usd,
                    [
                        .. planned
                            .Select(
                                (one, i) =>
                                    (one.Area, Hours: other.Offers[i].HoursPerWeek - shares.Offers[i].HoursPerWeek)
                            )
                            .Where(one => one.Hours != 0),
                    ]
                )
                : null;
    }

    private static string NoArea(Looked[] looked) =>
        looked.Length == 1 ? $"{looked[0].Area.Name}: {string.Join(' ', looked[0].Why)}"
        : looked.Select(one => string.Join(' ', one.Why)).Distinct().Count() == 1
            ? $"No area of this visit can be planned. {string.Join(' ', looked[0].Why)}"
        : "No area of this visit can be planned. "
            + string.Join(' ', looked.Take(3).Select(one => $"{one.Area.Name}: {one.Why.FirstOrDefault()}"))
            + (looked.Length > 3 ? $" And {looked.Length - 3} more." : "");

    private static string TooLittle(Looked[] planned, PlanRequest request)
    {
        decimal hours = planned.Sum(one => one.Ways!.Ways.Min(way => way.Offer.HoursPerWeek)),
            usd = planned.Sum(one => one.Ways!.Ways.Min(way => way.Offer.SpentUsd));
        string[] asked =
        [
            .. request.HoursPerWeek is { } most
                ? [FormattableString.Invariant($"{most:0.##} hours a week")]
                : (string[])[],
            .. request.BudgetUsd is { } money
                ? [FormattableString.Invariant($"a budget of ${money:0.##}")]
                : (string[])[],
        ];
        return string.Create(
            CultureInfo.InvariantCulture,
            $"No plan keeps {string.Join(" and ", asked)}: these areas take at least {Up(hours):0.#} hours in their "
                + $"busiest weeks and ${Math.Ceiling(usd):0} for materials, not always both with one plan. Give more, "
                + $"or plan fewer areas (--area)."
        );
    }

    private static decimal Up(decimal hours) => Math.Ceiling(hours * 10) / 10;

    private static Outcome<NurseryPlan, string> Refused(string why) => Outcome<NurseryPlan, string>.Bad(why);

    private sealed record Looked(
        VisitArea Area,
        AreaWays? Ways,
        ImmutableArray<string> Why,
        ImmutableArray<string> ToDo
    );
}
