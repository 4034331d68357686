using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>Tables of ratings, one a source: what they give to treatments, and what is refused.</summary>
public sealed class RatingTableTests
{
    private const string Head = "source: book\nscale: three-step\nchecked: 2026-11-24\nratings:\n";
    private const string Two =
        "  - { treatments: [oxadine-granules], weeds: [spurge, liverwort], grade: good, raw: G }\n";

    [Fact]
    public void A_row_rates_each_of_its_treatments_on_each_of_its_weeds()
    {
        KnowledgeBase knowledge = Good(
            new FixtureKnowledge()
                .With("treatments/twin.yaml", Twin)
                .With("ratings/book.yaml", Head + Two.Replace("[oxadine-granules]", "[oxadine-granules, twin]"))
        );
        Rating[] expected = [Rated("spurge"), Rated("liverwort")];
        foreach (string id in new[] { "oxadine-granules", "twin" })
            Assert.Equal(
                expected.Select(Told),
                knowledge.Treatments[id].Ratings.Where(rating => rating.Sources[0] == "book").Select(Told)
            );
    }

    [Fact]
    public void The_source_of_a_row_is_that_of_its_table_and_the_others_that_say_so()
    {
        KnowledgeBase knowledge = Good(Table(Row("spurge", ", also: [memory, leaflet]")));
        Treatment treatment = knowledge.Treatments["oxadine-granules"];
        Assert.Equal(["book", "memory", "leaflet"], treatment.Ratings[0].Sources);
        Assert.Equal(["book", "memory", "leaflet"], treatment.From.Of("ratings"));
        Assert.Contains("ratings", treatment.Memory);
    }

    [Fact]
    public void A_row_may_name_another_scale_and_a_treatment_has_its_ratings_by_scale_then_table()
    {
        FixtureKnowledge fixture = Table(Row("spurge", ", scale: two-step") + Row("liverwort", ""))
            .Change(
                "vocabulary/lists.yaml",
                "rating-scale: {",
                "rating-scale: { first: first, three-step: x, two-step: y }\nold: {"
            );
        Assert.Equal(
            ["liverwort three-step", "annual-grasses three-step", "spurge two-step"],
            Good(fixture).Treatments["oxadine-granules"].Ratings.Select(rating => $"{rating.On} {rating.Scale}")
        );
    }

    [Fact]
    public void A_page_may_print_two_figures_of_one_pair_where_the_row_says_so()
    {
        KnowledgeBase knowledge = Good(
            Table(Row("spurge", "") + Row("spurge", ", again: true").Replace("raw: G", "raw: P in autumn"))
        );
        Assert.Equal(
            ["G", "P in autumn"],
            knowledge.Treatments["oxadine-granules"].Ratings.Where(one => one.On == "spurge").Select(one => one.Raw)
        );
    }

    [Theory]
    [InlineData(
        "grade: good",
        "grade: god",
        "ratings/book.yaml:5:74: found 'god'; expected a grade: good, none; did you mean 'good'?"
    )]
    [InlineData(
        "weeds: [spurge",
        "weeds: [spurg",
        "ratings/book.yaml:5:47: found 'spurg'; expected a weed, a weed kind, or an id"
    )]
    [InlineData(
        "[oxadine-granules]",
        "[oxadin-granules]",
        "ratings/book.yaml:5:20: found 'oxadin-granules'; expected the id of a treatment: oxadine-granules; "
            + "did you mean 'oxadine-granules'?"
    )]
    [InlineData(
        "[oxadine-granules]",
        "[]",
        "ratings/book.yaml:5:19: found an empty list; expected at least one of the treatments"
    )]
    [InlineData("[spurge, liverwort]", "[]", "found an empty list; expected at least one of the weeds")]
    [InlineData("[spurge, liverwort]", "[spurge, spurge]", "found 'spurge' a second time")]
    [InlineData(", raw: G", "", "ratings/book.yaml:5:5: found a rating without 'raw'")]
    [InlineData("raw: G", "raw: G, weed: spurge", "found the key 'weed'; expected keys of a rating: weeds,")]
    [InlineData(
        "raw: G",
        "raw: G, also: [leaflte]",
        "ratings/book.yaml:5:95: found 'leaflte'; expected a key of sources.yaml: book,"
    )]
    [InlineData(
        "raw: G",
        "raw: G, also: [book]",
        "found 'book' under 'also'; expected other sources than that of the table"
    )]
    [InlineData("raw: G", "raw: G, scale: three", "found 'three'; expected a word of list 'rating-scale': three-step")]
    [InlineData(
        "[spurge, liverwort], grade: good, raw: G",
        "[spurge], grade: good, raw: G, again: true",
        "ratings/book.yaml:5:5: found 'again' for 'oxadine-granules' on 'spurge', which stands once"
    )]
    [InlineData(
        "source: book",
        "source: bok",
        "ratings/book.yaml:1:9: found 'bok'; expected a key of sources.yaml: book,"
    )]
    [InlineData(
        "source: book",
        "source: leaflet",
        "ratings/book.yaml:1:9: found the table of 'leaflet' in a file named book.yaml; "
            + "expected a file named leaflet.yaml, or 'source: book'"
    )]
    [InlineData("source: book\n", "", "ratings/book.yaml:1:1: found a table of ratings without 'source'")]
    [InlineData("scale: three-step\n", "", "found a table of ratings without 'scale'")]
    [InlineData("checked: 2026-11-24", "checked: 2026-11-31", "ratings/book.yaml:3:10: found '2026-11-31'")]
    [InlineData("ratings:\n" + Two, "", "found a table of ratings without 'ratings'")]
    public void A_slip_is_told_where_it_stands(string old, string changed, string expected) =>
        Refused(Table(Two).Change("ratings/book.yaml", old, changed), expected);

