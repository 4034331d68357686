using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>One thing is made wrong in a good folder; exactly one problem, in these words, must come out.</summary>
public sealed class BadRecordTests
{
    private const string Weed = "weeds/liverwort.yaml";
    private const string Treatment = "treatments/oxadine-granules.yaml";
    private const string Practice = "practices/watering.yaml";

    [Theory]
    [InlineData(Practice, "  when:", "  what-on: { moon: Rake it. }\n  when:", "found the key 'moon'", 2)]
    [InlineData(Weed, "scientific:", "sceintific:", "weeds/liverwort.yaml:2:3: found a weed without 'scientific'", 2)]
    [InlineData(Weed, "  identify", "  colour: green\n  identify", "weeds/liverwort.yaml:20:3: found the key 'colour'")]
    [InlineData(
        Weed,
        "kind: bryophyte",
        "kind: bryofyte",
        "weeds/liverwort.yaml:6:9: found 'bryofyte'; expected a word of list 'weed-kind': broadleaf, bryophyte; did "
            + "you mean 'bryophyte'?"
    )]
    [InlineData(
        Weed,
        "places: [house]",
        "places: [hose]",
        "weeds/liverwort.yaml:14:12: found 'hose'; expected an answer to 'place': house, yard; did you mean 'house'?"
    )]
    [InlineData(
        Weed,
        "[gemmae]",
        "[gemmae, gemmae]",
        "found 'gemmae' a second time; expected each word once in a list"
    )]
    [InlineData(Weed, "[gemmae]", "gemmae", "found 'gemmae'; expected a list, as in [a, b]")]
    [InlineData(
        Weed,
        "weed: spurge",
        "weed: sprge",
        "found 'sprge'; expected the id of a weed: liverwort, spurge; did you mean 'spurge'?"
    )]
    [InlineData(Weed, "[1, 2, 12]", "[1, 2, 13]", "found 13; expected a number from 1 to 12")]
    [InlineData(Weed, "[1, 2, 12]", "[1, 2, 2]", "found '2' as a month; expected whole months from 1 to 12, each once")]
    [InlineData(Weed, "[1, 2, 12]", "[1, 2.5]", "found '2.5' as a month")]
    [InlineData(Weed, "{ south:", "{ sooth:", "did you mean 'south'?")]
    [InlineData(Weed, "[6, 10]", "[10, 6]", "found [10, 6]; expected a range with the lower number first")]
    [InlineData(Weed, "[6, 10]", "[6, 7, 10]", "found a list of 3; expected a range: [low, high]")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: 1,6", "found '1,6'; expected a number such as 12, 0.5 or -3")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: 1_6", "found '1_6'; expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: 1e3", "found '1e3'; expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: +1", "found '+1'; expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: .5", "found '.5'; expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: 5.", "found '5.'; expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: 12345678901234567890123456789", "expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: -1", "found -1; expected a number from 0 to 1000000")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m:", "found nothing; expected a number")]
    [InlineData(Weed, "distance-m: 1.6", "distance-m: [1.6]", "found a list; expected a number")]
    [InlineData(Weed, "underground: false", "underground: no", "found 'no'; expected one of: false, true")]
    [InlineData(
        Weed,
        "id: liverwort",
        "id: Liver wort",
        "found 'Liver wort'; expected an id: lower-case words joined by hyphens",
        0
    )]
    [InlineData(
        Weed,
        "id: liverwort",
        "id: spurge",
        "weeds/spurge.yaml:1:3: found the id 'spurge' a second time; expected another id: weeds/liverwort.yaml:2:3 has "
            + "this one",
        0
    )]
    [InlineData(Weed, "- id", "id", "weeds/liverwort.yaml", 0)]
    [InlineData("weeds/spurge.yaml", "identify: Milky sap.", "identify: \"  \"", "found '  '; expected text")]
    [InlineData(
        Treatment,
        "drift-hazard:",
        "drift-hazzard:",
        "found a treatment without 'drift-hazard'; expected the key 'drift-hazard'",
        2
    )]
    [InlineData(Treatment, "actives: [oxadine]", "actives: []", "found a treatment without actives")]
    [InlineData(
        Treatment,
        "checked: 2026-11-25",
        "checked: 25.11.2026",
        "found '25.11.2026'; expected a date, YYYY-MM-DD"
    )]
    [InlineData(
        Treatment,
        "checked: 2026-11-25",
        "checked: 2026-02-30",
        "found '2026-02-30'; expected a date, YYYY-MM-DD"
    )]
    [InlineData(
        Treatment,
        "{ value: 2, unit: percent }",
        "{ value: 101, unit: percent }",
        "found a strength above 100 percent"
    )]
    [InlineData(
        Treatment,
        "actives: [oxadine]",
        "actives: [oxadine]\n  shares-percent: [1.5]",
        "found shares of the actives that add up to 1.5 percent; expected the strength, 2 percent"
    )]
    [InlineData(
        Treatment,
        "actives: [oxadine]",
        "actives: [oxadine]\n  shares-percent: [1, 1]",
        "found 2 shares of 1 actives; expected one share for each of the actives, in their order, or none"
    )]
    [InlineData(
        Treatment,
        "{ value: 2, unit: percent }",
        "{ value: 2, unit: grams }",
        "found 'grams'; expected one of: g-ai-per-litre, lb-ai-per-gal, percent"
    )]
    [InlineData(Treatment, "product-per-area: 100, ", "", "found a product figure and its unit apart")]
    [InlineData(
        Treatment,
        "product-per-area: 100, unit: lb/acre, ai-lb-per-acre: [1, 2], ",
        "",
        "found a rate without a figure"
    )]
    [InlineData(
        Treatment,
        "stock-stages: [established]",
        "stock-stages: []",
        "found no word under 'stock-stages'; expected at least one answer to 'stock'"
    )]
    [InlineData(Treatment, "crops-hurt: [hollies]", "crops-hurt: [holies]", "did you mean 'hollies'?")]
    [InlineData(
        Treatment,
        "name: Oxadine granules",
        "name: Oxadine granules that are spread by hand over everything there is",
        "found a name of 65 letters; expected at most 60 letters"
    )]
    [InlineData(
        Practice,
        "reduction-percent: 5",
        "reduction-percent: 105",
        "found 105; expected a number from 0 to 100"
    )]
    [InlineData(Practice, "on: all", "on: everything", "expected a weed, a weed kind, or 'all'")]
    [InlineData(Practice, "id: let-it-dry", "id: oxadine-granules", "the id 'oxadine-granules' a second time", 0)]
    [InlineData(
        Practice,
        "  cost:\n",
        "  cost: free\n  costs:\n",
        "found 'free'; expected a cost, as a map of keys",
        2
    )]
    [InlineData(
        Practice,
        "    source: [invented]\n  effects",
        "    price: labor\n    source: [invented]\n  effects",
        "found 'labor'; expected the id of a price: labour; did you mean 'labour'?"
    )]
    [InlineData(
        "crops.yaml",
        "is-a: []",
        "is-a: [dwarf-hollies]",
        "found the crop 'shrubs' above itself; expected groups without a circle",
        3
    )]
    [InlineData("crops.yaml", "is-a: [shrubs]", "is-a: [shrub]", "did you mean 'shrubs'?")]
    [InlineData("regions.yaml", ", -0.5]", "]", "found 11 monthly temperatures; expected twelve, from January")]
    [InlineData(
        "regions.yaml",
        "last-frost: 04-05",
        "last-frost: 04-31",
        "found '04-31'; expected a day of the year, MM-DD"
    )]
    [InlineData("sources.yaml", "title: A leaflet, ", "", "found a source without 'title'")]
    [InlineData("sources.yaml", "leaflet: {", "Leaf let: {", "found 'Leaf let'; expected a key", 0)]
    [InlineData("knowledge.yaml", "1.2.3", "new", "found 'new'; expected a version such as 0.1.0")]
    [InlineData(
        "vocabulary/lists.yaml",
        "favour: {",
        "favours: {",
        "found no list 'favour'; expected a list 'favour' in one of the files of vocabulary/"
    )]
    [InlineData("vocabulary/lists.yaml", "GR: granules", "GR:", "found nothing; expected text")]
    [InlineData("findings.yaml", "text: The surface stays wet., ", "", "found a finding without 'text'")]
    [InlineData("prices.yaml", "value: 18.50", "value: -1", "found -1; expected a number from 0 to 1000000")]
    [InlineData("scales.yaml", "[80, 95]", "[80, 195]", "found 195; expected a number from 0 to 100")]
    [InlineData("questions.yaml", "kind: any-of", "kind: many-of", "found 'many-of'; expected one of", 0)]
    [InlineData(
        "questions.yaml",
        "{ cover: film-on }",
        "{ cover: film }",
        "found 'film'; expected an answer to 'cover': film-on, open-sky",
        1
    )]
    [InlineData(
        "questions.yaml",
        "{ cover: film-on }",
        "{ stock: cuttings }",
        "found 'stock'; expected something that a site pattern can test: cover, place"
    )]
    [InlineData(
        "questions.yaml",
        "{ cover: film-on }",
        "{ cover: $cover }",
        "found '$cover'; expected an answer to 'cover'"
    )]
    [InlineData(
        "questions.yaml",
        ", { id: film-on, text: Film }]",
        "]",
        "found a question with 1 answers; expected at least two under 'answers'",
        0
    )]
    [InlineData(
        "questions.yaml",
        "{ id: film-on, text: Film }",
        "{ id: open-sky, text: Film }",
        "found the answer 'open-sky' a second time; expected each answer once",
        0
    )]
    [InlineData(
        "questions.yaml",
        "id: mulch-depth",
        "id: season",
        "found a question 'season'; expected an id that is not worked out from the answers",
        0
    )]
    [InlineData("questions.yaml", "between: [0, 30]", "past-only: true", "found a question without 'between'", 0)]
    [InlineData(
        "questions.yaml",
        "between: [0, 30]",
        "between: [0, 30]\n  sizes: [{ name: large, is: 5 }]",
        "found the size 'large'; expected a class such as '#3', or a volume such as '2 litre'"
    )]
    [InlineData(
        "questions.yaml",
        "between: [0, 30]",
        "between: [0, 30]\n  sizes: [{ name: 2 litre, is: 5 }, { name: 2 L, is: 6 }]",
        "found the size '2 litre' a second time; expected each size once"
    )]
    public void Is_a_problem(string file, string old, string changed, string expected, int problems = 1)
    {
        Outcome<KnowledgeBase, Problem> outcome = new FixtureKnowledge().Change(file, old, changed).Load();

        Assert.False(outcome.IsGood);
        Assert.Contains(outcome.Refusals, problem => problem.ToString().Contains(expected, StringComparison.Ordinal));
        if (problems > 0)
            Assert.Equal(problems, outcome.Refusals.Length);
    }

