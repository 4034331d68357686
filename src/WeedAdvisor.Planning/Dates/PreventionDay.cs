using System.Globalization;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Dates;

/// <summary>
/// The last day on which a treatment that stops seed still lies there before the first weed to come that it is rated
/// good or fair on: the day before the month in which that weed begins to come up, by the months of its record. What
/// comes up already presses at once.
/// </summary>
/// <param name="Latest">The last day; the day of the visit where a weed comes up in this month.</param>
/// <param name="Because">Which weed, and from when.</param>
internal sealed record PreventionDay(DateOnly Latest, string Because)
{
    private const string Germinating = "germinating";
    private const int MonthsInYear = 12;

    /// <summary>The day of a treatment; null where it stops no seed, and where no weed to come sets one.</summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="reading">The area.</param>
    /// <param name="visit">The day of the visit.</param>
    /// <param name="knowledge">The records that the area names.</param>
    public static PreventionDay? Of(Treatment treatment, AreaReading reading, DateOnly visit, KnowledgeBase knowledge)
    {
        if (!treatment.ActsOn.Contains(Germinating) || reading.EmergenceZone is not { } zone)
            return null;
        int month = reading.Region.HemisphereOrNorth().NorthernMonth(visit.Month);
        return reading
            .Coming.Weeds.Where(coming => !coming.BlowsIn)
            .Select(coming => knowledge.Weeds.GetValueOrDefault(coming.Weed))
            .OfType<Weed>()
            .Where(weed => TreatmentControl.GradeOf(treatment, weed, knowledge) is "good" or "fair")
            .Select(weed => (Weed: weed, Months: MonthsUntil(weed, zone, month)))
            .Where(one => one.Months is not null)
            .OrderBy(one => one.Months)
            .ThenBy(one => one.Weed.Name, StringComparer.Ordinal)
            .Select(one => Of(one.Weed, one.Months!.Value, visit))
            .FirstOrDefault();
    }

    private static PreventionDay Of(Weed weed, int months, DateOnly visit)
    {
        if (months == 0)
            return new PreventionDay(visit, $"{weed.Name} comes up now, and what is up it does not stop");
        DateOnly first = new DateOnly(visit.Year, visit.Month, 1).AddMonths(months);
        string month = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(first.Month);
        return new PreventionDay(
            first.AddDays(-1),
            $"{weed.Name} comes up from {month} on, and what is up it does not stop"
        );
    }

    private static int? MonthsUntil(Weed weed, string zone, int month) =>
        weed.Emergence.TryGetValue(zone, out var months)
            ? Enumerable
                .Range(0, MonthsInYear)
                .Where(ahead => months.Contains((month - 1 + ahead) % MonthsInYear + 1))
                .Select(ahead => (int?)ahead)
                .FirstOrDefault()
            : null;
}
