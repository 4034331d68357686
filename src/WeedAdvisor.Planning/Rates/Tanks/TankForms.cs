namespace WeedAdvisor.Planning.Rates.Tanks;

/// <summary>What goes into each tank or hopper.</summary>
internal static class TankForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new(
            "tank",
            "What goes into each tank or hopper, in which order, and what is left over",
            [TankLoads.Form, MixingOrder.Form, LeftOver.Form, HopperLoads.Form]
        );
}
