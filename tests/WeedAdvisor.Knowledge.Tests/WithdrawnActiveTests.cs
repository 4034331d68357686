using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>Whoever finds an old bag is answered, and an old visit is still read.</summary>
public sealed class WithdrawnActiveTests
{
    private const string File = "withdrawn.yaml";

    private const string Gone =
        "- { id: goneine, name: goneine, also-called: [GNN], group: \"5\", "
        + "checked: 2026-11-25, from: { all: book } }\n";

    private const string Row =
        "- id: goneine-there\n  active: goneine\n  countries: [gb]\n  since: 2020-02-05\n  bag: Hand it back.\n  "
        + "formerly: [goneine-granules]\n  checked: 2026-11-25\n  from: { all: book }\n";

    private static FixtureKnowledge Fixture =>
        new FixtureKnowledge().With("actives/goneine.yaml", Gone).With(File, Row);

    private static KnowledgeBase Good => Fixture.Load().Value!;

    [Theory]
    [InlineData("goneine")]
    [InlineData("Goneine")]
    [InlineData("gnn")]
    [InlineData("goneine-granules")]
    public void It_is_found_by_each_of_its_names(string named)
    {
        Assert.Equal("goneine", Good.GoneAs(named)?.Id);
        string text = Good.WithdrawnText(Good.GoneAs(named)!);
        Assert.Contains("goneine (GNN) may not be used any more", text, StringComparison.Ordinal);
        Assert.Contains("the second country since 2020-02-05: Hand it back.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_active_that_a_treatment_still_holds_is_answered_by_the_treatment()
    {
        KnowledgeBase knowledge = new FixtureKnowledge()
            .With(File, Row.Replace("active: goneine", "active: oxadine", StringComparison.Ordinal))
            .Load()
            .Value!;
        Assert.Null(knowledge.GoneAs("oxadine"));
        Assert.Equal(WordSet.Of(["gb"]), knowledge.Treatments["oxadine-granules"].WithdrawnIn);
    }

    [Theory]
    [InlineData("2020-02-05", "gb")]
    [InlineData("2020-02-04", "")]
    [InlineData(null, "gb")]
    public void It_counts_from_the_day_on_and_a_day_not_known_may_be_any(string? day, string countries)
    {
        DateOnly? used = day is null ? null : DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(countries, string.Join(' ', Good.WithdrawnWhere(["goneine"], used)));
        Assert.Empty(Good.WithdrawnWhere(["oxadine"], used));
    }

    [Theory]
    [InlineData("goneine-granules")]
    [InlineData("goneine")]
    public void An_earlier_use_of_it_is_read_with_its_active_and_group(string id)
    {
        Visit visit = Fixture
            .Change("visits/wet-house.yaml", "treatment: oxadine-granules, date", $"treatment: {id}, date")
            .Load()
            .Value!.WorkedVisits[0]
            .Visit;
        var past = PastProduct.Of(visit.Areas[0].Past!.Value[0], Good);
        Assert.Equal((WordSet.Of(["goneine"]), WordSet.Of(["5"])), (past.Actives!, past.Groups!));
        Assert.Null(past.Record);
        Assert.Equal("goneine, withdrawn", PastProduct.NameOf(id, Good));
    }

    [Fact]
    public void A_label_of_it_is_refused_with_what_becomes_of_the_bag() =>
        Assert.Contains(
            "found 'GNN'; expected no label of it: goneine (GNN) may not be used any more. In the second country since",
            Assert
                .Single(
                    LabelFile
                        .Parse(
                            "- { id: old-bag, name: Old bag, treatment: GNN, read: 2026-04-01 }\n",
                            "labels.yaml",
                            Good,
                            new DateOnly(2026, 6, 1)
                        )
                        .Refusals
                )
                .ToString(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("since: 2020-02-05", "since: 2027-01-01", "until then it may be used up")]
    [InlineData("active: goneine", "active: gonein", "did you mean 'goneine'?")]
    [InlineData("countries: [gb]", "countries: [gp]", "did you mean 'gb'?")]
    [InlineData("  bag: Hand it back.\n", "", "without 'bag'")]
    [InlineData("from: { all: book }", "from: { countries: book, since: book }", "no source for 'bag'")]
    public void A_line_that_is_wrong_is_refused(string was, string now, string said) =>
        Assert.Contains(Fixture.Change(File, was, now).Load().Refusals, problem =>
            problem.Where.File == File && problem.ToString().Contains(said, StringComparison.Ordinal)
        );

    [Fact]
    public void The_shipped_list_answers_for_what_older_visits_name() =>
        Assert.Equal("chlorthal-dimethyl", ShippedRules.Knowledge.GoneAs("chlorthal-dimethyl-withdrawn")?.Id);
}
