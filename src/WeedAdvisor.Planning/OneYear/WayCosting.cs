using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>Reckons what a way costs in a year, for 1000 pots.</summary>
public static class WayCosting
{
    private const string Boom = "boom-sprayer";
    private const decimal Pots = 1000;

    /// <summary>The way with its cost; refused with the price that is missing.</summary>
    /// <param name="year">The year.</param>
    /// <param name="plan">What is done in it.</param>
    public static Outcome<Way, string> Of(YearCase year, WayPlan plan) => Of(year, plan, Variation.None);

    internal static Outcome<Way, string> Of(YearCase year, WayPlan plan, Variation variation)
    {
        WeedingPlan weeding = YearWeeding.Of(year, plan, variation);
        WeedingSeason season = WeedingRun.Of(weeding).Value!;
        decimal wage = variation.WageUsd ?? year.WageUsd;
        var items = ImmutableArray.CreateBuilder<CostItem>();
        items.AddRange(Weeding(season, wage));
        var tools = new Dictionary<string, BoughtTool>(StringComparer.Ordinal);
        foreach (WayPart part in plan.Parts)
        {
            if (Part(year, part, variation, items) is { } missing)
                return Outcome<Way, string>.Bad(missing);
            WordSet needed = part.IsByBoom ? WordSet.Of(Boom) : part.Action.NeedsEquipment;
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
        items.Add(NextYear.Item(weeding, season, wage));
        return Outcome<Way, string>.Good(new Way(plan, items.ToImmutable(), season, [.. tools.Values]));
    }

    /// <summary>
    /// What one use of a treatment costs, US dollars for 1000 pots, tools that have to be bought left aside; null when a
    /// price is missing.
    /// </summary>
    public static decimal? UsdOfUse(YearCase year, Treatment treatment)
    {
        var items = ImmutableArray.CreateBuilder<CostItem>();
        return Part(year, new WayPart(treatment, [0]), Variation.None, items) is null
            ? items.Sum(item => item.Usd)
            : null;
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

    // The name of what has no price, or null.
    private static string? Part(
        YearCase year,
        WayPart part,
        Variation variation,
        ImmutableArray<CostItem>.Builder items
    )
    {
        CatalogueAction action = part.Action;
        if (action.Cost is not { } cost || year.Prices.MaterialsOf(action) is not { } materials)
            return $"the record of '{action.Id}' has no cost, and no price for it was given";
        decimal hours = variation.At(action.Id, cost.LabourHours, moved => moved.Labour);
        if (part.IsByBoom)
        {
            if (year.Prices.Find("boom-sprayer-labour") is not { } boom)
                return "the price 'boom-sprayer-labour' is missing";
            hours = boom.Value;
        }

        decimal ground = year.Reading.IsTight && IsBroadcast(action) ? TightShare(year) : 1;
        decimal wage = variation.WageUsd ?? year.WageUsd;
        decimal each = variation.At(action.Id, materials.Usd, moved => moved.Materials) * ground;
        string tight = ground == 1 ? "" : Text($", x {ground:0.##} because the pots touch");
        string times = part.Times == 1 ? "once" : Text($"{part.Times} times");
        items.Add(
            new CostItem(
                $"materials-{action.Id}",
                $"{action.Name}: materials",
                CostKind.Material,
                part.Times * each,
                0,
                Text($"{times} ${each:0.##} ({materials.Working}{tight})")
            )
        );
        decimal work = part.Times * hours * ground;
        items.Add(
            new CostItem(
                $"labour-{action.Id}",
                $"{action.Name}: work",
                CostKind.Labour,
                work * wage,
                work,
                Text($"{times} {hours * ground:0.###} h x ${wage:0.##}{(part.IsByBoom ? ", with a boom" : "")}{tight}")
            )
        );
        if (action is Treatment { ReachesCrop: true } && LostPlants.PotUsd(year) is { } pot)
            items.Add(Hurt(year, part, pot * variation.PotPrice));
        return null;
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

    private static bool IsBroadcast(CatalogueAction action) =>
        action is Treatment treatment
        && (treatment.Applied.Contains("granule-over-top") || treatment.Applied.Contains("spray-over-top"));

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

    // The records' figures for what is broadcast hold for pots that are spaced, as lilyturf was where 86 % of the
    // granules were lost (porter-parish-1993). Pots that touch take the ground of their own width.
    private static decimal TightShare(YearCase year)
    {
        decimal width = year.Reading.PotWidthCm.Value,
            apart = year.Usual[UsualIds.SpacedPots];
        return Math.Min(1, width * width / (apart * apart));
    }
}
