namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>The weeds, practices and treatments of the fixture.</summary>
internal static class FixtureCatalogues
{
    public static IReadOnlyDictionary<string, string> All =>
        new Dictionary<string, string>
        {
            ["weeds/liverwort.yaml"] = """
                # The weed that lives on wet surfaces.
                - id: liverwort
                  name: Liverwort
                  also-called: [umbrella plant]
                  scientific: Marchantia polymorpha
                  kind: bryophyte
                  life-cycle: perennial
                  emergence: { south: [1, 2, 12], heated-house: [] }
                  base-temperature-c: 4
                  weeks-to-first-seed: [6, 10]
                  spreads-by: [gemmae]
                  spread-distance-m: 1.6
                  favoured-by: [wet-surface, cool]
                  places: [house]
                  needs-light: "yes"
                  underground: false
                  rated-as: [liverwort, bryophytes]
                  features: [ribbon-body]
                  look-alikes: [{ weed: spurge, tell: Only one of them has leaves. }]
                  identify: >-
                    Flat green ribbons
                    with cups.
                  control: [Let the surface dry.]
                  from:
                    kind: book
                    life-cycle: book
                    emergence: book
                    base-temperature-c: book
                    weeks-to-first-seed: book
                    spreads-by: book
                    spread-distance-m: memory
                    favoured-by: book
                    places: book
                    needs-light: book
                    underground: book
                    features: book
                    look-alikes: book
                    identify: book
                    control: book

                """,
            ["weeds/spurge.yaml"] = """
                - id: spurge
                  name: Spurge
                  scientific: Euphorbia maculata
                  kind: broadleaf
                  life-cycle: summer-annual
                  emergence: { south: [4, 5, 6] }
                  spreads-by: [ballistic]
                  favoured-by: []
                  places: [yard, house]
                  needs-light: partly
                  underground: false
                  rated-as: []
                  identify: Milky sap.
                  from: { all: book }

                """,
            ["practices/watering.yaml"] = """
                - id: let-it-dry
                  name: Let the surface dry
                  what: Water less often.
                  when: standing
                  possible: habit
                  kind: watering
                  tags: [waters-less]
                  places: [house, yard]
                  stock-stages: [established]
                  needs-equipment: []
                  works-on: both
                  enclosed-ok: true
                  cost:
                    materials-usd-per-1000-pots: 0
                    labour-hours-per-1000-pots: [0, 1.5]
                    source: [invented]
                  effects:
                    - { on: liverwort, reduction-percent: [20, 40], source: [leaflet], note: In one trial. }
                    - { on: all, reduction-percent: 5, source: [memory] }
                  not-where: [Under mist.]
                  cautions: [Watch for wilting.]
                  from: { all: book }

                """,
            ["actives/oxadine.yaml"] = """
                - id: oxadine
                  name: oxadine
                  also-called: [oxy-adine]
                  group: "14"
                  was: E
                  site-of-action: oxidase
                  volatile: low
                  root-inhibitor: false
                  water-hazard: true
                  checked: 2026-11-25
                  from: { all: book }

                """,
            ["treatments/oxadine-granules.yaml"] = """
                - id: oxadine-granules
                  name: Oxadine granules
                  what: Spread over dry leaves and water in.
                  when: season
                  actives: [oxadine]
                  formulation: GR
                  role: preemergence
                  acts-on: [germinating]
                  applied: [granule-over-top]
                  reaches-crop: true
                  places: [yard]
                  allowed-under: [open-sky]
                  enclosed-use: never
                  stock-stages: [established]
                  crops-tolerant: [shrubs]
                  crops-hurt: [hollies]
                  edible-ok: false
                  organic-ok: false
                  wait-after-potting-days: 14
                  not-at: [flush]
                  water-in-mm: [6, 13]
                  residual-weeks: [8, 12]
                  repeat-after-days: 60
                  uses-per-year: 3
                  rates: [{ product-per-area: 100, unit: lb/acre, ai-lb-per-acre: [1, 2], source: [book] }]
                  strength: { value: 2, unit: percent }
                  drift-hazard: false
                  rei-hours: 24
                  signal-word: caution
                  protective-equipment: Gloves.
                  needs-equipment: [spreader]
                  restricted-use: false
                  status: current
                  from: { all: book }
                  checked: 2026-11-25

                """,
            ["ratings/book.yaml"] = """
                source: book
                scale: three-step
                checked: 2026-11-24
                ratings:
                  - { treatments: [oxadine-granules], weeds: [spurge, bryophytes], grade: good, raw: G }

                """,
            ["ratings/leaflet.yaml"] = """
                source: leaflet
                scale: three-step
                checked: 2026-11-25
                ratings:
                  - { treatments: [oxadine-granules], weeds: [annual-grasses], grade: none, raw: "-" }

                """,
        };
}
