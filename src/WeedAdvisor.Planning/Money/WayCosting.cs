using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Money;

/// <summary>Reckons what a way costs in a year, for 1000 pots.</summary>
internal static class WayCosting
{
    private const decimal Pots = 1000;

    /// <summary>The way with its cost; refused with the price that is missing.</summary>
    public static Outcome<Way, string> Of(MoneyCase money, WayPlan plan, Variation variation)
    {
        WeedingSeason season = Season(money, plan, variation);
        var items = ImmutableArray.CreateBuilder<CostItem>();
        items.AddRange(Weeding(money, season, variation));
        var tools = new Dictionary<string, BoughtTool>(StringComparer.Ordinal);
        foreach (WayPart part in plan.Parts)
        {
            Outcome<ActionCost, string> cost = money.CostOf(part);
            if (!cost.IsGood)
                return Outcome<Way, string>.Bad(cost.Refusals);
            items.AddRange(Part(money, part, cost.Value, variation));
            WordSet needed = cost.Value.Tool is { } with ? WordSet.Of(with) : part.Action.NeedsEquipment;
            BoughtTool? tool = Tooling.Of(
                needed,
                money.Equipment,
                money.Prices,
                variation.ToolLife,
                out string? noPrice
            );
            if (noPrice is not null)
                return Outcome<Way, string>.Bad($"the price '{noPrice}' is missing");
            if (tool is not null)
                tools[tool.Id] = tool;
        }

        items.AddRange(tools.Values.Select(tool => Share(tool, money.Pots)));
        if (Loss(money, season, variation) is { } loss)
            items.Add(loss);
        return Outcome<Way, string>.Good(new Way(plan, items.ToImmutable(), season, [.. tools.Values]));
    }

    private static WeedingSeason Season(MoneyCase money, WayPlan plan, Variation variation)
    {
        WeedingNumbers numbers = money.Numbers;
        if (variation.PullTime != 1)
            numbers = PullIds.Aggregate(numbers, (all, id) => all.With(id, all[id] * variation.PullTime));
        var setup = new WeedingSetup
        {
            Weeds =
            [
                .. money.Weeds.Select(weed => new SetupWeed(
                    money.Knowledge.Weeds[weed.Weed],
                    weed.Stage,
                    weed.CoverOfAreaPercent,
                    WayControl.Of(money, plan, weed, variation)
                )),
            ],
            Site = money.Site,
            Start = money.Day,
            Weeks = WeedTraits.WeeksInYear,
        };
        WeedingPlan weeding = setup.Plan(numbers, plan.IntervalWeeks).Value!;
        return WeedingRun
            .Of(weeding with { Weeds = [.. weeding.Weeds.Select(weed => Pressed(weed, variation.Pressure))] })
            .Value!;
    }

    private static IEnumerable<string> PullIds =>
        [
            "pull-seconds-under-2-5-cm",
            "pull-seconds-from-2-5-to-5-cm",
            "pull-seconds-from-5-to-10-cm",
            "pull-seconds-from-10-to-20-cm",
            "pull-seconds-over-20-cm",
        ];

    private static PlannedWeed Pressed(PlannedWeed weed, double pressure) =>
        weed with
        {
            Traits = weed.Traits with { SeedlingsPerYear = weed.Traits.SeedlingsPerYear * pressure },
        };

    private static IEnumerable<CostItem> Weeding(MoneyCase money, WeedingSeason season, Variation variation)
    {
        decimal wage = variation.WageUsd ?? money.WageUsd;
        decimal walking = Rounded(season.WalkingHours);
        decimal pulling = Rounded(season.PullingHours);
        int rounds = season.Rounds.Length;
        yield return new CostItem(
            "walking",
            "Walking along the pots",
            CostKind.Labour,
            walking * wage,
            walking,
            Text($"{rounds} rounds and a last clearing, {walking:0.##} h x ${wage:0.##}")
        );
        yield return new CostItem(
            "pulling",
            "Pulling weeds",
            CostKind.Labour,
            pulling * wage,
            pulling,
            Text($"{season.Pulled + season.Standing:#,0} weeds, {pulling:0.##} h x ${wage:0.##}")
        );
        yield return new CostItem(
            "weeding-materials",
            "Bags and gloves for weeding",
            CostKind.Material,
            Rounded(season.MaterialsUsd),
            0,
            Text($"{rounds + 1} times ${season.MaterialsUsdPerRound:0.##}")
        );
    }

    // What a part costs in a year for 1000 pots: each use costs the area what it costs on every page.
    private static IEnumerable<CostItem> Part(MoneyCase money, WayPart part, ActionCost cost, Variation variation)
    {
        CatalogueAction action = part.Action;
        decimal thousands = cost.Site.Units;
        decimal wage = variation.WageUsd ?? money.WageUsd;
        decimal each = variation.At(action.Id, cost.MaterialsUsd, moved => moved.Materials) / thousands;
        decimal hours = variation.At(action.Id, cost.Hours, moved => moved.Labour) / thousands;
        string times = part.Times == 1 ? "once" : Text($"{part.Times} times");
        yield return new CostItem(
            $"materials-{action.Id}",
            $"{action.Name}: materials",
            CostKind.Material,
            part.Times * each,
            0,
            Text($"{times} ${each:0.##} (${each * thousands:#,0.##} for all: {Materials(cost)})")
        );
        yield return new CostItem(
            $"labour-{action.Id}",
            $"{action.Name}: work",
            CostKind.Labour,
            part.Times * hours * wage,
            part.Times * hours,
            Text($"{times} {hours:0.###} h x ${wage:0.##} ({hours * thousands:#,0.##} h for all: {Steps(cost)})")
        );
    }

    private static string Materials(ActionCost cost) =>
        string.Join("; ", cost.Materials.Select(line => Named(line, cost.Materials, line.Working)));

    private static string Steps(ActionCost cost) =>
        cost.Work is [var only]
            ? only.Working
            : string.Join(", ", cost.Work.Select(step => Text($"{step.Id} {step.Amount.Middle:0.##}")));

    private static string Named(CostLine line, ImmutableArray<CostLine> all, string what) =>
        all.Length == 1 ? what : $"{line.Name}, {what}";

    private static CostItem Share(BoughtTool tool, int pots) =>
        new(
            $"equipment-{tool.Id}",
            $"{tool.Name}, bought",
            CostKind.Equipment,
            tool.YearlyUsd * Pots / pots,
            0,
            Text($"{tool.Working}, shared by {pots:#,0} pots")
        );

    private static CostItem? Loss(MoneyCase money, WeedingSeason season, Variation variation)
    {
        if (money.Prices.Find("finished-pot") is not { } pot || money.Prices.Find("unsaleable-share") is not { } share)
            return null;
        double old = CropLoss.OldWeeds(season);
        decimal hurt = Rounded(CropLoss.PotsHurt(old));
        decimal price = pot.Value * variation.PotPrice;
        return new CostItem(
            "lost-plants",
            "Plants that cannot be sold",
            CostKind.LostReturn,
            hurt * Math.Min(100, share.Value) / 100 * price,
            0,
            Text($"{old:#,0} old weeds in {hurt:#,0.#} pots, of which {share.Value:0.##} % x ${price:0.##} (assumed)")
        );
    }

    private static decimal Rounded(double value) => Math.Round((decimal)value, 6);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
