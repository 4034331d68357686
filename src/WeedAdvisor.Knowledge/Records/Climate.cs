namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// What rules may say of the time of the year: its season, and how warm the month is at the place. Months are nowhere
/// named in rules, since March is spring in one place, autumn in another and summer-warm in a third.
/// </summary>
public static class Climate
{
    /// <summary>The words for a season in a rule.</summary>
    public const string Seasons = "words:winter|spring|summer|autumn";

    private const int MonthsInYear = 12;

    /// <summary>The season by the sun: winter is December to February in the north.</summary>
    /// <param name="hemisphere">Where the place lies.</param>
    /// <param name="month">The month of the calendar, 1 to 12.</param>
    public static string SeasonOf(this Hemisphere hemisphere, int month) =>
        hemisphere.NorthernMonth(month) switch
        {
            12 or 1 or 2 => "winter",
            3 or 4 or 5 => "spring",
            6 or 7 or 8 => "summer",
            _ => "autumn",
        };

    /// <summary>The mean temperature of a month at the place, degrees Celsius.</summary>
    public static decimal MeanC(this Region region, int month) => region.MeanTemperatureC[month - 1];

    /// <summary>Whether the year grows warmer there: the month after is warmer than the month before.</summary>
    public static bool IsWarming(this Region region, int month) =>
        region.MeanC(month % MonthsInYear + 1) > region.MeanC((month + MonthsInYear - 2) % MonthsInYear + 1);
}
