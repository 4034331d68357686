using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// A nursery's own records over the shipped ones: what they change, what they may not, and what is said.
/// </summary>
public sealed class LocalFolderTests
{
    [Fact]
    public void A_record_that_amends_a_shipped_one_keeps_what_it_does_not_say()
    {
        KnowledgeBase own = Good(("prices.yaml", "- { amends: labour-rate, value: 23 }\n"));
        Assert.Equal(23m, own.Prices["labour-rate"].Value);
        Assert.Equal(ShippedRules.Knowledge.Prices["labour-rate"].Unit, own.Prices["labour-rate"].Unit);
        Assert.Equal("local/prices.yaml", own.Prices["labour-rate"].Where.File);
        Assert.Equal(ShippedRules.Knowledge.Prices.Count, own.Prices.Count);
    }

    [Fact]
    public void A_number_of_the_nursery_is_certain_unless_it_gives_a_range()
    {
        Assert.NotNull(ShippedRules.Knowledge.Prices["labour-rate"].Range);
        // Far outside the shipped range, which was that of the shipped price.
        Assert.Null(Good(("prices.yaml", "- { amends: labour-rate, value: 93 }\n")).Prices["labour-rate"].Range);
        Assert.Equal(
            new Span(80, 99),
            Good(("prices.yaml", "- { amends: labour-rate, value: 93, range: [80, 99] }\n")).Prices["labour-rate"].Range
        );
        Assert.Null(
            Good(("usual.yaml", "- { amends: seed-blown-in-percent-of-base, value: 90 }\n"))
                .Usual.Records["seed-blown-in-percent-of-base"]
                .Range
        );
    }

    [Fact]
    public void What_the_nursery_says_otherwise_is_its_own_word_and_the_rest_keeps_its_sources()
    {
        KnowledgeBase own = Good(
            ("prices.yaml", "- { amends: labour-rate, value: 23 }\n"),
            ("practices/ours.yaml", "- { amends: hand-weed-now, what: Pull it., also: { places: [peat-shed] } }\n"),
            ("places.yaml", "- { id: peat-shed, text: the peat shed }\n")
        );
        Practice shipped = ShippedRules.Knowledge.Practices["hand-weed-now"],
            ours = own.Practices["hand-weed-now"];
        Assert.Equal(["own-folder"], own.Prices["labour-rate"].From.Of("value"));
        Assert.Equal(["own-folder"], ours.From.Of("what"));
        Assert.Equal([.. shipped.From.Of("places"), "own-folder"], ours.From.Of("places"));
        Assert.Equal(shipped.From.Of("stock-stages"), ours.From.Of("stock-stages"));
    }

    [Fact]
    public void The_stamp_tells_the_local_part_and_the_shipped_part_stays()
    {
        KnowledgeBase own = Good(("prices.yaml", "- { amends: labour-rate, value: 23 }\n"));
        Assert.Equal(ShippedRules.Knowledge.Stamp.Hash, own.Stamp.Hash);
        Assert.NotNull(own.Stamp.Local);
        Assert.Contains($"+local-{own.Stamp.Local[..12]}", own.Stamp.Brief, StringComparison.Ordinal);
        Assert.NotEqual(own.Stamp, Good(("prices.yaml", "- { amends: labour-rate, value: 24 }\n")).Stamp);
    }

    [Fact]
    public void A_place_of_ones_own_takes_the_practices_of_the_place_it_is_like_and_no_chemical()
    {
        KnowledgeBase own = Good(("places.yaml", "- { id: peat-shed, text: the peat shed, like: substrate-pile }\n"));
        Assert.Contains(own.QuestionOf("place")!.Choices, choice => choice.Id == "peat-shed");
        Assert.All(own.Practices.Values, practice =>
            Assert.Equal(practice.Places.Contains("substrate-pile"), practice.Places.Contains("peat-shed"))
        );
        Assert.All(own.Treatments.Values, treatment => Assert.False(treatment.Places.Contains("peat-shed")));
    }

    [Fact]
    public void A_lifted_bar_is_gone_and_told()
    {
        const string bar = "practice-not-done-under-glass";
        KnowledgeBase own = Good(("lifts.yaml", $"- {{ bar: {bar}, because: our house has a roof that opens }}\n"));
        Assert.Contains(ShippedRules.Knowledge.Judgements, judgement => judgement.Id == bar);
        Assert.DoesNotContain(own.Judgements, judgement => judgement.Id == bar);
        Assert.Equal("our house has a roof that opens", Assert.Single(own.Stamp.Lifted).Because);
    }

