using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Samples;

/// <summary>An advice made by hand that holds every part a report can show.</summary>
internal static partial class SampleAdvice
{
    private static readonly VisitArea s_blank = VisitArea.Blank("yard", "Container yard");

    private static readonly VisitArea s_full = VisitArea.Blank("mist-house", "Mist house") with
    {
        Answers = AreaAnswers
            .Of(("place", "propagation-house"))
            .Add("potted-on", new Answer.Date(new DateOnly(2026, 4, 10)))
            .Add("covering-date", new Answer.Date(new DateOnly(2026, 11, 1))),
        Weeds = [new WeedSeen("liverwort", "mature", 20m), new WeedSeen("bittercress", null, null)],
    };

    public static DateOnly Day { get; } = new(2026, 4, 14);

    public static VisitAdvice Full { get; } = Of(FullArea, BlankArea);

    public static AreaAdvice FullArea =>
        new()
        {
            Area = s_full,
            Reading = AreaReading.Of(s_full, Day, SampleKnowledge.Small) with { IsForPots = true },
            Findings = [new("surface-stays-wet", "The surface stays wet.", 0.9, true, [Wet]), MayBeWeak],
            Clear = [Wash, Mulch, Dry],
            Waiting =
            [
                Waits("granule-01", Need.Question("cover")),
                Waits("granule-02", Need.Question("cover"), Need.Question("crops")),
                Waits("granule-03", Need.Question("cover"), Need.Record("granule-03", "days-before-covering")),
                Waits("granule-04", Need.Question("cover"), Need.Record("granule-04", "days-before-covering")),
            ],
            Barred =
            [
                .. Enumerable.Range(5, 15).Select(n => Barred($"granule-{n:00}", n % 2 == 0)),
                new("pull-by-hand", Severity.Unsuitable, [NotWorthIt("pull-by-hand")], ["common-practice"]),
            ],
            Cautions =
            [
                Caution("Keep the mist off for a day.", true),
                Caution("The drain may end in the pond.", false),
            ],
            Conflicts = [new("mulch-pots", [For("mulch-pots", 0.7)], [Against("mulch-pots", 0.4)])],
            Gaps = [new(GapKind.WeedWithoutRating, "bittercress", "No efficacy table rates bittercress.")],
            NextQuestion = new("cover", "What is over the plants?", "Many bars hang on it.")
            {
                MayBring = ["mulch-pots"],
            },
            Trail = new GivenTrail([
                For("mulch-pots", 0.7),
                Against("mulch-pots", 0.4),
                Bar("granule-05", Severity.Prohibited, "nothing-over-cuttings", "Nothing goes over cuttings."),
                PossibleBar("granule-01"),
                Wet,
            ]),
        };

    public static AreaAdvice BlankArea =>
        new()
        {
            Area = s_blank,
            Reading = AreaReading.Of(s_blank, Day, SampleKnowledge.Small),
            Findings = [],
            Clear = [],
            Waiting = [],
            Barred = [],
            Cautions = [],
            Conflicts = [],
            Gaps = [new(GapKind.Nothing, null, "Nothing at all is clear.")],
            NextQuestion = null,
            Trail = new GivenTrail([]),
        };

    public static VisitAdvice Of(params ImmutableArray<AreaAdvice> areas) =>
        new(
            SampleKnowledge.Small.Stamp,
            new Visit(
                "spring",
                "First look in spring",
                Day,
                "Example Nursery (invented)",
                [.. areas.Select(a => a.Area)]
            ),
            areas
        );

    private static Reason Wet =>
        Reason(
            "wet-surfaces-stay-wet",
            null,
            new Consequence.MakesFinding("surface-stays-wet", 0.9),
            0.9,
            "Water that never leaves keeps the surface wet.",
            matched:
            [
                new(
                    "site",
                    "Mist house",
                    Truth.Yes,
                    [new("surface-moisture", "one of moist, wet", "wet", Truth.Yes)],
                    []
                ),
            ]
        );

    private static AreaFinding MayBeWeak =>
        new(
            "plants-are-weak",
            "The plants are weak.",
            0.5,
            false,
            [
                Reason(
                    "weak-when-heated",
                    null,
                    new Consequence.MakesFinding("plants-are-weak", 0.5),
                    0.5,
                    "Heat without light makes weak plants.",
                    [Need.Question("heated")]
                ),
            ]
        );

    private static EffectPart Part => new("liverwort", 1, 85.50m, 95m, ["paper-two"]);

    private static ClearAction Wash =>
        new()
        {
            Action = "surface-wash",
            Rank = 1,
            Worth = 0.6123456,
            EffectCounted = 0.7654321,
            Certainty = 0.8,
            Effect = new(0.7654321, [Part, new("bittercress", 0, null, null, [])]),
            When = "now",
            RecordUsd = 45.00m,
            Because = [For("surface-wash", 0.8), For("surface-wash", 0.6), Against("surface-wash", 0.3)],
            Cautions =
            [
                new("It bleaches what it splashes.", null, true),
                new(Said.Of("{action}: rinse the tank after it. surface wash stains.", "Surface wash"), "rinse", true),
                new("It may mark soft leaves.", "soft", false),
            ],
            Sources = ["book-one", "paper-two"],
        };

    /// <summary>An area where so many granules are clear, all for this season and all for the same reasons.</summary>
    public static AreaAdvice WithGranules(int count) =>
        FullArea with
        {
            Clear = [.. Enumerable.Range(1, count).Select(Granule)],
            Waiting = [],
            Barred = [],
            Conflicts = [],
        };

