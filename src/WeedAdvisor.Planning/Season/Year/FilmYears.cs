using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Dates;

namespace WeedAdvisor.Planning.Season.Year;

/// <summary>
/// When film is on, winter after winter: it goes on on the same day of every year and comes off on the same day. Where
/// the visit found it on, it is taken to go on again at the average first frost.
/// </summary>
internal sealed class FilmYears
{
    // A plan looks one year ahead, two with what comes after.
    private const int Winters = 4;

    private readonly IReadOnlyList<(DateOnly On, DateOnly? Off)> _winters;

    private FilmYears(IReadOnlyList<(DateOnly On, DateOnly? Off)> winters) => _winters = winters;

    /// <summary>The winters of an area.</summary>
    /// <param name="covering">The day it goes on; null when the visit found it on.</param>
    /// <param name="visit">The day of the visit.</param>
    /// <param name="region">The region, for its frosts.</param>
    /// <param name="uncovering">The day it comes off; null for the average last frost.</param>
    public static FilmYears Of(DateOnly? covering, DateOnly visit, Region region, DateOnly? uncovering)
    {
        DateOnly first = covering ?? visit;
        var winters = new List<(DateOnly On, DateOnly? Off)>
        {
            (first, uncovering ?? FrostAfter(region.LastFrost, first)),
        };
        DateOnly? again = covering?.AddYears(1)
            ?? (winters[0].Off is { } off ? FrostAfter(region.FirstFrost, off) : null);
        for (int winter = 1; winter < Winters && again is { } on; winter++, again = on.AddYears(1))
            winters.Add(
                (
                    on,
                    uncovering?.AddYears(winter) is { } stated && stated > on
                        ? stated
                        : FrostAfter(region.LastFrost, on)
                )
            );
        return new FilmYears(winters);
    }

    /// <summary>Whether film is on; a film whose end is not known stays on.</summary>
    public bool IsOn(DateOnly day) =>
        _winters.Any(winter => day >= winter.On && (winter.Off is not { } off || day < off));

    /// <summary>The next day after a day on which it goes on; null when not known.</summary>
    public DateOnly? CoveringAfter(DateOnly day) =>
        _winters.Select(winter => (DateOnly?)winter.On).FirstOrDefault(on => on > day);

    /// <summary>The next day after a day on which it comes off; null when not known.</summary>
    public DateOnly? UncoveringAfter(DateOnly day) =>
        _winters.Select(winter => winter.Off).FirstOrDefault(off => off > day);

    private static DateOnly? FrostAfter(string? monthAndDay, DateOnly day) =>
        monthAndDay is { } frost ? CalendarDays.Next(frost, day) : null;
}
