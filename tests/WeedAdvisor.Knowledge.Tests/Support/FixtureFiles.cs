using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>The files of the fixture: one or two records of every kind.</summary>
internal static class FixtureFiles
{
    public static IReadOnlyDictionary<string, string> All { get; } =
        Shared.Concat(FixtureCatalogues.All).ToDictionary(StringComparer.Ordinal);

    private static string UsualFile => string.Concat(UsualIds.All.Select(id =>
        $"- {{ id: {id}, name: A usual value, value: 1, from: {{ all: invented }} }}\n"));

    private static IReadOnlyDictionary<string, string> Shared => new Dictionary<string, string>
    {
        ["knowledge.yaml"] = "version: 1.2.3\n",
        ["sources.yaml"] = """
            book:
              authors: The authors
              title: "A book: with a colon"
              year: 1999
            leaflet: { title: A leaflet, note: out of print }

            """,
        ["vocabulary/lists.yaml"] = """
            acts-on: { germinating: before it is up, emerged: when it is up }
            application: { granule-over-top: granules over the top, floor-spray: sprayed on the floor }
            country: { us: the first country, gb: the second country, other: another country }
            crop-trait: { woody: woody, edible: eaten }
            emergence-zone: { south: the south, heated-house: a heated house }
            enclosed-use: { never: never, empty-house: in an empty house, with-crop: with the crop }
            favour: { wet-surface: wet surfaces, cool: cool weather }
            formulation: { GR: granules, SC: suspension concentrate }
            law-topic: { who-may-apply: who may spray, register: which products are registered }
            life-cycle: { perennial: lives for years, summer-annual: comes up in spring }
            one-of: { rinse: one way to rinse }
            possible: { any-time: on any day, habit: a habit }
            practice-kind: { hygiene: hygiene, watering: watering }
            practice-tag: { waters-less: waters less, dark-layer: keeps the surface dark }
            question-group: { place: the place, crop: the crop }
            rated-only: { annual-grasses: annual grasses as a group }
            rating-scale: { three-step: "good, fair, poor" }
            role: { preemergence: before emergence, burn-down: kills what it wets }
            signal-word: { caution: caution, danger: danger }
            site-of-action: { oxidase: stops an enzyme }
            spread: { gemmae: gemmae, ballistic: thrown seed }
            stage: { expected: not up yet, seedling: seedling, mature: mature }
            status: { current: current, withdrawn: withdrawn }
            volatility: { none: none, low: low, high: high }
            weed-feature: { ribbon-body: a flat ribbon, milky-sap: milky sap }
            weed-kind: { bryophyte: mosses and liverworts, broadleaf: broadleaf }
            when: { now: now, season: this season, standing: a habit }
            works-on: { standing-weeds: standing weeds, both: both }

            """,
        ["questions.yaml"] = """
            - id: place
              group: place
              ask: What kind of place is it?
              why: Weeds and rules differ by place.
              kind: one-of
              answers:
                - { id: house, text: A house }
                - { id: yard, text: A yard }
              source: [common-practice]
            - id: cover
              group: place
              ask: What is over it?
              why: Closed covers hold vapour.
              kind: one-of
              answers: [{ id: open-sky, text: Nothing }, { id: film-on, text: Film }]
              source: [common-practice]
            - id: sides
              group: place
              ask: Are the sides open?
              why: Air moves through open sides.
              kind: one-of
              answers: [{ id: open, text: Open }, { id: closed, text: Closed }]
              asked-when: { cover: film-on }
              source: [common-practice]
            - id: equipment
              group: place
              ask: Which tools are there?
              why: What can't be done isn't advised.
              kind: any-of
              answers: [{ id: spreader, text: A spreader }, { id: sprayer, text: A sprayer }]
              source: [common-practice]
            - id: stock
              group: crop
              ask: What stands there?
              why: Young plants are easily hurt.
              kind: one-of
              answers: [{ id: cuttings, text: Cuttings }, { id: established, text: Established }]
              source: [common-practice]
            - id: growth-state
              group: crop
              ask: Is it growing?
              why: Soft growth is easily hurt.
              kind: one-of
              answers: [{ id: dormant, text: Dormant }, { id: flush, text: In flush }]
              source: [common-practice]
            - id: potted-on
              group: crop
              ask: When was it potted?
              why: The surface has to settle.
              kind: date
              past-only: true
              source: [common-practice]
            - id: mulch-depth
              group: crop
              ask: How deep is the mulch?
              why: Thin mulch does little.
              kind: number
              unit: cm
              between: [0, 30]
              source: [common-practice]
            - { id: crops, group: crop, ask: Which crops?, why: They differ., kind: crops, source: [common-practice] }
            - { id: region, group: place, ask: Where is it?, why: Seasons., kind: region, source: [common-practice] }
            - { id: weeds, group: place, ask: Which weeds?, why: They differ., kind: weeds, source: [common-practice] }
            - { id: past, group: place, ask: What was used?, why: Rotation., kind: past, source: [common-practice] }

            """,
        ["findings.yaml"] = """
            - { id: surface-stays-wet, text: The surface stays wet., source: [book] }
            - { id: liverwort-is-being-fed, text: Liverwort is being fed., source: [book] }

            """,
        ["scales.yaml"] = """
            - { id: good, reduction-percent: [80, 95], source: [book] }
            - { id: none, reduction-percent: 0, source: [book] }

            """,
        ["usual.yaml"] = UsualFile,
        ["prices.yaml"] = """
            - id: labour
              name: An hour of labour
              value: 18.50
              unit: usd-per-hour
              from: { all: invented }
              checked: 2026-11-25

            """,
        ["regions.yaml"] = """
            - id: warm-coast
              name: The warm coast
              country: us
              emergence-zone: south
              mean-temperature-c: [8, 9, 12, 16, 20, 24, 26, 26, 23, 17, 12, -0.5]
              last-frost: 04-05
              from: { all: invented }

            """,
        ["crops.yaml"] = """
            - { id: shrubs, name: Shrubs, is-a: [], traits: [woody], from: { all: common-practice } }
            - { id: hollies, name: Hollies, is-a: [shrubs], traits: [woody], from: { all: common-practice } }
            - id: dwarf-hollies
              name: Dwarf hollies
              is-a: [hollies]
              traits: []
              notes: [Slow.]
              from: { all: common-practice }

            """,
        ["judgements/moisture.yaml"] = """
            # What water does.
            - id: liverwort-is-fed-in-wet-houses
              when:
                - weed: { id: liverwort, cover-percent: { at-least: 5, less-than: 50 } }
                - site: { place: [house, yard], season: { not: summer } }
                - finding: { id: surface-stays-wet }
              finding: { id: liverwort-is-being-fed, certainty: 0.9 }
              because: "{weed} lives on water."
              source: [book]
            - id: drying-helps
              when:
                - action: { id: let-it-dry }
                - any: { weed: { favoured-by: { has: [wet-surface, cool] } } }
              support: 0.8
              because: It needs water.
              source: [book]

            """,
        ["judgements/under-cover.yaml"] = """
            - id: treatment-must-allow-the-cover
              when:
                - site: { cover: $cover, mulch-depth: { between: [1, 5] } }
                - treatment: { allowed-under: { lacks: $cover } }
                - none: { past: { days-ago: { at-most: 30 } } }
              bar: prohibited
              because: "{treatment} may not be used under {$cover}."
              source: [book]

            """,
        ["visits/wet-house.yaml"] = """
            visit: wet-house
            title: A wet house
            date: 2026-04-14
            nursery: Example Nursery (invented)
            areas:
              - id: bench
                name: The bench
                answers: { place: house, cover: film-on, equipment: [spreader], crops: [], potted-on: 2026-04-01, mulch-depth: 2.5, sides: not-known }
                weeds: [{ weed: liverwort, stage: mature, cover-percent: 20 }]
                past: [{ treatment: oxadine-granules, date: 2026-03-01, result: escapes, escaped: [liverwort] }]
              - { id: yard, name: The yard, weeds: not-known, past: [] }
            expect:
              - area: bench
                clear: [let-it-dry]
                barred: [{ action: oxadine-granules, because: treatment-must-allow-the-cover }]
                waiting: [{ action: let-it-dry, needs: sides }]
                status: [{ action: oxadine-granules, is: not-yet }]
                until: [{ action: oxadine-granules, day: 2026-05-02 }]
                unless: [{ action: let-it-dry, needs: sides }]
                findings: [liverwort-is-being-fed]
                no-clear: treatment
                no-clear-reaching-crop: true
                next-question: sides
                fires: [drying-helps]

            """,
    };
}
