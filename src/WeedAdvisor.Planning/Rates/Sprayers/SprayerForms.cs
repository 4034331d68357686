namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>How much spray goes on an area.</summary>
internal static class SprayerForms
{
    /// <summary>The group.</summary>
    public static RateGroup Group { get; } =
        new(
            "sprayer",
            "How much spray goes on an area: litres per hectare, gallons per acre",
            [
                TestStrip.Form,
                TestCourse.Form,
                SprayOnArea.Form,
                MinuteWalk.Form,
                NozzleFlow.Form,
                FlowNeeded.Form,
                SpeedOverCourse.Form,
                ChangeOfSpeed.Form,
                ChangeOfPressure.Form,
                Boom.Form,
                Band.Form,
                Boomless.Form,
            ]
        );
}
