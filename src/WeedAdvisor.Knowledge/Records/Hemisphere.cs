namespace WeedAdvisor.Knowledge.Records;

/// <summary>Which half of the earth a place lies in, and so in which months its seasons fall.</summary>
public enum Hemisphere
{
    /// <summary>Summer falls in June, July and August.</summary>
    North,

    /// <summary>Summer falls in December, January and February.</summary>
    South,
}

/// <summary>
/// The one place where months of the calendar become months of the season. Records name months as they are in the
/// north; rules name none (<see cref="Climate"/>).
/// </summary>
public static class SeasonMonths
{
    private const int MonthsInYear = 12;

    /// <summary>The words of a knowledge file for it.</summary>
    public const string Words = "words:north|south";

    /// <summary>Where a region lies; in the north where nobody says the region.</summary>
    public static Hemisphere HemisphereOrNorth(this Region? region) => region?.Hemisphere ?? Hemisphere.North;

    /// <summary>The month of the north, 1 to 12, whose season a month of the calendar has here.</summary>
    /// <param name="hemisphere">Where the place lies.</param>
    /// <param name="month">The month of the calendar, 1 to 12.</param>
    public static int NorthernMonth(this Hemisphere hemisphere, int month) =>
        hemisphere == Hemisphere.North ? month : ((month + MonthsInYear / 2 - 1) % MonthsInYear) + 1;
}
