using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Money;

/// <summary>The ways that an area has: what was found, hands alone, and what the advice has cleared.</summary>
internal static class WayPlans
{
    private const int DaysInWeek = 7;

    private static readonly string[] s_kinds = ["covering", "feeding", "substrate"];

    /// <summary>The way that the visit found: today's rounds and mulch, and what went on in the year before.</summary>
    public static WayPlan Today(MoneyCase money)
    {
        var parts = ImmutableArray.CreateBuilder<WayPart>();
        if (money.Mulch is { } mulch && Mulches.PracticeOf(mulch, money.Knowledge) is { } laid)
            parts.Add(new WayPart(laid, []));
        foreach (var uses in money.PastYear.GroupBy(past => past.Treatment!, StringComparer.Ordinal))
        {
            parts.Add(
                new WayPart(
                    money.Knowledge.Treatments[uses.Key],
                    [.. uses.Select(past => WeeksFrom(money.Day, past.Date!.Value)).Distinct().Order()]
                )
            );
        }

        return new WayPlan(WayPlan.Today, MeansOfToday(parts, money), money.IntervalWeeks, parts.ToImmutable())
        {
            StatedControl = money.TodayControl,
        };
    }

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

    /// <summary>The same way with rounds at another interval.</summary>
    public static WayPlan At(WayPlan plan, int intervalWeeks) =>
        plan with
        {
            Id = $"{plan.Id}-every-{intervalWeeks}",
            Means =
                string.Join(" and ", plan.Parts.Select(part => part.Action.Name))
                + (plan.Parts.Any(part => part.IsByBoom) ? " with a boom" : ""),
            IntervalWeeks = intervalWeeks,
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
        || money.Weeds.Any(weed => WayControl.Published(money, action, weed) is { High: > 0 });

    private static bool IsPreemergence(Treatment treatment) =>
        treatment is { Role: "preemergence", ReachesCrop: true, ResidualWeeks: not null };

    private static ImmutableArray<int> WeeksOf(MoneyCase money, Treatment treatment)
    {
        DateOnly earliest = money.Advice.Barred.FirstOrDefault(barred => barred.Action == treatment.Id)?.Until?.Day
            ?? money.Day;
        int first = (int)Math.Ceiling((earliest.DayNumber - money.Day.DayNumber) / (double)DaysInWeek);
        return Programme.Of(treatment, first, ComesUp(money), treatment.ResidualWeeks!.Value.Middle, money.Usual).Weeks;
    }

    private static ImmutableArray<bool> ComesUp(MoneyCase money)
    {
        WeedTraits[] traits =
        [
            .. money.Weeds.Select(weed =>
                WeedTraits.Of(money.Knowledge.Weeds[weed.Weed], money.Site, money.Numbers).Value!
            ),
        ];
        int first = WeedTraits.WeekOf(money.Day);
        return
        [
            .. Enumerable
                .Range(first, WeedTraits.WeeksInYear)
                .Select(week => traits.Any(weed => weed.WeekShare[week % WeedTraits.WeeksInYear] > 0)),
        ];
    }

    // The week of the year from the visit in which the day comes round again.
    private static int WeeksFrom(DateOnly visit, DateOnly past)
    {
        int days = past.DayNumber - visit.DayNumber;
        return Math.Min(WeedTraits.WeeksInYear - 1, (((days % 365) + 365) % 365) / DaysInWeek);
    }

    private static string MeansOfToday(ImmutableArray<WayPart>.Builder parts, MoneyCase money)
    {
        string done =
            parts.Count > 0 ? string.Join(" and ", parts.Select(part => part.Action.Name))
            : money.TodayControl is > 0 ? "what stops weeds now, not noted in the visit"
            : "hands alone";
        return $"Today's way: {done}";
    }
}
