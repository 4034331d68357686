namespace WeedAdvisor.Planning.Rates.Uniformity;

/// <summary>How evenly it is spread.</summary>
internal static class UniformityForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new("uniformity", "How evenly spray or granules fall, from pans or pots", [CatchPans.Form]);
}
