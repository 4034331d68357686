namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>How large an area is and what stands on it.</summary>
internal static class AreaForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new(
            "area",
            "How large an area is, how many pots stand on it, and how much lands between them",
            [GroundArea.Form, BedArea.Form, PotsOnArea.Form, MissedPots.Form, PotSurface.Form]
        );
}
