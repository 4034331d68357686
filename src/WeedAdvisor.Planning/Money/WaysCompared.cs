using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;

namespace WeedAdvisor.Planning.Money;

/// <summary>Something that was not compared, and why.</summary>
/// <param name="Action">The action's id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Because">Why not.</param>
public sealed record NotCompared(string Action, string Name, string Because);

/// <summary>The ways through an area's year, cheapest first.</summary>
/// <param name="Case">What they are reckoned from.</param>
/// <param name="Today">The way that the visit found; it is among <paramref name="Ways"/>.</param>
/// <param name="Ways">All ways, the cheapest first, then by id.</param>
/// <param name="Left">What was not compared.</param>
public sealed record WaysCompared(MoneyCase Case, Way Today, ImmutableArray<Way> Ways, ImmutableArray<NotCompared> Left)
{
    private const string Cover = "cover";

    /// <summary>Reckons the ways of an area; refused when today's way lacks a price.</summary>
    public static Outcome<WaysCompared, string> Of(MoneyCase money)
    {
        Outcome<Way, string> today = WayCosting.Of(money.Year, WaysOfYear.Today(money.Year), Variation.None);
        if (!today.IsGood)
            return Outcome<WaysCompared, string>.Bad(
                today.Refusals.Select(why => $"{money.Area.Name}: today's way cannot be reckoned: {why}.")
            );
        var left = ImmutableArray.CreateBuilder<NotCompared>();
        var ways = new List<Way> { today.Value };
        // Where nothing else is done today, today's way is hands alone.
        if (!today.Value.Plan.Parts.IsEmpty || money.Year.TodayControl is > 0)
            ways.Add(WayCosting.Of(money.Year, WayPlans.Hands(money.IntervalWeeks), Variation.None).Value!);
        ways.AddRange(AtBestInterval(money, WayPlans.Hands(money.IntervalWeeks), interval => WayPlans.Hands(interval)));
        Way[] alone = [.. WayPlans.Comparable(money).Select(action => Alone(money, action, left)).OfType<Way>()];
        ways.AddRange(alone);
        Way[] bests = [.. Best(alone)];
        foreach (Way best in bests)
            ways.AddRange(AtBestInterval(money, best.Plan, interval => WaysOfYear.At(best.Plan, interval)));
        ways.AddRange(Together(money, bests));

        if (
            alone.Where(way => WayPlans.IsForBoom(way.Plan.Parts[0].Action)).MinBy(way => (way.Usd, way.Plan.Id)) is
            { } sprayed
        )
            ways.AddRange(Reckoned(money, WayPlans.ByBoom(sprayed.Plan), left));

        return Outcome<WaysCompared, string>.Good(
            new WaysCompared(
                money,
                today.Value,
                [.. ways.OrderBy(way => way.Usd).ThenBy(way => way.Plan.Id, StringComparer.Ordinal)],
                left.ToImmutable()
            )
        );
    }

    /// <summary>
    /// The way with this id, or of the action with this id. A practice that is clear but is not compared by itself is
    /// set on top of today's way. Refused with the reason when the way cannot be taken or reckoned.
    /// </summary>
    public Outcome<Way, string> Find(string id)
    {
        if (Ways.FirstOrDefault(way => way.Plan.Id == id) is { } way)
            return Outcome<Way, string>.Good(way);
        if (Case.Knowledge.ActionOf(id) is not { } action)
            return Refused($"there is no way '{id}'");
        if (Case.Advice.Barred.Any(barred => barred.Action == id))
            return Refused($"'{id}' must not be used here");
        if (Case.Advice.Waiting.Any(waiting => waiting.Action == id))
            return Refused($"'{id}' waits for an answer here");
        if (Case.Advice.Clear.All(clear => clear.Action != id))
            return Refused($"nothing speaks for '{id}' here");
        if (Left.FirstOrDefault(left => left.Action == id && action is Treatment) is { } noted)
            return Refused($"'{id}' is not compared: {noted.Because}");
        if (action is Treatment)
            return Refused($"'{id}' stops nothing that comes up later, so a year of it cannot be compared");
        if (Today.Plan.Parts.Any(part => part.Action.Id == id))
            return Refused($"'{id}' is part of today's way");
        var plan = new WayPlan(
            id,
            $"Today's way and: {action.Name}",
            Case.IntervalWeeks,
            [.. Today.Plan.Parts, new WayPart(action, [])]
        )
        {
            KeepsRounds = true,
            StatedControl = Today.Plan.StatedControl,
        };
        Outcome<Way, string> added = WayCosting.Of(Case.Year, plan, Variation.None);
        return added.IsGood ? added : Refused($"'{id}' cannot be reckoned: {string.Join("; ", added.Refusals)}");
    }

