using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.WhatIf;

/// <summary>How a rule stands: it does not hold, it may hold, or it holds for sure.</summary>
public enum RuleStand
{
    /// <summary>It does not hold.</summary>
    No,

    /// <summary>It may hold.</summary>
    Perhaps,

    /// <summary>It holds for sure.</summary>
    Yes,
}

/// <summary>An action that stands otherwise.</summary>
/// <param name="Action">Its id.</param>
/// <param name="Now">Its status now.</param>
/// <param name="Then">Its status with the other answers.</param>
/// <param name="Place">Its place now; null where it is not clear.</param>
/// <param name="PlaceThen">Its place then.</param>
public sealed record ActionMove(
    string Action,
    ActionStatus Now,
    ActionStatus Then,
    (Horizon Horizon, int Rank)? Place,
    (Horizon Horizon, int Rank)? PlaceThen
)
{
    /// <summary>Whether it is clear then and was not.</summary>
    public bool Appears => Place is null && PlaceThen is not null;

    /// <summary>Whether it was clear and is not then.</summary>
    public bool Goes => Place is not null && PlaceThen is null;

    /// <summary>
    /// Whether it is clear both times, but for another time or in another order among those that are clear both times.
    /// </summary>
    public bool Moves { get; init; }
}

/// <summary>A rule that stands otherwise.</summary>
/// <param name="Reason">The rule, where it stands surest.</param>
/// <param name="Now">How it stands now.</param>
/// <param name="Then">How it stands then.</param>
public sealed record RuleTurn(Reason Reason, RuleStand Now, RuleStand Then);

/// <summary>What is otherwise between two advices for one area.</summary>
/// <param name="Moves">The actions that stand otherwise, in ordinal order of id.</param>
/// <param name="Turns">The rules that do, cautions left out, in ordinal order of id.</param>
/// <param name="CostNow">What the work of today and this week costs now, the best of each line.</param>
/// <param name="CostThen">The same then.</param>
public sealed record AdviceDifference(
    ImmutableArray<ActionMove> Moves,
    ImmutableArray<RuleTurn> Turns,
    (decimal Usd, decimal Hours) CostNow,
    (decimal Usd, decimal Hours) CostThen
)
{
    /// <summary>The difference between two advices.</summary>
    public static AdviceDifference Of(Names names, AreaAdvice now, AreaAdvice then)
    {
        Dictionary<string, (RuleStand Stand, Reason Reason)> rules = RulesOf(now),
            rulesThen = RulesOf(then);
        ImmutableArray<string> moved = Moved(now, then);
        return new AdviceDifference(
            [
                .. ActionsOf(now)
                    .Union(ActionsOf(then), StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal)
                    .Select(action => new ActionMove(
                        action,
                        now.StatusOf(action),
                        then.StatusOf(action),
                        PlaceOf(now, action),
                        PlaceOf(then, action)
                    )
                    {
                        Moves = moved.Contains(action),
                    })
                    .Where(move => move.Now != move.Then || move.Moves),
            ],
            [
                .. rules
                    .Keys.Union(rulesThen.Keys, StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal)
                    .Select(rule =>
                    {
                        (RuleStand stand, Reason? reason) = rules.GetValueOrDefault(rule);
                        (RuleStand standThen, Reason? reasonThen) = rulesThen.GetValueOrDefault(rule);
                        return new RuleTurn((standThen >= stand ? reasonThen : reason)!, stand, standThen);
                    })
                    .Where(turn => turn.Now != turn.Then),
            ],
            CostOf(names, now),
            CostOf(names, then)
        );
    }

    // What merely slides because something comes in before it has not moved.
    private static ImmutableArray<string> Moved(AreaAdvice now, AreaAdvice then)
    {
        HashSet<string> both = [.. now.Clear.Select(one => one.Action).Intersect(then.Clear.Select(one => one.Action))];
        Dictionary<string, (Horizon, int)> before = Places(now),
            after = Places(then);
        return [.. both.Where(action => before[action] != after[action])];

        Dictionary<string, (Horizon, int)> Places(AreaAdvice area) =>
            area
                .Clear.Where(one => both.Contains(one.Action))
                .GroupBy(one => one.Horizon)
                .SelectMany(group => group.Select((one, at) => (one.Action, Place: (group.Key, at))))
                .ToDictionary(one => one.Action, one => one.Place, StringComparer.Ordinal);
    }

    private static IEnumerable<string> ActionsOf(AreaAdvice area) =>
        area
            .Clear.Select(one => one.Action)
            .Concat(area.Waiting.Select(one => one.Action))
            .Concat(area.Barred.Select(one => one.Action))
            .Concat(area.NotAdvised.Select(one => one.Action));

    private static (Horizon, int)? PlaceOf(AreaAdvice area, string action) =>
        area.Clear.FirstOrDefault(one => one.Action == action) is { } clear ? (clear.Horizon, clear.Rank) : null;

    private static Dictionary<string, (RuleStand Stand, Reason Reason)> RulesOf(AreaAdvice area) =>
        area.AllConclusions()
            .Where(reason => reason.Then is not Consequence.Caution)
            .GroupBy(reason => reason.Judgement, StringComparer.Ordinal)
            .ToDictionary(
                rule => rule.Key,
                rule =>
                    rule.FirstOrDefault(reason => reason.IsCertain) is { } sure
                        ? (RuleStand.Yes, sure)
                        : (RuleStand.Perhaps, rule.First()),
                StringComparer.Ordinal
            );

    private static (decimal Usd, decimal Hours) CostOf(Names names, AreaAdvice area)
    {
        AdvisedCost[] best =
        [
            .. WorkLine
                .Of(area.Clear)
                .Select(line => line.Best)
                .Where(one => one.Horizon <= Horizon.ThisWeek && !one.LacksTool)
                .Select(one => names.Cost(one.Action, area.Reading))
                .OfType<AdvisedCost>(),
        ];
        return (best.Sum(one => one.UsdPerUnit ?? 0), best.Sum(one => one.HoursPerUnit));
    }
}