    [Fact]
    public void An_active_of_ones_own_tells_the_group_of_an_earlier_use()
    {
        KnowledgeBase own = Good(
            (
                "actives/ours.yaml",
                "- { id: tembotrione, name: tembotrione, group: \"27\", checked: 2026-11-01, "
                    + "from: { all: own-folder } }\n"
            )
        );
        Assert.Contains("tembotrione", own.Actives());
        var past = new PastApplication(null, null, null, WordSet.Empty) { Actives = WordSet.Of(["tembotrione"]) };
        Assert.Equal(WordSet.Of(["27"]), PastProduct.Of(past, own).Groups);
    }

    [Theory]
    [InlineData("treatments/ours.yaml", "- { id: x }\n", "local/treatments/ours.yaml: found a file of chemicals")]
    [InlineData("limits.yaml", "- { id: x }\n", "found a file of what no nursery can change for itself")]
    [InlineData("prises.yaml", "- { id: x }\n", "did you mean 'prices.yaml'?")]
    [InlineData(
        "prices.yaml",
        "- { amends: labor-rate, value: 23 }\n",
        "local/prices.yaml:1:13: found 'labor-rate'; expected the id of a shipped record of this kind; did you mean "
            + "'labour-rate'?"
    )]
    [InlineData("prices.yaml", "- { amends: labour-rate, value: dear }\n", "local/prices.yaml:1:33: found 'dear'")]
    [InlineData("actives/ours.yaml", "- { amends: glyphosate, group: \"2\" }\n", "shipped ones of this kind stay")]
    [InlineData("actives/ours.yaml", "- { amends: simazine, water-hazard: false }\n", "shipped ones of this kind stay")]
    [InlineData(
        "actives/ours.yaml",
        "- { id: glyphosate, name: glyphosate two, group: \"2\", checked: 2026-11-01, from: { all: own-folder } }\n",
        "the id 'glyphosate' a second time"
    )]
    [InlineData(
        "actives/ours.yaml",
        "- { id: my-one, name: Glyphosate, group: \"2\", checked: 2026-11-01, from: { all: own-folder } }\n",
        "local/actives/ours.yaml:1:3: found the active 'Glyphosate' a second time"
    )]
    [InlineData("crops.yaml", "- { amends: boxwood, name: Box }\n", "shipped ones of this kind stay")]
    [InlineData("crops.yaml", "- { amends: boxwood, also: { is-a: [junipers] } }\n", "shipped ones of this kind stay")]
    [InlineData(
        "usual.yaml",
        "- { amends: established-weeks-after-potting, value: 0 }\n",
        "bars on chemicals hang on it"
    )]
    [InlineData("usual.yaml", "- { amends: entry-hours-when-unknown, value: 1 }\n", "bars on chemicals hang on it")]
    [InlineData("regions.yaml", "- { amends: east-texas, country: us }\n", "which law holds is not yours to say")]
    [InlineData("lifts.yaml", "- { bar: no-such-bar, because: x }\n", "found 'no-such-bar'")]
    [InlineData(
        "lifts.yaml",
        "- { bar: only-what-is-registered-now, because: x }\n",
        "which bars chemicals, or behind which law or certain injury stand"
    )]
    [InlineData(
        "lifts.yaml",
        "- { bar: treatment-must-be-meant-for-this-place, because: x }\n",
        "which bars chemicals"
    )]
    [InlineData("places.yaml", "- { id: container-yard, text: again }\n", "a second time")]
    [InlineData(
        "places.yaml",
        "- { id: peat-shed, text: shed, like: substrate-pil }\n",
        "did you mean 'substrate-pile'?"
    )]
    [InlineData("places.yaml", "- { id: Peat Shed, text: shed }\n", "expected a place")]
    public void What_a_local_folder_may_not_hold_is_named_with_its_place(string file, string text, string said) =>
        Assert.Contains(Load((file, text)).Refusals, problem =>
            problem.ToString().Contains(said, StringComparison.Ordinal)
        );

    private static KnowledgeBase Good(params (string File, string Text)[] files)
    {
        Outcome<KnowledgeBase, Problem> outcome = Load(files);
        Assert.True(outcome.IsGood, string.Join('\n', outcome.Refusals));
        return outcome.Value;
    }

    private static Outcome<KnowledgeBase, Problem> Load(params (string File, string Text)[] files)
    {
        using var folder = new TempFolder();
        foreach ((string file, string text) in files)
            folder.Write(file, text);
        return KnowledgeFolder.Load(Repository.Rules, KnowledgeScope.WithoutWorkedVisits, folder.Path);
    }
}
