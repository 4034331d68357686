namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>How much granule goes on an area.</summary>
internal static class SpreaderForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new(
            "spreader",
            "How much granule goes on an area: pounds per acre, grams per square metre",
            [
                WeighedSpreader.Form,
                Tarp.Form,
                SpreaderCourse.Form,
                SpreaderSwath.Form,
                CrossingPasses.Form,
                CompareRates.Form,
                WalkingPace.Form,
            ]
        );
}
