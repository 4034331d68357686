using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Why a weed is in the plan.</summary>
public enum WeedOrigin
{
    /// <summary>It was seen at the visit, or is expected from earlier years.</summary>
    Seen,

    /// <summary>It was seen with ripe seed: more of it is to come.</summary>
    Seeding,

    /// <summary>It came through an earlier treatment.</summary>
    CameThrough,

    /// <summary>Weeds seed round about and it flies.</summary>
    BlownIn,
}

/// <summary>A weed of the plan, week by week, for 1000 pots.</summary>
/// <param name="Weed">Its record.</param>
/// <param name="Origin">Why it is in the plan.</param>
/// <param name="Emergence">Seedlings that come up in each week if nothing stops them.</param>
/// <param name="EscapeUsd">What pulling them costs, with all that descends from them, US dollars by week of coming
/// up.</param>
public sealed record WeedPressure(
    Weed Weed,
    WeedOrigin Origin,
    ImmutableArray<double> Emergence,
    ImmutableArray<decimal> EscapeUsd
)
{
    /// <summary>The most weeds that a plan follows.</summary>
    public const int MostWeeds = 12;

    private const string Ripe = "seeding";

    /// <summary>
    /// The weeds of an area through a year, dearest first; refused when the weeding model can't follow one that was
    /// seen.
    /// </summary>
    internal static Outcome<IReadOnlyList<WeedPressure>, string> Of(
        AreaReading area,
        SeasonYear year,
        SeasonBasis basis,
        KnowledgeBase knowledge
    )
    {
        SeasonLabour labour = basis.Labour;
        var found = new List<WeedPressure>();
        foreach ((Weed weed, WeedOrigin origin) in Named(area, knowledge))
        {
            Outcome<WeedTraits, string> traits = WeedTraits.Of(weed, basis.Site, labour.Numbers);
            if (!traits.IsGood)
            {
                if (origin != WeedOrigin.BlownIn)
                    return Outcome<IReadOnlyList<WeedPressure>, string>.Bad(traits.Refusals);
                continue;
            }

            double share = (double)basis.Numbers[ShareOf(origin)] / 100;
            double through = share * (1 - MulchControl.Of(weed, basis.Mulch, labour.Numbers));
            found.Add(Through(weed, origin, traits.Value, through, year, labour));
        }

        return Outcome<IReadOnlyList<WeedPressure>, string>.Good([
            .. found
                .Where(one => one.EscapeUsd.Sum() > 0)
                .OrderBy(one => one.Origin == WeedOrigin.BlownIn)
                .ThenByDescending(one => one.EscapeUsd.Sum())
                .ThenBy(one => one.Weed.Id, StringComparer.Ordinal)
                .Take(MostWeeds),
        ]);
    }

    private static WeedPressure Through(
        Weed weed,
        WeedOrigin origin,
        WeedTraits traits,
        double share,
        SeasonYear year,
        SeasonLabour labour
    )
    {
        int[] weeksOfYear =
        [
            .. Enumerable.Range(0, SeasonYear.Weeks).Select(week => WeedTraits.WeekOf(year.DayOf(week))),
        ];
        double[] each = new double[WeedTraits.WeeksInYear];
        foreach (int week in weeksOfYear.Distinct().Where(week => traits.ExpectedEmergence(week) > 0))
            each[week] = labour.UsdOfOne(traits, week);
        ImmutableArray<double> emergence = [.. weeksOfYear.Select(week => share * traits.ExpectedEmergence(week))];
        return new WeedPressure(
            weed,
            origin,
            emergence,
            [.. emergence.Select((count, week) => (decimal)(count * each[weeksOfYear[week]]))]
        );
    }

    private static string ShareOf(WeedOrigin origin) =>
        origin switch
        {
            WeedOrigin.Seeding => UsualIds.Seeding,
            WeedOrigin.BlownIn => UsualIds.BlownIn,
            _ => UsualIds.Seen,
        };

    private static IEnumerable<(Weed Weed, WeedOrigin Origin)> Named(AreaReading reading, KnowledgeBase knowledge)
    {
        VisitArea area = reading.Area;
        IEnumerable<(string Id, WeedOrigin Origin)> named =
        [
            .. (area.Weeds ?? [])
                .OrderByDescending(seen => seen.Stage == Ripe)
                .Select(seen => (seen.Weed, seen.Stage == Ripe ? WeedOrigin.Seeding : WeedOrigin.Seen)),
            .. (area.Past ?? []).SelectMany(past => past.Escaped).Select(id => (id, WeedOrigin.CameThrough)),
            .. Flying(reading, knowledge).Select(id => (id, WeedOrigin.BlownIn)),
        ];
        return named.DistinctBy(one => one.Id).Select(one => (knowledge.Weeds[one.Id], one.Origin));
    }

    private static IEnumerable<string> Flying(AreaReading area, KnowledgeBase knowledge) =>
        area is { IsSeededInto: true, Place: { } place }
            ? knowledge
                .Weeds.Values.Where(weed => weed.SpreadsBy.Contains("wind") && weed.Places.Contains(place))
                .Select(weed => weed.Id)
            : [];
}
