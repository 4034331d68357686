using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Tests.Limits;

/// <summary>
/// The limits reckoned once more, by hand and day by day, from figures written down here: of the NC State factsheets on
/// prodiamine (1.5 lb ai/acre a year), isoxaben (3 lb; 60 days), oryzalin (90 days), flumioxazin granules (0.75 lb in
/// two uses), simazine (Colorado fact sheet: 4 lb, once), oxyfluorfen (Neal 2005: three uses; PNW handbook: 2 lb a year
/// as spray), of a US prodiamine label (60 days between split doses), and from memory: dimethenamid-P 3 lb and 35 days,
/// oryzalin 4 lb. Of dithiopyr no limit was found: one full use, 0.5 lb, and then its label is asked.
/// </summary>
internal static class LimitsByHand
{
    // 1 lb/acre = 0.45359237 kg / 0.40468564224 ha (NIST Handbook 44, Appendix C); limits stand rounded to 0.01 kg/ha.
    private const double KgHa = 0.45359237 / 0.40468564224,
        Rounding = 0.005;
    private const int UsualDays = 56;
    private const double FullUseOfDithiopyr = 0.5;

    private static readonly Dictionary<string, (double? Kg, int? Uses, int? Days)> s_actives = new()
    {
        ["prodiamine"] = (1.68, null, 60),
        ["isoxaben"] = (3.36, null, 60),
        ["dithiopyr"] = (FullUseOfDithiopyr * KgHa, null, null),
        ["oryzalin"] = (4.48, null, 90),
        ["oxyfluorfen"] = (2.24, 3, null),
        ["flumioxazin"] = (0.84, 2, null),
        ["simazine"] = (4.48, 1, null),
        ["dimethenamid-P"] = (3.36, null, 35),
    };

    /// <summary>
    /// Products by record id: pounds of each active on an acre, lowest and highest, and the product's own limits.
    /// </summary>
    public static Dictionary<string, Product> Products { get; } =
        new()
        {
            ["prodiamine-granule"] = new(true, [("prodiamine", 0.75, 1.5)]),
            ["prodiamine-spray"] = new(false, [("prodiamine", 0.65, 1.5)]),
            ["oxyfluorfen-prodiamine-granule"] = new(
                true,
                [("oxyfluorfen", 2, 2), ("prodiamine", 0.75, 0.75)],
                Uses: 2,
                Days: 60
            ),
            ["isoxaben-prodiamine-granule"] = new(true, [("isoxaben", 0.5, 0.5), ("prodiamine", 0.8, 0.8)]),
            ["isoxaben-spray"] = new(false, [("isoxaben", 0.5, 1)], Days: 60),
            ["isoxaben-dithiopyr-granule"] = new(
                true,
                [("isoxaben", 0.75, 0.75), ("dithiopyr", 0.375, 0.375)],
                Uses: 2,
                Kg: 2.52
            ),
            ["oxyfluorfen-oryzalin-granule"] = new(true, [("oxyfluorfen", 2, 2), ("oryzalin", 1, 1)], Uses: 3),
            ["oxyfluorfen-directed-spray"] = new(false, [("oxyfluorfen", 0.5, 2)], Uses: 3),
            ["flumioxazin-granule"] = new(true, [("flumioxazin", 0.375, 0.375)], Uses: 2),
            ["oryzalin-spray"] = new(false, [("oryzalin", 2, 4)], Days: 90),
            ["simazine-spray"] = new(false, [("simazine", 1.5, 4)], Uses: 1),
            ["dimethenamid-p-spray"] = new(false, [("dimethenamid-P", 0.98, 1.5)], Days: 35),
        };

