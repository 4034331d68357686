using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Plan;

/// <content>
/// What is told of a search besides the way it found: its days, what was left out, ways of other kinds.
/// </content>
public sealed partial class PlanSearch
{
    private AreaPlan Nothing(bool isCutShort = false) =>
        new()
        {
            Case = _plan,
            Best = null,
            WouldDo = WouldDo(),
            Today = WayCosting.Of(Year, _plan.Today).Value!,
            HandsAlone = null,
            LeastUsd = 0,
            LeftOut = [],
            RunnersUp = [],
            Looked = 0,
            Searched = 0,
            IsCutShort = isCutShort,
        };

    // What keeps one of two wishes counts before what keeps none; of those alike the cheapest.
    private ImmutableArray<Way> WouldDo()
    {
        PlanRequest asked = _plan.Request;
        Way[] open = [.. _all.Where(HasAllAsked).Select(one => one.Bare)];
        var would = ImmutableArray.CreateBuilder<Way>();
        if (asked.HoursPerWeek is not null)
            Add(asked with { HoursPerWeek = null }, way => PlanLimits.BusiestWeekHours(Year, way));
        if (asked.BudgetUsd is not null)
            Add(asked with { BudgetUsd = null }, way => PlanLimits.SpentUsd(Year, way));
        return would.ToImmutable();

        void Add(PlanRequest other, Func<Way, decimal> takes)
        {
            Way[] keeping = [.. open.Where(way => PlanLimits.Keeps(other, Year, way))];
            if ((keeping.Length > 0 ? keeping : open).OrderBy(takes).ThenBy(way => way.Usd).FirstOrDefault() is { } way)
                would.Add(way);
        }
    }

    // The rules are asked about the plan that was found; where they leave a use no day, it is found anew.
    private PlannedWay WithDays(PricedChoice best)
    {
        if (best.Season is not { } season)
            return new PlannedWay(best.Choice, best.Bare, []) { Work = PlainWork.Of(Year, best.Choice, best.Bare) };
        Func<Inference.AreaCase, AreaAdvice> ask = season.Rules.Open();
        // Also where the search was stopped: what it found must have its days.
        var allowed = AllowedPlan.Of(season, SeasonSearch.Prepare(season.Problem), ask, Year.Knowledge, default);
        return allowed.Plan is { } plan
            ? new PlannedWay(best.Choice, season.WayOf(plan.Applications), allowed.Uses)
            {
                Work =
                [
                    .. WorkList
                        .Of(season, allowed.Uses, ask, Year.Knowledge)
                        .Where(work => !IsNotTaken(work, best.Choice)),
                ],
                Closed = ClosedSpans.Of(season, ask, Year.Knowledge),
            }
            : new PlannedWay(best.Choice, best.Bare, []) { Work = PlainWork.Of(Year, best.Choice, best.Bare) };
    }

    // The list of work names whatever is clear; of covers and feeds the plan has chosen.
    private bool IsNotTaken(PlannedWork work, StandingChoice choice) =>
        work.Kind == PlannedWorkKind.Practice
        && Year.Knowledge.Practices[work.Action!] is { Kind: "covering" or "feeding" or "substrate" }
        && choice.Measures.All(measure => measure.Id != work.Action);

    private IEnumerable<LeftOut> NotTaken(PlannedWay best, PricedChoice[] choices)
    {
        foreach (Practice measure in _plan.Measures.Where(one => !best.Choice.Measures.Contains(one)))
        {
            // At the rounds of the plan and whatever else is chosen: the best of what was priced.
            PricedChoice? with = choices
                .Where(one => one.Choice.Measures.Contains(measure))
                .OrderBy(one => _searched.GetValueOrDefault(one.Choice, one).Usd)
                .FirstOrDefault();
            if (with is null)
                continue;
            Way way = _searched.GetValueOrDefault(with.Choice, with).BestWay;
            if (!PlanLimits.Keeps(_plan.Request, Year, way))
                continue;
            decimal costs = way.UsdOf(measure.Id);
            yield return new LeftOut(measure.Id, measure.Name, costs, best.Way.Usd - (way.Usd - costs));
        }
    }

    private IEnumerable<RunnerUp> OtherKinds(PlannedWay best, PricedChoice[] bare)
    {
        var kinds = new List<(string Kind, Way? Way)>
        {
            (
                "hands alone, nothing put on or laid",
                bare.Where(one => one.Choice.Measures.IsEmpty).Select(one => one.Bare).FirstOrDefault()
            ),
            (
                "a cover or other measure, nothing put on",
                bare.Where(one => !one.Choice.Measures.IsEmpty).Select(one => one.Bare).FirstOrDefault()
            ),
            (
                "preventives, nothing laid",
                _searched
                    .Values.Where(one => one.Choice.Measures.IsEmpty && one.Best is not null)
                    .Where(one => PlanLimits.Keeps(_plan.Request, Year, one.Best!))
                    .OrderBy(one => one.Usd)
                    .Select(one => one.Best)
                    .FirstOrDefault()
            ),
        };
        return kinds
            .Where(one => one.Way is { } way && way.Usd > best.Way.Usd && !IsSame(way, best.Way))
            .Select(one => new RunnerUp(one.Kind, one.Way!, one.Way!.Usd - best.Way.Usd))
            .OrderBy(one => one.DearerUsd);
    }

    private static bool IsSame(Way one, Way other) =>
        one.Plan.Rounds == other.Plan.Rounds
        && one.Plan.Parts.Select(part => part.Action.Id).SequenceEqual(other.Plan.Parts.Select(part => part.Action.Id));
}