    private Outcome<Way, string> Refused(string why) => Outcome<Way, string>.Bad($"{Case.Area.Name}: {why}.");

    // A cheapest one of each: a cover, granules, a spray.
    private static IEnumerable<Way> Best(IEnumerable<Way> alone) =>
        alone
            .GroupBy(way => KindOf(way.Plan.Parts[0].Action), StringComparer.Ordinal)
            .Where(group => group.Key.Length > 0)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => group.OrderBy(way => way.Usd).ThenBy(way => way.Plan.Id, StringComparer.Ordinal).First());

    // The cheapest cover with the cheapest granules and with the cheapest spray, each at the interval that suits it
    // best.
    private static IEnumerable<Way> Together(MoneyCase money, Way[] bests)
    {
        if (bests.FirstOrDefault(way => KindOf(way.Plan.Parts[0].Action) == Cover) is not { } cover)
            yield break;
        foreach (Way other in bests.Where(way => way != cover))
        {
            WayPlan plan = WayPlans.Together(cover.Plan, other.Plan);
            Way atToday = WayCosting.Of(money.Year, plan, Variation.None).Value!;
            yield return AtBestInterval(money, plan, interval => WaysOfYear.At(plan, interval)).FirstOrDefault(atToday);
        }
    }

    private static string KindOf(CatalogueAction action) =>
        action switch
        {
            Treatment { Formulation: "GR" } => "granules",
            Treatment => "spray",
            Practice { Kind: "covering" } => Cover,
            _ => "",
        };

    private static Way? Alone(MoneyCase money, CatalogueAction action, ImmutableArray<NotCompared>.Builder left)
    {
        if (!WayPlans.HasEffect(money, action))
        {
            left.Add(new NotCompared(action.Id, action.Name, "no figure says what it does to these weeds"));
            return null;
        }

        if (WayPlans.With(money, action) is { } plan)
            return Reckoned(money, plan, left).FirstOrDefault();
        left.Add(new NotCompared(action.Id, action.Name, "no week of the year is left in which it may go on"));
        return null;
    }

    private static IEnumerable<Way> Reckoned(MoneyCase money, WayPlan plan, ImmutableArray<NotCompared>.Builder left)
    {
        Outcome<Way, string> way = WayCosting.Of(money.Year, plan, Variation.None);
        if (way.IsGood)
            return [way.Value];
        left.Add(new NotCompared(plan.Id, plan.Name, string.Join("; ", way.Refusals)));
        return [];
    }

    // Nothing when today's interval is the best one.
    private static IEnumerable<Way> AtBestInterval(MoneyCase money, WayPlan plan, Func<int, WayPlan> at)
    {
        Way best = IntervalComparison
            .UsualIntervals.Append(plan.IntervalWeeks)
            .Distinct()
            .Select(interval => WayCosting.Of(money.Year, at(interval), Variation.None).Value!)
            .OrderBy(way => way.Usd)
            .ThenByDescending(way => way.Plan.IntervalWeeks)
            .First();
        return best.Plan.IntervalWeeks == plan.IntervalWeeks ? [] : [best];
    }
}