    [Fact]
    public void A_pair_stands_once_in_the_table_of_a_source()
    {
        const string twice =
            "ratings/book.yaml:6:5: found 'oxadine-granules' on 'liverwort' a second time in the table of 'book'; "
            + "expected each pair once: it stands at ratings/book.yaml:5:5";
        Refused(Table(Two + Row("liverwort", "")), twice);
        Refused(Table(Two + Row("liverwort", ", again: true")), twice);
    }

    [Fact]
    public void A_treatment_that_holds_ratings_itself_is_told_where_they_stand() =>
        Refused(
            new FixtureKnowledge().Change(
                "treatments/oxadine-granules.yaml",
                "  status: current\n",
                "  ratings: []\n  status: current\n"
            ),
            ": found the key 'ratings' in a treatment; "
                + "expected them in ratings/, in the table of the source that prints "
                + "them"
        );

    [Fact]
    public void A_nursery_may_add_a_table_of_its_own_and_neither_repeat_nor_change_what_is_shipped()
    {
        const string row =
            "source: {0}\nscale: text\nchecked: 2026-11-28\nratings:\n"
            + "  - {{ treatments: [isoxaben-spray], weeds: [{1}], grade: poor, raw: came through in two years }}\n";
        Rating own = Local("own-folder", "spurge-spotted")
            .Value!.Treatments["isoxaben-spray"]
            .Ratings.Single(rating => rating.Sources.Contains("own-folder"));
        Assert.Equal(("spurge-spotted", "poor"), (own.On, own.Grade));
        Problem problem = Assert.Single(Local("cw-spurge", "spurge-spotted").Refusals);
        Assert.StartsWith(
            "local/ratings/cw-spurge.yaml:5:5: found 'isoxaben-spray' on 'spurge-spotted' a second time "
                + "in the table of "
                + "'cw-spurge'; expected each pair once: it stands at ratings/cw-spurge.yaml:",
            problem.ToString(),
            StringComparison.Ordinal
        );

        static Outcome<KnowledgeBase, Problem> Local(string source, string weed)
        {
            using var folder = new TempFolder();
            string text = string.Format(System.Globalization.CultureInfo.InvariantCulture, row, source, weed);
            folder.Write($"ratings/{source}.yaml", System.Text.Encoding.UTF8.GetBytes(text));
            return KnowledgeFolder.Load(Repository.Rules, KnowledgeScope.Whole, folder.Path);
        }
    }

    [Fact]
    public void What_ships_is_all_in_tables_that_name_their_source_and_day()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        Assert.Equal(
            knowledge
                .RatingTables.SelectMany(table => table.Rows)
                .Select(row => $"{row.Treatment}: {Told(row.Rating)}")
                .Order(StringComparer.Ordinal),
            knowledge
                .Treatments.Values.SelectMany(one => one.Ratings.Select(rating => $"{one.Id}: {Told(rating)}"))
                .Order(StringComparer.Ordinal)
        );
        Assert.All(knowledge.RatingTables, table =>
        {
            Assert.Equal($"{table.Id}.yaml", table.Where.File);
            Assert.NotEmpty(table.Rows);
            Assert.All(table.Rows, row => Assert.Equal(table.Source, row.Rating.Sources[0]));
        });
    }

    private static string Twin =>
        new FixtureKnowledge()
            .Text("treatments/oxadine-granules.yaml")
            .Replace("id: oxadine-granules", "id: twin", StringComparison.Ordinal);

    private static string Row(string weed, string more) =>
        $"  - {{ treatments: [oxadine-granules], weeds: [{weed}], grade: good, raw: G{more} }}\n";

    private static Rating Rated(string weed) => new(weed, "good", "three-step", "G", ["book"], null);

    private static string Told(Rating rating) =>
        $"{rating.On} {rating.Grade} {rating.Scale} {rating.Raw} {string.Join(' ', rating.Sources)} {rating.Note}";

    private static FixtureKnowledge Table(string rows) => new FixtureKnowledge().With("ratings/book.yaml", Head + rows);

    private static KnowledgeBase Good(FixtureKnowledge fixture)
    {
        Outcome<KnowledgeBase, Problem> read = fixture.Load();
        Assert.True(read.Value is not null, string.Join('\n', read.Refusals));
        return read.Value;
    }

    // One line for each slip; what follows from it is not told besides.
    private static void Refused(FixtureKnowledge fixture, string expected) =>
        Assert.Contains(expected, Assert.Single(fixture.Load().Refusals).ToString(), StringComparison.Ordinal);
}