    private const string Broad = """
        - id: green-thing
          unnamed: true
          name: green thing
          kind: bryophyte
          lives-by: [spores]
          identify: It is green.
          control: [Have it named.]
          from: { all: book }

        """;

    [Fact]
    public void A_broad_kind_says_only_what_all_of_it_share()
    {
        KnowledgeBase knowledge = new FixtureKnowledge().With("weeds/broad.yaml", Broad).Load().Value!;
        Weed weed = knowledge.Weeds["green-thing"];
        Assert.True(weed.IsUnnamed);
        Assert.Equal(["spores"], WaysOfLife.Of(weed, knowledge.Usual));
        Assert.Empty(weed.Emergence);
        Assert.Null(weed.WeeksToFirstSeed);
        Assert.Empty(weed.RatedAs);
    }

    [Theory]
    [InlineData("  kind: bryophyte", "  kind: bryophyte\n  scientific: Viridis", "found the key 'scientific'")]
    [InlineData("  kind: bryophyte", "  kind: bryophyte\n  rated-as: []", "found the key 'rated-as'")]
    [InlineData("[spores]", "[spoors]", "found 'spoors'; expected one of: below, seed, spores")]
    [InlineData("unnamed: true", "unnamed: perhaps", "found 'perhaps'")]
    public void A_broad_kind_that_claims_more_is_a_problem(string from, string to, string found)
    {
        string text = Broad.Replace(from, to, StringComparison.Ordinal);
        Assert.Contains(new FixtureKnowledge().With("weeds/broad.yaml", text).Load().Refusals, problem =>
            problem.ToString().Contains(found, StringComparison.Ordinal)
        );
    }
}
