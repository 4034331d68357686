using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>The ids of <c>usual.yaml</c>, each with its unit in it. Each stands here once.</summary>
public static class UsualIds
{
    /// <summary>Weeks for which the visit's word on growth and shipping holds.</summary>
    public const string StatedHolds = "stated-holds-weeks";

    /// <summary>When buds break.</summary>
    public const string FlushStarts = "flush-starts-weeks-before-last-frost";

    /// <summary>When the spring flush has hardened.</summary>
    public const string FlushEnds = "flush-ends-weeks-after-last-frost";

    /// <summary>When the spring flush has hardened of what flushes after its bloom.</summary>
    public const string FlushAfterBloomEnds = "flush-after-bloom-ends-weeks-after-last-frost";

    /// <summary>When plants are at rest.</summary>
    public const string RestStarts = "rest-starts-weeks-after-first-frost";

    /// <summary>When newly potted plants are established.</summary>
    public const string Established = "established-weeks-after-potting";

    /// <summary>Daily mean below which a weed does not grow of which nobody said it.</summary>
    public const string GrowthFloor = "growth-floor-c-when-unknown";

    /// <summary>Percent of the weeds of an area from which on a chemical is named as a choice.</summary>
    public const string LeastGain = "least-gain-percent";

    /// <summary>Weeks to its first seed from which on a winter annual rests as a rosette until spring.</summary>
    public const string RosetteWeeks = "rosette-from-weeks";

    /// <summary>The month, as in the north, from which on it rests.</summary>
    public const string RosetteMonth = "rosette-from-month";

    /// <summary>Days within which the first seed of a weed presses its weeding.</summary>
    public const string SeedPresses = "seed-presses-within-days";

    /// <summary>Weeks between two weeding rounds.</summary>
    public const string Rounds = "rounds-weeks";

    /// <summary>Weeks between two uses of an active.</summary>
    public const string UnknownInterval = "interval-weeks-when-unknown";

    /// <summary>Weeks between any two applications.</summary>
    public const string BetweenAny = "weeks-between-any-two";

    /// <summary>Applications a year.</summary>
    public const string MostApplications = "applications-a-year-at-most";

    /// <summary>Control left at the end of the longest published time.</summary>
    public const string ControlLeft = "control-left-percent-at-end-of-residual";

    /// <summary>Plants that an application hurts.</summary>
    public const string PlantsHurt = "plants-hurt-per-10000-each-application";

    /// <summary>Seedlings of a weed that was seen.</summary>
    public const string Seen = "seed-seen-percent-of-base";

    /// <summary>Seedlings of a weed seen with ripe seed.</summary>
    public const string Seeding = "seed-seeding-now-percent-of-base";

    /// <summary>Seedlings of a weed that flies in.</summary>
    public const string BlownIn = "seed-blown-in-percent-of-base";

    /// <summary>Seedlings of a weed that come from places near by where it stands too.</summary>
    public const string FromNearBy = "seed-from-places-near-by-percent";

    /// <summary>Days before a use in which what is up is pulled.</summary>
    public const string CleanUp = "clean-up-days-before-a-use";

    /// <summary>Days after a use from which it is looked at again.</summary>
    public const string LookFrom = "look-again-from-days";

    /// <summary>Days after a use until which it is looked at again.</summary>
    public const string LookTo = "look-again-to-days";

    /// <summary>Pots of an area.</summary>
    public const string Pots = "pots-in-an-area";

    /// <summary>Width of a pot.</summary>
    public const string PotWidth = "pot-width-cm";

    /// <summary>From centre to centre of pots that are spaced.</summary>
    public const string SpacedPots = "spaced-pots-cm-apart";

    /// <summary>Uses a year of what gives neither a number nor an interval.</summary>
    public const string UnknownUses = "uses-a-year-when-unknown";

    /// <summary>Hours that people stay out when neither record nor label of a weed killer says how long.</summary>
    public const string EntryHours = "entry-hours-when-unknown";

    /// <summary>Hours that people stay out when not even the kind of the product is known.</summary>
    public const string EntryHoursOfAnything = "entry-hours-when-the-kind-is-unknown";

    /// <summary>Hours after which a closed house counts as aired.</summary>
    public const string HoursUnaired = "hours-after-which-a-closed-house-is-aired";

    /// <summary>Degrees from which a day is called hot.</summary>
    public const string HotDay = "hot-day-from-c";

    /// <summary>Variation of what pans catch up to which a spread is even.</summary>
    public const string EvenSpread = "even-spread-percent-at-most";

    /// <summary>Variation of what pans catch above which a spread is uneven.</summary>
    public const string UnevenSpread = "uneven-spread-percent-above";

    /// <summary>Weeds taken to come where nobody tells them.</summary>
    public const string WeedsToCome = "weeds-taken-to-come-at-most";

    /// <summary>Weeds taken to blow in besides.</summary>
    public const string WeedsBlownIn = "weeds-taken-to-blow-in-at-most";

    /// <summary>What a young weed has left of its weeks to first seed.</summary>
    public const string LeftWhenYoung = "time-to-seed-left-percent-when-young";

    /// <summary>What a full-grown weed has left of its weeks to first seed.</summary>
    public const string LeftWhenMature = "time-to-seed-left-percent-when-mature";

    /// <summary>Seeds from which a weed that runs below lives by seed too.</summary>
    public const string SeedsThatCount = "seeds-a-plant-that-count-beside-runners";

    /// <summary>Weeks by which weeds come up later than their months say.</summary>
    public const string YearLate = "weeks-that-the-year-is-late";

    /// <summary>How often in a year the ground round about is mown so that nothing flowers.</summary>
    public const string Mowings = "mowings-a-year";

    /// <summary>All of them: a knowledge folder has every one.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        StatedHolds,
        FlushStarts,
        FlushEnds,
        FlushAfterBloomEnds,
        RestStarts,
        Established,
        Rounds,
        UnknownInterval,
        BetweenAny,
        MostApplications,
        ControlLeft,
        PlantsHurt,
        Seen,
        Seeding,
        BlownIn,
        FromNearBy,
        CleanUp,
        LookFrom,
        LookTo,
        Pots,
        PotWidth,
        SpacedPots,
        UnknownUses,
        EntryHours,
        EntryHoursOfAnything,
        HoursUnaired,
        HotDay,
        EvenSpread,
        UnevenSpread,
        WeedsToCome,
        WeedsBlownIn,
        LeftWhenYoung,
        LeftWhenMature,
        SeedsThatCount,
        YearLate,
        Mowings,
        GrowthFloor,
        LeastGain,
        RosetteWeeks,
        RosetteMonth,
        SeedPresses,
    ];
}
