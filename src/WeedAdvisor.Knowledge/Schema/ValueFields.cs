using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>
/// Which fields of a kind of record are values, each of which says where it comes from; whose rows say it themselves;
/// and which are words of ours, that name, order or link and that no source could confirm. The one place that decides
/// it.
/// </summary>
/// <param name="Values">Fields that have an entry under <c>from</c>.</param>
/// <param name="Rows">Fields whose rows, or whose map, carry a <c>source</c> of their own.</param>
/// <param name="Words">Words of ours.</param>
public sealed record ValueFields(
    ImmutableArray<string> Values,
    ImmutableArray<string> Rows,
    ImmutableArray<string> Words
)
{
    /// <summary>
    /// Values that decide whether anybody may use it at all, how much of it, and who may go in afterwards: one that
    /// is from memory says what was looked through for it.
    /// </summary>
    public ImmutableArray<string> Gates { get; init; } = [];

    /// <summary>Of a weed.</summary>
    internal static ValueFields Weed { get; } =
        new(
            [
                "kind",
                "life-cycle",
                "emergence",
                "base-temperature-c",
                "frost",
                "growth-floor-c",
                "weeks-to-first-seed",
                "seeds-per-plant",
                "seed-life-years",
                "spreads-by",
                "spread-distance-m",
                "favoured-by",
                "places",
                "commonest-in",
                "common-in",
                "needs-light",
                "underground",
                "lives-by",
                "features",
                "look-alikes",
                "identify",
                "control",
            ],
            [],
            ["id", "name", "unnamed", "also-called", "scientific", "rated-as"]
        );

    /// <summary>Of a crop.</summary>
    internal static ValueFields Crop { get; } = new(["traits", "notes"], [], ["id", "name", "is-a"]);

    /// <summary>Of a practice.</summary>
    internal static ValueFields Practice { get; } =
        new(
            [
                "what",
                "what-on",
                "places",
                "stock-stages",
                "needs-equipment",
                "works-on",
                "enclosed-ok",
                "entry",
                "cautions",
                "not-where",
            ],
            ["cost", "cost-on", "effects"],
            ["id", "name", "brief", "when", "possible", "one-of", "kind", "tags"]
        );

    /// <summary>Of an active.</summary>
    internal static ValueFields Active { get; } =
        new(
            ["group", "was", "was-number", "site-of-action", "volatile", "root-inhibitor", "water-hazard"],
            ["half-lives"],
            ["id", "name", "also-called", "checked"]
        );

    /// <summary>Of an active that may not be used any more.</summary>
    internal static ValueFields Withdrawn { get; } =
        new(["countries", "since", "bag"], [], ["id", "active", "formerly", "checked"]);

    /// <summary>Of a treatment.</summary>
    internal static ValueFields Treatment { get; } =
        new(
            [
                "what",
                "shares-percent",
                "formulation",
                "role",
                "acts-on",
                "applied",
                "reaches-crop",
                "places",
                "allowed-under",
                "enclosed-use",
                "stock-stages",
                "crops-tolerant",
                "crops-hurt",
                "edible-ok",
                "organic-ok",
                "wait-after-potting-days",
                "wait-bare-root-days",
                "days-before-covering",
                "not-at",
                "water-in-mm",
                "water-in-within-days",
                "rain-free-hours",
                "not-above-c",
                "not-below-c",
                "wants",
                "dry-leaves",
                "residual-weeks",
                "repeat-after-days",
                "uses-per-year",
                "yearly-limit-kg-ai-ha",
                "strength",
                "volatile",
                "root-inhibitor",
                "water-hazard",
                "drift-hazard",
                "rei-hours",
                "signal-word",
                "protective-equipment",
                "needs-equipment",
                "restricted-use",
                "status",
                "cautions",
            ],
            ["rates", "ratings", "cost"],
            ["id", "name", "when", "actives", "checked"]
        )
        {
            Gates =
            [
                "restricted-use",
                "rei-hours",
                "edible-ok",
                "organic-ok",
                "status",
                "uses-per-year",
                "yearly-limit-kg-ai-ha",
            ],
        };

    /// <summary>Of a region.</summary>
    internal static ValueFields Region { get; } =
        new(
            ["emergence-zone", "months-of", "time-zone", "mean-temperature-c", "last-frost", "first-frost"],
            [],
            ["id", "name", "country", "units", "hemisphere"]
        );

    /// <summary>
    /// Of a price, a usual number and a parameter of the weeding model: one number, and where it may lie.
    /// </summary>
    internal static ValueFields Number { get; } = new(["value", "range"], [], ["id", "name", "unit", "checked"]);

    /// <summary>Of a working time.</summary>
    internal static ValueFields WorkingTime { get; } = new(["value", "by-pot-width"], [], ["id", "name"]);

    /// <summary>Of a limit of an active.</summary>
    internal static ValueFields ActiveLimit { get; } =
        new(
            ["yearly-limit-kg-ai-ha", "uses-per-year", "interval-days", "per", "form", "unlimited"],
            [],
            ["id", "active", "checked"]
        )
        {
            Gates = ["yearly-limit-kg-ai-ha", "uses-per-year", "interval-days"],
        };

    /// <summary>Of a resistance on record.</summary>
    internal static ValueFields KnownResistance { get; } = new(["groups", "note"], [], ["id", "weed", "checked"]);

    /// <summary>
    /// The table, by type of record. A type that is not in it is one sentence, for which its <c>source</c> speaks.
    /// </summary>
    public static ImmutableArray<KeyValuePair<Type, ValueFields>> ByRecord { get; } =
    [
        KeyValuePair.Create(typeof(Weed), Weed),
        KeyValuePair.Create(typeof(Crop), Crop),
        KeyValuePair.Create(typeof(Practice), Practice),
        KeyValuePair.Create(typeof(ActiveIngredient), Active),
        KeyValuePair.Create(typeof(WithdrawnActive), Withdrawn),
        KeyValuePair.Create(typeof(Treatment), Treatment),
        KeyValuePair.Create(typeof(Region), Region),
        KeyValuePair.Create(typeof(Price), Number),
        KeyValuePair.Create(typeof(UsualNumber), Number),
        KeyValuePair.Create(typeof(WeedingParameter), Number),
        KeyValuePair.Create(typeof(WorkingTime), WorkingTime),
        KeyValuePair.Create(typeof(ActiveLimit), ActiveLimit),
        KeyValuePair.Create(typeof(KnownResistance), KnownResistance),
    ];
}
