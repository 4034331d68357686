namespace WeedAdvisor.Planning.Rates.Mulches;

/// <summary>How much mulch a layer takes.</summary>
internal static class MulchForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new("mulch", "How much mulch a layer on pots or beds takes", [MulchVolume.Form, MulchDepth.Form]);
}
