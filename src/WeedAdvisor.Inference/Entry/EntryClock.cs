using NodaTime;

namespace WeedAdvisor.Inference.Entry;

/// <summary>
/// Counts elapsed hours by the clock of a place. Where the zone is not known one hour more is counted.
/// </summary>
internal sealed class EntryClock
{
    private const int HoursForUnknownZone = 1;
    private readonly DateTimeZone? _zone;

    private EntryClock(DateTimeZone? zone) => _zone = zone;

    /// <summary>
    /// A clock of the zone with this name of the IANA database; null or unknown for a place of unknown zone.
    /// </summary>
    public static EntryClock Of(string? zone) =>
        new(zone is null ? null : DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone));

    /// <summary>Whether the zone is one that the clock knows.</summary>
    public static bool Knows(string zone) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone) is not null;

    /// <summary>
    /// The end of an application: its hour, or the end of its day. An hour that the clock shows twice is the later one;
    /// one that it leaves out is the moment after the gap.
    /// </summary>
    public static DateTime EndOf(DateOnly day, TimeOnly? hour) =>
        hour is { } at ? day.ToDateTime(at) : day.AddDays(1).ToDateTime(TimeOnly.MinValue);

    /// <summary>What the clock shows after so many hours have gone by.</summary>
    public DateTime After(DateTime start, decimal hours)
    {
        if (_zone is null)
            return start.AddHours((double)hours + HoursForUnknownZone);
        ZonedDateTime begin = LocalDateTime.FromDateTime(start).InZone(_zone, Later);
        return begin.Plus(Duration.FromMinutes((double)(hours * 60))).LocalDateTime.ToDateTimeUnspecified();
    }

    private static ZonedDateTime Later(NodaTime.TimeZones.ZoneLocalMapping mapping) =>
        mapping.Count switch
        {
            2 => mapping.Last(),
            1 => mapping.Single(),
            _ => mapping.LateInterval.Start.InZone(mapping.Zone),
        };
}
