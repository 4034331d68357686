using WeedAdvisor.Planning.Rates.Products.Treatments;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>How much product gives a rate, and back.</summary>
internal static class ProductForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new(
            "product",
            "How much product gives a rate of active ingredient, on an area, in a pot, in water",
            [
                FromActive.Form,
                ToActive.Form,
                Premix.Form,
                AcidEquivalent.Form,
                Solution.Form,
                OnArea.Form,
                PerPot.Form,
                Conversion.Form,
                TreatmentRate.Form,
            ]
        );
}
