using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>Reckons what a way costs in a year, for 1000 pots.</summary>
public static class WayCosting
{
    private const decimal Pots = 1000;

    /// <summary>The way with its cost; refused with the price that is missing.</summary>
    /// <param name="year">The year.</param>
    /// <param name="plan">What is done in it.</param>
    public static Outcome<Way, string> Of(YearCase year, WayPlan plan) => Of(year, plan, Variation.None);

    internal static Outcome<Way, string> Of(YearCase year, WayPlan plan, Variation variation)
    {
        if (plan.SpreadWeeks > 1)
        {
            Outcome<Way, string>[] parts = [.. SpreadRound.PartsOf(plan).Select(part => Of(year, part, variation))];
            return parts.FirstOrDefault(part => !part.IsGood)
                ?? Outcome<Way, string>.Good(SpreadRound.Whole(plan, [.. parts.Select(part => part.Value!)]));
        }

        WeedingPlan weeding = YearWeeding.Of(year, plan, variation);
        WeedingSeason season = WeedingRun.Of(weeding).Value!;
        decimal wage = variation.WageUsd ?? year.WageUsd;
        var items = ImmutableArray.CreateBuilder<CostItem>();
        items.AddRange(Weeding(season, wage));
        var tools = new Dictionary<string, BoughtTool>(StringComparer.Ordinal);
        foreach (WayPart part in plan.Parts)
        {
            Outcome<ActionCost, string> cost = CostOf(year, part);
            if (!cost.IsGood)
                return Outcome<Way, string>.Bad(cost.Refusals);
            items.AddRange(OfPart(year, part, cost.Value, variation));
            if (CalledIn.Missing(year, part) is { } fee)
                return Outcome<Way, string>.Bad($"the price '{fee}' is missing");
            // Who is called in brings his tools.
            if (CalledIn.Is(year, part))
                continue;
            WordSet needed = cost.Value.Tool is { } with ? WordSet.Of(with) : part.Action.NeedsEquipment;
            BoughtTool? tool = Tooling.Of(
                needed,
                year.Reading.Equipment,
                year.Prices,
                variation.ToolLife,
                out string? noPrice
            );
            if (noPrice is not null)
                return Outcome<Way, string>.Bad($"the price '{noPrice}' is missing");
            if (tool is not null)
                tools[tool.Id] = tool;
        }

        items.AddRange(tools.Values.Select(tool => Share(tool, year.Pots)));
        items.AddRange(LostPlants.Items(year, season, variation.PotPrice));
        items.Add(SeedLeft.Item(year, weeding, season, wage));
        return Outcome<Way, string>.Good(new Way(plan, items.ToImmutable(), season, [.. tools.Values]));
    }

    /// <summary>
    /// What one use of a treatment costs, US dollars for 1000 pots, tools that have to be bought left aside; null when
    /// a price is missing.
    /// </summary>
    public static decimal? UsdOfUse(YearCase year, Treatment treatment)
    {
        var once = new WayPart(treatment, [0]);
        return CostOf(year, once).Value is { } cost
            ? OfPart(year, once, cost, Variation.None).Sum(item => item.Usd)
            : null;
    }

    /// <summary>
    /// What one use of a treatment spends on what is bought, US dollars for 1000 pots; 0 when a price is missing.
    /// </summary>
    internal static decimal SpentOfUse(YearCase year, Treatment treatment)
    {
        var once = new WayPart(treatment, [0]);
        return CostOf(year, once).Value is { } cost
            ? OfPart(year, once, cost, Variation.None)
                .Where(item => item.Kind is CostKind.Material or CostKind.Equipment)
                .Sum(item => item.Usd)
            : 0;
    }

    private static IEnumerable<CostItem> Weeding(WeedingSeason season, decimal wage)
    {
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
        )
        {
            IsOfWeeds = true,
        };
        yield return new CostItem(
            "weeding-materials",
            "Bags and gloves for weeding",
            CostKind.Material,
            Rounded(season.MaterialsUsd),
            0,
            Text($"{rounds + 1} times ${season.MaterialsUsdPerRound:0.##}")
        );
    }

    /// <summary>What one use of a part of a way costs the whole area; refused with what is missing.</summary>
    /// <param name="year">The year.</param>
    /// <param name="part">The part.</param>
    public static Outcome<ActionCost, string> CostOf(YearCase year, WayPart part) =>
        ActionCost.Of(
            part.Action,
            year.Costed,
            year.Prices,
            year.Reading.Equipment,
            part.IsByBoom ? ApplicationTools.Boom : null
        );

    private static IEnumerable<CostItem> OfPart(YearCase year, WayPart part, ActionCost cost, Variation variation) =>
        Part(year, part, cost, variation).Select(item => item with { Action = part.Action.Id });

    // What a part costs in a year for 1000 pots: each use costs the area what it costs on every page.
    private static IEnumerable<CostItem> Part(YearCase year, WayPart part, ActionCost cost, Variation variation)
    {
        CatalogueAction action = part.Action;
        decimal thousands = cost.Site.Units;
        decimal wage = variation.WageUsd ?? year.WageUsd;
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
        if (CalledIn.Item(year, part) is { } visit)
            yield return visit;
        if (action is Treatment { ReachesCrop: true } && LostPlants.PotUsd(year) is { } pot)
            yield return Hurt(year, part, pot * variation.PotPrice);
    }

    // Even a tolerant crop loses a few plants to what goes over it.
    private static CostItem Hurt(YearCase year, WayPart part, decimal potUsd)
    {
        decimal plants = part.Times * Pots * year.Usual[UsualIds.PlantsHurt] / 10_000;
        return new CostItem(
            $"hurt-{part.Action.Id}",
            $"{part.Action.Name}: plants hurt",
            CostKind.LostReturn,
            plants * potUsd,
            0,
            Text($"{plants:0.##} plants x ${potUsd:0.##} (assumed)")
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

    private static decimal Rounded(double value) => Math.Round((decimal)value, 6);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
