using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>What one use of a treatment costs: product by dose and price, work by the tool.</summary>
internal static class TreatmentCost
{
    /// <summary>The cost; refused with what is missing.</summary>
    public static Outcome<ActionCost, string> Of(
        Treatment treatment,
        CostSite site,
        PriceBook prices,
        WordSet equipment,
        string? tool
    )
    {
        // What the record says of the work is more than a tool could tell: washing, drenching.
        if (treatment.Cost is { LabourHours: not null } washed)
        {
            Outcome<CostLine, string> work = RecordCost.Work(OnGround(washed), site, prices.Knowledge);
            return work.IsGood
                ? With(treatment, site, prices, null, [work.Value])
                : Outcome<ActionCost, string>.Bad(work.Refusals);
        }

        Outcome<ApplicationWork, string> chosen = ApplicationTools.Choose(
            treatment,
            site,
            prices.Knowledge,
            equipment,
            tool
        );
        return chosen.IsGood
            ? With(treatment, site, prices, chosen.Value.Tool, chosen.Value.Steps)
            : Outcome<ActionCost, string>.Bad(chosen.Refusals);
    }

    private static Outcome<ActionCost, string> With(
        Treatment treatment,
        CostSite site,
        PriceBook prices,
        string? tool,
        ImmutableArray<CostLine> work
    )
    {
        Outcome<ProductCost, string> product = ProductCost.Of(treatment, TreatedGround.Of(site, tool), prices);
        if (product.IsGood)
            return new ActionCost(site, product.Value.Lines, work, tool, product.Value.Pack)
            {
                IsInvented = product.Value.IsInvented || RecordCost.IsInvented(treatment.Cost),
            };
        if (treatment.Cost is not { MaterialsUsd: not null } record)
            return Outcome<ActionCost, string>.Bad(product.Refusals);
        Outcome<CostLine, string> materials = RecordCost.Materials(OnGround(record), site, prices);
        return materials.IsGood
            ? new ActionCost(site, [TreatedGround.Of(site, tool).Of(materials.Value, site)], work, tool)
            {
                IsInvented = RecordCost.IsInvented(record),
            }
            : Outcome<ActionCost, string>.Bad(materials.Refusals);
    }

    private static CostDrivers OnGround(CostDrivers cost) => cost with { GrowsWith = CostGrowth.Ground };
}
