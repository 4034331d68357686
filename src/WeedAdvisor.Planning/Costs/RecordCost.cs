using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>
/// What a use costs by its record: figures for 1000 pots of the usual width and spacing, or for 100 m² without pots,
/// and what they grow with.
/// </summary>
internal static class RecordCost
{
    private const decimal SecondsInHour = 3600;
    private const decimal CmInM = 100;
    private const decimal SquareCmInSquareM = 10_000;

    /// <summary>The cost of a practice.</summary>
    public static Outcome<ActionCost, string> Of(CatalogueAction action, CostSite site, PriceBook prices)
    {
        if (action.CostOn(site.Ground) is not { } cost)
            return $"the record of '{action.Id}' has no cost, and no price for it was given";
        Outcome<CostLine, string> materials = Materials(cost, site, prices);
        if (!materials.IsGood)
            return Outcome<ActionCost, string>.Bad(materials.Refusals);
        Outcome<CostLine, string> work = Work(cost, site, prices.Knowledge);
        return work.IsGood
            ? new ActionCost(site, [materials.Value], [work.Value]) { IsInvented = IsInvented(cost) }
            : Outcome<ActionCost, string>.Bad(work.Refusals);
    }

    /// <summary>The grower's own price of one use.</summary>
    public static CostLine OwnPrice(Price own, CostSite site) =>
        new(
            "materials",
            "Materials",
            Exactly(own.Value * site.Units),
            string.Create(
                CultureInfo.InvariantCulture,
                $"your price for one use, ${own.Value:0.##} x {site.Units:#,0.###}"
            )
        );

    /// <summary>Materials by the record's figure, or by the depth that is laid.</summary>
    public static Outcome<CostLine, string> Materials(CostDrivers cost, CostSite site, PriceBook prices)
    {
        if (cost.DepthCm is { } depth)
            return Layer(cost, depth, site, prices);
        if (cost.MaterialsUsd is not { } usd)
            return new CostLine("materials", "Materials", Exactly(0), "none");
        (decimal factor, string grown) = Factor(cost.GrowsWith, site, prices.Knowledge.Usual);
        if (cost.Price is { } id && prices.Knowledge.Prices.GetValueOrDefault(id) is { Value: > 0 } shipped)
        {
            Price now = prices.Find(id)!;
            Span amount = usd.Times(factor / shipped.Value);
            return new CostLine(
                "materials",
                now.Name,
                amount.Times(now.Value),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{amount.Middle:#,0.##} {UnitOf(now)} at ${now.Value:0.##}{Whose(id, prices)}{grown}"
                )
            );
        }

        return new CostLine(
            "materials",
            "Materials",
            usd.Times(factor),
            string.Create(CultureInfo.InvariantCulture, $"${usd.Low:0.##} to ${usd.High:0.##} by the record{grown}")
        );
    }

    /// <summary>How a figure of a record grows to the site, and that in words.</summary>
    public static (decimal Factor, string Words) Factor(CostGrowth growth, CostSite site, UsualNumbers usual)
    {
        if (site.Block is not { } block || growth == CostGrowth.Nothing)
            return (1, "");
        decimal width = usual[UsualIds.PotWidth],
            apart = usual[UsualIds.SpacedPots];
        (decimal each, string why) = growth switch
        {
            CostGrowth.Surface => (
                block.WidthCm.Value * block.WidthCm.Value / (width * width),
                "surface of the mix in 1000 usual pots"
            ),
            CostGrowth.Ground => (
                block.ApartCm.Value * block.ApartCm.Value / (apart * apart),
                "ground of 1000 usual pots"
            ),
            _ => (1m, "1000 pots"),
        };
        decimal factor = site.Units * each;
        return (factor, string.Create(CultureInfo.InvariantCulture, $" for {why}, x {factor:#,0.###}"));
    }

    private static Outcome<CostLine, string> Layer(CostDrivers cost, Span depth, CostSite site, PriceBook prices)
    {
        if (prices.Find(cost.Price!) is not { } price)
            return $"the price '{cost.Price}' is missing";
        decimal surface = site.Block is { } block
            ? block.Pots.Value * block.SurfaceCm2 / SquareCmInSquareM
            : site.GroundM2;
        Span cubicM = depth.Times(surface / CmInM);
        return new CostLine(
            "materials",
            price.Name,
            cubicM.Times(price.Value),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{surface:#,0.##} m² x {depth.Low:0.##} to {depth.High:0.##} cm: {cubicM.Middle:#,0.##} m³ at "
                    + $"${price.Value:0.##}{Whose(price.Id, prices)}"
            )
        );
    }

    /// <summary>Work by the record's figure, or by the time that one pot takes.</summary>
    public static Outcome<CostLine, string> Work(CostDrivers cost, CostSite site, KnowledgeBase knowledge)
    {
        if (cost.Work is { } id && site.Block is { } block)
        {
            if (knowledge.WorkingTimes.GetValueOrDefault(id) is not { } time)
                return $"the working time '{id}' is missing";
            Span seconds = time.At(block.WidthCm.Value);
            return new CostLine(
                "work",
                time.Name,
                seconds.Times(block.Pots.Value / SecondsInHour),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{block.Pots.Value:#,0} pots x {seconds.Low:0.#} to {seconds.High:0.#} s"
                )
            );
        }

        if (cost.LabourHours is not { } hours)
            return "nothing says how long it takes where no pots stand";
        (decimal factor, string grown) = Factor(
            cost.GrowsWith is CostGrowth.Surface or CostGrowth.Weeding ? CostGrowth.Pots : cost.GrowsWith,
            site,
            knowledge.Usual
        );
        decimal size = SizeFactor(cost.GrowsWith, site, knowledge);
        string larger =
            size == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" x {size:0.##} for the size of the pots");
        return new CostLine(
            "work",
            "Work",
            hours.Times(factor * size),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{hours.Low:0.##} to {hours.High:0.##} h by the record{grown}{larger}"
            )
        );
    }

    // Larger pots take longer, as they do to weed or to mulch; where no working times are known, as long.
    private static decimal SizeFactor(CostGrowth growth, CostSite site, KnowledgeBase knowledge)
    {
        string? id = growth switch
        {
            CostGrowth.Weeding => WorkingTimeIds.Weeding,
            CostGrowth.Surface => WorkingTimeIds.Mulching,
            _ => null,
        };
        if (id is null || site.Block is not { } block || knowledge.WorkingTimes.GetValueOrDefault(id) is not { } time)
            return 1;
        return time.At(block.WidthCm.Value).Middle / time.At(knowledge.Usual[UsualIds.PotWidth]).Middle;
    }

    /// <summary>Whether the record's figures are invented.</summary>
    public static bool IsInvented(CostDrivers? cost) => cost is not null && cost.Sources.Contains("invented");

    private static Span Exactly(decimal usd) => new(usd, usd);

    private static string Whose(string id, PriceBook prices) => prices.IsOwn(id) ? ", your price" : "";

    private static string UnitOf(Price price) =>
        price.Unit switch
        {
            "usd-each" => "pieces",
            "usd-per-m3" => "m³",
            "usd-per-m2" => "m²",
            var unit => unit.Replace("usd-per-", "", StringComparison.Ordinal),
        };
}