    /// <summary>Whether one more use on a day would break a limit: yes, not known, no.</summary>
    public static Truth Breaks(string id, IReadOnlyCollection<PastApplication> past, DateOnly day)
    {
        Product product = Products[id];
        PastApplication[] before = [.. past.Where(use => use.Date is null || use.Date <= day)];
        Truth breaks = Truth.No;
        foreach ((string active, double low, _) in product.Actives)
        {
            (double? kg, int? uses, _) = s_actives[active];
            PastApplication[] holding = [.. before.Where(use => Products[use.Treatment!].Holds(active))];
            bool countsSprays = active == "oxyfluorfen";
            if (kg is { } most && !(countsSprays && product.IsGranule))
            {
                Truth tooMuch = TooMuch(
                    [.. holding.Where(use => !countsSprays || !Products[use.Treatment!].IsGranule)],
                    active,
                    low,
                    most,
                    day
                );
                // What stands in for a limit that nobody found breaks nothing for sure.
                bool standsIn = active == "dithiopyr";
                breaks = Worse(breaks, standsIn && tooMuch == Truth.Yes ? Truth.NotKnown : tooMuch);
            }

            if (uses is { } often)
                breaks = Worse(breaks, TooMany(holding, often, day));
        }

        PastApplication[] own = [.. before.Where(use => use.Treatment == id)];
        if (product.Uses is { } times)
            breaks = Worse(breaks, TooMany(own, times, day));
        if (product.Kg is { } all)
            breaks = Worse(breaks, TooMuch(own, null, product.Actives.Sum(one => one.Low), all, day));
        foreach (PastApplication use in before)
            breaks = Worse(breaks, TooSoon(product, use, day));
        return breaks;
    }

    /// <summary>The first day, from one on, on which no limit is broken for sure.</summary>
    public static DateOnly FirstDay(string id, IReadOnlyCollection<PastApplication> past, DateOnly from) =>
        Enumerable
            .Range(0, 800)
            .Select(from.AddDays)
            .First(day => Breaks(id, [.. past.Where(use => use.Date is null || use.Date <= from)], day) != Truth.Yes);

    private static Truth TooMany(PastApplication[] uses, int most, DateOnly day)
    {
        int sure = 0,
            may = 0;
        for (DateOnly one = day.AddDays(-370); one <= day; one = one.AddDays(1))
        {
            if (IsWithinAYear(one, day) && uses.Any(use => use.Date == one))
                sure++;
        }

        may = sure + uses.Count(use => use.Date is null);
        return sure >= most ? Truth.Yes
            : may >= most ? Truth.NotKnown
            : Truth.No;
    }

    private static Truth TooMuch(PastApplication[] uses, string? active, double now, double most, DateOnly day)
    {
        double least = now * KgHa,
            all = now * KgHa;
        foreach (PastApplication use in uses)
        {
            if (use.Date is { } date && !IsWithinAYear(date, day))
                continue;
            (double low, double high) = Products[use.Treatment!].Brings(active);
            // Granules of 0.5 percent: the only ones here whose rate is told.
            if (use.Rate is { } pounds)
                low = high = (double)pounds * 0.005;
            least += use.Date is null ? 0 : low * KgHa;
            all += high * KgHa;
        }

        return uses.Length > 0 && least > most + Rounding + 1e-9 ? Truth.Yes
            : uses.Length > 0 && all > most + Rounding + 1e-9 ? Truth.NotKnown
            : Truth.No;
    }

    private static Truth TooSoon(Product product, PastApplication use, DateOnly day)
    {
        Product other = Products[use.Treatment!];
        string[] shared = [.. product.Actives.Select(one => one.Name).Where(other.Holds)];
        if (shared.Length == 0)
            return Truth.No;
        int? days = shared.Select(active => s_actives[active].Days).Append(product.Days).Append(other.Days).Max();
        if (use.Date is not { } date)
            return Truth.NotKnown;
        int since = day.DayNumber - date.DayNumber;
        return days is { } known
            ? since < known
                ? Truth.Yes
                : Truth.No
            : since < UsualDays
                ? Truth.NotKnown
                : Truth.No;
    }

    // A use counts until the same day of the next year, which a leap day reaches with the first of March.
    private static bool IsWithinAYear(DateOnly used, DateOnly day) =>
        used <= day && (day.Year, day.Month, day.Day).CompareTo((used.Year + 1, used.Month, used.Day)) < 0;

    private static Truth Worse(Truth one, Truth other) => one > other ? one : other;

    /// <summary>A product.</summary>
    public sealed record Product(
        bool IsGranule,
        (string Name, double Low, double High)[] Actives,
        int? Uses = null,
        int? Days = null,
        double? Kg = null
    )
    {
        /// <summary>Whether it holds an active.</summary>
        public bool Holds(string active) => Actives.Any(one => one.Name == active);

        /// <summary>Pounds on an acre of one active, or of all.</summary>
        public (double Low, double High) Brings(string? active) =>
            (
                Actives.Where(one => active is null || one.Name == active).Sum(one => one.Low),
                Actives.Where(one => active is null || one.Name == active).Sum(one => one.High)
            );
    }
}
