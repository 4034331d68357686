using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Entry;

/// <summary>
/// The applications that keep people out of an area on the day of the visit: its own, and those of other areas under
/// the same roof that closed the whole house. A use on the day of the visit counts as before it.
/// </summary>
public static class Closures
{
    /// <summary>The closures of the area, those that last longest first.</summary>
    public static ImmutableArray<Closure> Of(AreaCase area, KnowledgeBase knowledge) =>
        [
            .. OfArea(area, area.Area, null, knowledge)
                .Concat(
                    area.Others.SelectMany(other =>
                        OfArea(area, other, Roof.Of(area.Area, other, knowledge), knowledge)
                    )
                )
                .Concat(Untold(area, area.Area, null, knowledge))
                .Concat(
                    area.Others.SelectMany(other =>
                        Untold(area, other, Roof.Of(area.Area, other, knowledge), knowledge)
                    )
                )
                .OrderByDescending(closure => closure.HoursLeft ?? decimal.MaxValue)
                .ThenByDescending(closure => closure.IsHere)
                .ThenBy(closure => closure.Name, StringComparer.Ordinal),
        ];

    // Something was put on lately, and it is not among the earlier uses. One of an unknown day may be it, and may be
    // old: it answers only where it closes the area itself, on whatever day it was.
    private static bool IsUntold(VisitArea area, DateOnly date, bool isHere, KnowledgeBase knowledge) =>
        PutOnLately.SaysYes(area, date)
        && !(area.Past ?? []).Any(use =>
            use.Date is { } day
                ? day >= date.AddDays(-PutOnLately.Days)
                : isHere || EntryInterval.Of(use, knowledge).ClosesHouse
        );

    private static IEnumerable<Closure> OfArea(AreaCase area, VisitArea treated, Roof? roof, KnowledgeBase knowledge)
    {
        if (roof is { Shared: Truth.No })
            yield break;
        ImmutableArray<PastApplication> uses = treated.Past ?? [];
        ILookup<DateOnly?, PastApplication> byDay = uses.ToLookup(use => use.Date);
        EntryClock clock = EntryClock.Of(Zone(area.Area, knowledge));
        bool isOpen = Roof.IsOpen(treated, knowledge);
        foreach (PastApplication use in uses)
        {
            EntryInterval interval = Together(use, byDay[use.Date], knowledge);
            if (roof is not null && !interval.ClosesHouse)
                continue;
            string name = Name(use, roof is null ? null : treated, knowledge) + Assumed(use, knowledge);
            if (use.Date is not { } day)
            {
                yield return new Closure(
                    use,
                    name,
                    roof is null,
                    Truth.NotKnown,
                    [Need.Question(QuestionIds.Past), .. roof?.Needs ?? []],
                    null,
                    false
                );
                continue;
            }

            DateTime end = EntryClock.EndOf(day, use.Hour);
            DateTime over = clock.After(end, interval.Hours);
            DateTime aired =
                interval.AskedToAir && !isOpen ? clock.After(end, knowledge.Usual[UsualIds.HoursUnaired]) : over;
            decimal left = HoursFrom(area.Date, over > aired ? over : aired);
            decimal most = HoursFrom(area.Date, clock.After(end, interval.MostHours));
            if (left > 0)
            {
                yield return new Closure(
                    use,
                    name,
                    roof is null,
                    roof?.Shared ?? Truth.Yes,
                    roof?.Needs ?? [],
                    left,
                    aired > over
                );
            }
            else if (most > 0)
            {
                yield return new Closure(
                    use,
                    name,
                    roof is null,
                    Truth.NotKnown,
                    [Need.Question(QuestionIds.Past), .. roof?.Needs ?? []],
                    most,
                    false
                );
            }
        }
    }

    // Uses of one day are one application unless each has an hour of its own.
    private static EntryInterval Together(
        PastApplication use,
        IEnumerable<PastApplication> ofThatDay,
        KnowledgeBase knowledge
    ) =>
        ofThatDay
            .Where(other => other.Hour == use.Hour || other.Hour is null || use.Hour is null)
            .Select(other => EntryInterval.Of(other, knowledge))
            .Aggregate(EntryInterval.Of(use, knowledge), (longest, next) => longest.Together(next));

    private static IEnumerable<Closure> Untold(AreaCase area, VisitArea treated, Roof? roof, KnowledgeBase knowledge)
    {
        if (!IsUntold(treated, area.Date, roof is null, knowledge) || roof is { Shared: Truth.No })
            yield break;
        var unnamed = new PastApplication(null, null, null, WordSet.Empty);
        string said = roof is null
            ? "Something was put on here lately (in a house: anywhere in it)"
            : $"Something was put on under the same roof ({treated.Name}) lately";
        yield return new Closure(
            unnamed,
            said,
            roof is null,
            Truth.NotKnown,
            [Need.Question(QuestionIds.Past), .. roof?.Needs ?? []],
            null,
            false
        );
    }

    private static decimal HoursFrom(DateOnly day, DateTime end) =>
        (decimal)(end - day.ToDateTime(TimeOnly.MinValue)).TotalHours;

    // What is taken for the interval is said to be taken, and what would be known.
    private static string Assumed(PastApplication use, KnowledgeBase knowledge) =>
        PastProduct.Of(use, knowledge).Record?.ReiHours is not null
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"; how long people stay out is not known, so {EntryInterval.Of(use, knowledge).Hours:0.##} hours "
                    + $"count, and more where its label says more"
            );

    private static string Name(PastApplication use, VisitArea? elsewhere, KnowledgeBase knowledge)
    {
        string product = PastProduct.Of(use, knowledge).Name;
        string when = use.Date is { } day ? $"on {CalendarDay.Text(day)}" : "on a day that is not known";
        string hour = use.Hour is { } at ? $" until {at.ToString("HH:mm", CultureInfo.InvariantCulture)}" : "";
        string where = elsewhere is null ? "here" : $"under the same roof ({elsewhere.Name})";
        return $"{char.ToUpperInvariant(product[0])}{product[1..]} went on {where} {when}{hour}";
    }

    private static string? Zone(VisitArea area, KnowledgeBase knowledge) =>
        area.Answers.GetValueOrDefault(QuestionIds.Region) is Answer.Words { Value.Count: 1 } words
            ? knowledge.Regions.GetValueOrDefault(words.Value.First())?.TimeZone
            : null;
}