    private static ClearAction Granule(int n)
    {
        string id = $"granule-{n:00}";
        return Mulch with
        {
            Action = id,
            Rank = n,
            Because = [For(id, 0.7)],
            Cautions = [new(Said.Of("Water {action} in.", NameOf(id)), "water-in", true)],
        };
    }

    /// <summary>A caution about an action whose rule compared a weed with a long list.</summary>
    public static Reason Minding(string action) =>
        new(
            "mind-what-it-misses",
            "sample",
            "What is left seeds.",
            new Consequence.Caution("{action}: pull what it misses."),
            action,
            1,
            true,
            [],
            [
                new(
                    "weed",
                    "Liverwort",
                    Truth.Yes,
                    [new("id", "anything, called $w", "liverwort", Truth.Yes) { Words = ["liverwort"] }],
                    []
                ),
                new(
                    "treatment",
                    NameOf(action),
                    Truth.Yes,
                    [new("misses", "same as $w", string.Join(", ", s_manyWeeds), Truth.Yes) { Words = s_manyWeeds }],
                    []
                ),
            ],
            ["book-one"],
            Said.Of("{action}: pull what it misses.", NameOf(action))
        );

    private static readonly ImmutableArray<string> s_manyWeeds =
    [
        .. Enumerable.Range(1, 9).Select(n => $"a-weed-{n}"),
        "liverwort",
    ];

    /// <summary>The same with the liverwort shedding its spores.</summary>
    public static AreaAdvice Seeding(AreaAdvice advice)
    {
        VisitArea area = advice.Area with { Weeds = [new WeedSeen("liverwort", "seeding", 20m)] };
        return advice with { Area = area, Reading = advice.Reading with { Area = area } };
    }

    /// <summary>A weeding that is clear.</summary>
    public static ClearAction Pull => Mulch with { Action = "pull-by-hand", When = "now", Horizon = Horizon.ThisWeek };

    private static ClearAction Mulch =>
        new()
        {
            Action = "mulch-pots",
            Rank = 2,
            Worth = 0.35,
            EffectCounted = 0.5,
            Horizon = Horizon.ThisSeason,
            WorksOn = WorksOn.Coming,
            Certainty = 0.7,
            Effect = new(null, [new("liverwort", 1, null, null, [])]),
            When = "season",
            RecordUsd = 1234.5m,
            Because = [For("mulch-pots", 0.7)],
            Cautions = [],
            Sources = ["book-one"],
        };

    private static ClearAction Dry =>
        new()
        {
            Action = "let-surface-dry",
            Rank = 3,
            Worth = 0.2,
            EffectCounted = 0.5,
            Horizon = Horizon.Habit,
            WorksOn = WorksOn.Coming,
            Certainty = 0.4,
            Effect = new(null, []),
            When = "standing",
            RecordUsd = null,
            Because = [For("let-surface-dry", 0.4, Behind)],
            Cautions = [],
            Sources = ["book-one"],
        };

    private static MatchedPattern Behind =>
        new("finding surface-stays-wet", "The surface stays wet.", Truth.Yes, [], [Wet]);

    private static WaitingAction Waits(string action, params ImmutableArray<Need> needs) =>
        new(action, needs, [PossibleBar(action)]);

    private static BarredAction Barred(string action, bool twice)
    {
        Reason first = Bar(
            action,
            Severity.Prohibited,
            "nothing-over-cuttings",
            Said.Of("{action} goes over cuttings.", NameOf(action))
        );
        Reason second = Bar(action, Severity.Prohibited, "a-second-reason", "It is not known to be on the label.");
        return new(action, Severity.Prohibited, twice ? [second, first] : [first], ["book-one"]);
    }

    private static string NameOf(string action) => SampleKnowledge.Small.ActionOf(action)!.Name;

    private static AreaCaution Caution(string text, bool certain) =>
        new(
            text,
            certain,
            Reason(
                "mind-the-water",
                null,
                new Consequence.Caution(text),
                1,
                text,
                certain ? [] : [Need.Question("cover")]
            )
        );

    private static Reason NotWorthIt(string action) =>
        Bar(
            action,
            Severity.Unsuitable,
            "too-many-to-pull",
            Said.Of("{action} takes longer than it helps.", NameOf(action))
        );

    private static Reason Bar(string action, Severity severity, string judgement, Said text) =>
        Reason(judgement, action, new Consequence.Bar(severity), 1, text);

    private static Reason PossibleBar(string action) =>
        Reason(
            "must-allow-the-cover",
            action,
            new Consequence.Bar(Severity.Prohibited),
            1,
            "It must allow the cover.",
            [Need.Question("cover")],
            [new("site", "Mist house", Truth.NotKnown, [OpenCover], [])]
        );

    private static MatchedTest OpenCover => new("cover", "anything, called $c", "not known", Truth.NotKnown);

    private static Reason For(string action, double certainty, params ImmutableArray<MatchedPattern> matched)
    {
        string judgement = $"it-helps-{certainty.ToString("0.0", CultureInfo.InvariantCulture).Replace('.', '-')}";
        var then = new Consequence.Argument(certainty, false);
        return Reason(judgement, action, then, certainty, $"It helps, says {judgement}.", [], matched);
    }

    private static Reason Against(string action, double certainty) =>
        Reason("it-is-dear", action, new Consequence.Argument(certainty, true), certainty, "It is dear.");

    private static Reason Reason(
        string judgement,
        string? action,
        Consequence then,
        double certainty,
        Said text,
        ImmutableArray<Need>? needs = null,
        params ImmutableArray<MatchedPattern> matched
    )
    {
        bool isCertain = needs is not { Length: > 0 };
        return new(judgement, "sample", text, then, action, certainty, isCertain, needs ?? [], matched, ["book-one"]);
    }
}
