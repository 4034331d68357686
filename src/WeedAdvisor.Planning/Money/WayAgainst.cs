using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Money;

/// <summary>One way held against today's, for 1000 pots and a year.</summary>
/// <param name="Way">The way.</param>
/// <param name="Budget">What the change brings and takes.</param>
/// <param name="Wage">The wage at which both cost the same; first is the way, second is today's.</param>
/// <param name="PaybackYears">Years until what is bought is earned back; 0 when nothing is bought, null when
/// never.</param>
/// <param name="BreakEvenPots">Pots above which what is bought earns its yearly cost; 0 when nothing is bought, null
/// when never.</param>
/// <param name="Sensitivity">What each uncertain input does to the net change.</param>
public sealed record WayAgainst(
    Way Way,
    PartialBudget Budget,
    BreakEven Wage,
    decimal? PaybackYears,
    decimal? BreakEvenPots,
    Sensitivity Sensitivity
)
{
    private const decimal Thousand = 1000;

    /// <summary>Holds a way against today's.</summary>
    public static WayAgainst Of(WaysCompared compared, Way way)
    {
        Way today = compared.Today;
        var budget = PartialBudget.Between(today.Items, way.Items);
        decimal pots = compared.Case.Pots;
        // What is saved before the tools carry anything, for 1000 pots.
        decimal saved = budget.NetChangeUsd + way.Of(CostKind.Equipment) - today.Of(CostKind.Equipment);
        decimal yearly = way.Tools.Sum(tool => tool.YearlyUsd) - today.Tools.Sum(tool => tool.YearlyUsd);
        return new WayAgainst(
            way,
            budget,
            BreakEvens.Wage(CostAtWage.Of(way.Items), CostAtWage.Of(today.Items)),
            BreakEvens.PaybackYears(Math.Max(0, way.OutlayUsd - today.OutlayUsd), saved * pots / Thousand),
            yearly <= 0 ? 0 : BreakEvens.Area(yearly, saved / Thousand),
            Swings(compared.Case, today.Plan, way.Plan)
        );
    }

    private static Sensitivity Swings(MoneyCase money, WayPlan today, WayPlan plan)
    {
        (UncertainInput Input, Func<Variation, decimal, Variation> Move)[] inputs =
        [
            .. Inputs(money, plan).Where(input => input.Item1.Low < input.Item1.High),
        ];
        return Sensitivity.Of([.. inputs.Select(input => input.Input)], values =>
        {
            var moved = Variation.None with { Action = plan.Parts.LastOrDefault()?.Action.Id };
            for (int i = 0; i < inputs.Length; i++)
            {
                if (values[i] != inputs[i].Input.Base)
                    moved = inputs[i].Move(moved, values[i]);
            }

            return WayCosting.Of(money.Year, today, moved).Value!.Usd
                - WayCosting.Of(money.Year, plan, moved).Value!.Usd;
        });
    }

    private static IEnumerable<(UncertainInput, Func<Variation, decimal, Variation>)> Inputs(
        MoneyCase money,
        WayPlan plan
    )
    {
        yield return (
            new UncertainInput("wage", "usd/h", money.WageUsd * 0.7m, money.WageUsd, money.WageUsd * 1.3m),
            (moved, value) => moved with { WageUsd = value }
        );
        yield return (new UncertainInput("weeds that come up", "% of the usual", 50, 100, 200), (moved, value) =>
            moved with
            {
                Pressure = (double)value / 100,
            }
        );
        yield return (new UncertainInput("time to pull a weed", "% of the usual", 70, 100, 150), (moved, value) =>
            moved with
            {
                PullTime = (double)value / 100,
            }
        );
        if (money.Prices.Find("finished-pot") is { } pot)
        {
            yield return (
                new UncertainInput("what a finished pot brings", "usd", pot.Value * 0.5m, pot.Value, pot.Value * 1.5m),
                (moved, value) => moved with { PotPrice = pot.Value == 0 ? 1 : value / pot.Value }
            );
        }

        if (plan.Parts.LastOrDefault() is not { } part)
            yield break;
        foreach (var input in OfAction(money, part))
            yield return input;
    }

    private static IEnumerable<(UncertainInput, Func<Variation, decimal, Variation>)> OfAction(
        MoneyCase money,
        WayPart part
    )
    {
        CatalogueAction action = part.Action;
        if (Effect(money, action) is { } effect)
            yield return (Input("what it stops", "% of the weeds", effect), (moved, value) =>
                moved with
                {
                    Effect = Place(effect, value),
                }
            );
        if (action is Treatment { ResidualWeeks: { } weeks })
            yield return (Input("how long it lasts", "weeks", weeks), (moved, value) =>
                moved with
                {
                    Residual = Place(weeks, value),
                }
            );
        if (money.CostOf(part).Value is not { } cost)
            yield break;
        Span usd = Each(cost.MaterialsUsd, cost),
            hours = Each(cost.Hours, cost);
        yield return (Input("materials of one use", "usd", usd), (moved, value) =>
            moved with
            {
                Materials = Place(usd, value),
            }
        );
        yield return (Input("work of one use", "h", hours), (moved, value) =>
            moved with
            {
                Labour = Place(hours, value),
            }
        );
        bool isBought = cost.Tool is { } tool
            ? !money.Equipment.Contains(tool)
            : action.NeedsEquipment.Count > 0 && !action.NeedsEquipment.Overlaps(money.Equipment);
        if (isBought && money.Prices.Find("equipment-life") is { Value: var life })
            yield return (
                new UncertainInput("years the tool lasts", "years", Math.Max(1, life / 2), life, life * 1.5m),
                (moved, value) => moved with { ToolLife = value }
            );
    }

    // For 1000 pots.
    private static Span Each(Span ofArea, ActionCost cost) =>
        new(ofArea.Low / cost.Site.Units, ofArea.High / cost.Site.Units);

    // The mean over the weeds with a published figure; null when none has one.
    private static Span? Effect(MoneyCase money, CatalogueAction action)
    {
        Span[] published =
        [
            .. money
                .Year.Weeds.Counted.Select(weed => WayControl.Published(money.Year, action, weed.Weed))
                .OfType<Span>(),
        ];
        return published.Length == 0
            ? null
            : new Span(published.Average(range => range.Low), published.Average(range => range.High));
    }

    private static UncertainInput Input(string name, string unit, Span range) =>
        new(name, unit, range.Low, range.Middle, range.High);

    private static decimal Place(Span range, decimal value) =>
        range.High == range.Low ? 0.5m : (value - range.Low) / (range.High - range.Low);
}
