using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Money;

/// <summary>The ways that an area has: what was found, hands alone, and what the advice has cleared.</summary>
internal static class WayPlans
{
    private const int DaysInWeek = 7;

    private static readonly string[] s_kinds = ["covering", "feeding", "substrate"];

    /// <summary>Nothing but hands.</summary>
    public static WayPlan Hands(int intervalWeeks) => new($"hands-{intervalWeeks}", "Hands alone", intervalWeeks, []);

    /// <summary>An action at today's rounds and nothing else; null when it cannot be put on in the year.</summary>
    public static WayPlan? With(MoneyCase money, CatalogueAction action)
    {
        ImmutableArray<int> weeks = action is Treatment treatment ? WeeksOf(money, treatment) : [];
        return action is Treatment && weeks.IsEmpty
            ? null
            : new WayPlan(action.Id, action.Name, money.IntervalWeeks, [new WayPart(action, weeks)]);
    }

    /// <summary>A cover and a preemergence, both at today's rounds.</summary>
    public static WayPlan Together(WayPlan cover, WayPlan preemergence) =>
        new(
            $"{cover.Id}-and-{preemergence.Id}",
            $"{cover.Parts[0].Action.Name} and {preemergence.Parts[0].Action.Name}",
            cover.IntervalWeeks,
            [.. cover.Parts, .. preemergence.Parts]
        );

    /// <summary>A sprayed way done with a boom.</summary>
    public static WayPlan ByBoom(WayPlan sprayed) =>
        sprayed with
        {
            Id = $"{sprayed.Id}-by-boom",
            Means = $"{sprayed.Parts[0].Action.Name} with a boom",
            Parts = [.. sprayed.Parts.Select(part => part with { IsByBoom = true })],
        };

    /// <summary>
    /// The clear actions that can be compared, in ordinal order of id: what waits for the next potting is no way of
    /// this year.
    /// </summary>
    public static IEnumerable<CatalogueAction> Comparable(MoneyCase money) =>
        money
            .Advice.Clear.Where(clear => clear.Horizon <= Horizon.ThisSeason)
            .Select(clear => money.Knowledge.ActionOf(clear.Action)!)
            .Where(IsComparable)
            .OrderBy(action => action.Id, StringComparer.Ordinal);

    /// <summary>
    /// Whether the action can stop weeds for a year: a cover, a way of feeding or filling, a preemergence.
    /// </summary>
    public static bool IsComparable(CatalogueAction action) =>
        action switch
        {
            Practice practice => s_kinds.Contains(practice.Kind) && practice.WorksOn != "standing-weeds",
            Treatment treatment => IsPreemergence(treatment),
            _ => false,
        };

    /// <summary>Whether it can be done with a boom: what has to be kept off the leaves cannot.</summary>
    public static bool IsForBoom(CatalogueAction action) =>
        action is Treatment treatment && IsPreemergence(treatment) && ApplicationTools.IsForBoom(treatment);

    /// <summary>
    /// Whether a published figure says what the action does to any of the weeds; mulches also have the model's.
    /// </summary>
    public static bool HasEffect(MoneyCase money, CatalogueAction action) =>
        Mulches.KindOf(action) is not null
        || money.Year.Weeds.Counted.Any(weed => WayControl.Published(money.Year, action, weed.Weed) is { High: > 0 });

    private static bool IsPreemergence(Treatment treatment) =>
        treatment is { Role: "preemergence", ReachesCrop: true, ResidualWeeks: not null };

    private static ImmutableArray<int> WeeksOf(MoneyCase money, Treatment treatment)
    {
        DateOnly earliest = money.Advice.Barred.FirstOrDefault(barred => barred.Action == treatment.Id)?.Until?.Day
            ?? money.Day;
        int first = (int)Math.Ceiling((earliest.DayNumber - money.Day.DayNumber) / (double)DaysInWeek);
        return Programme
            .Of(treatment, first, ComesUp(money.Year), treatment.ResidualWeeks!.Value.Middle, money.Year.Usual)
            .Weeks;
    }

    private static ImmutableArray<bool> ComesUp(YearCase year)
    {
        int first = WeedTraits.WeekOf(year.Day);
        return
        [
            .. Enumerable
                .Range(first, WeedTraits.WeeksInYear)
                .Select(week =>
                    year.Weeds.Counted.Any(weed => weed.Traits.WeekShare[week % WeedTraits.WeeksInYear] > 0)
                ),
        ];
    }
}
