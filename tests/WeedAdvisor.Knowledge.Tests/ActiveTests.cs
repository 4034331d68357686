using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>What is true of an active stands once, and treatments have it from there.</summary>
public sealed class ActiveTests
{
    private const string Active = "actives/oxadine.yaml";
    private const string Treatment = "treatments/oxadine-granules.yaml";
    private static readonly ImmutableArray<string> s_vapour = ["none", "low", "moderate", "high"];

    private const string Second =
        "- { id: fumine, name: fumine, group: \"3\", volatile: high, root-inhibitor: true, water-hazard: false, "
        + "checked: 2026-11-25, from: { all: leaflet } }\n";

    [Fact]
    public void A_treatment_has_group_site_and_hazards_from_its_active_with_their_sources()
    {
        Treatment treatment = FixtureKnowledge.Good.Treatments["oxadine-granules"];
        Assert.Equal([new Active("oxadine", "14", "oxidase", "E")], treatment.Actives);
        Assert.Equal(("low", false, true), (treatment.Volatile, treatment.RootInhibitor, treatment.WaterHazard));
        Assert.Equal(["book"], treatment.From.Of("volatile"));
        Assert.Equal(["actives", "root-inhibitor", "volatile", "water-hazard"], treatment.From.Inherited.Order());
        Assert.DoesNotContain(treatment.From.Own, value => value.Field == "volatile");
    }

    [Fact]
    public void A_mixture_has_the_worst_of_its_actives_by_the_source_of_that_one()
    {
        Treatment treatment = new FixtureKnowledge()
            .With("actives/fumine.yaml", Second)
            .Change(Treatment, "actives: [oxadine]", "actives: [oxadine, fumine]")
            .Load()
            .Value!.Treatments["oxadine-granules"];
        Assert.Equal(("high", true, true), (treatment.Volatile, treatment.RootInhibitor, treatment.WaterHazard));
        Assert.Equal(["leaflet"], treatment.From.Of("volatile"));
        Assert.Equal(["leaflet"], treatment.From.Of("root-inhibitor"));
        Assert.Equal(["book"], treatment.From.Of("water-hazard"));
    }

    [Fact]
    public void A_treatment_may_differ_by_a_published_source()
    {
        Treatment treatment = new FixtureKnowledge()
            .Change(Treatment, "drift-hazard: false", "drift-hazard: false\n  volatile: high")
            .Load()
            .Value!.Treatments["oxadine-granules"];
        Assert.Equal("high", treatment.Volatile);
        Assert.DoesNotContain("volatile", treatment.From.Inherited);
    }

    [Theory]
    [InlineData("volatile: low", "book", "found 'volatile: low', as its actives have it; expected no key 'volatile'")]
    [InlineData("root-inhibitor: false", "book", "found 'root-inhibitor: false', as its actives have it")]
    [InlineData("volatile: none", "memory", "found 'volatile' other than its actives have it, without a published")]
    [InlineData("water-hazard: false", "memory", "found 'water-hazard' other than its actives have it, without a")]
    [InlineData("water-hazard: false", "common-practice", "found 'water-hazard' other than its actives have it")]
    [InlineData("group: \"15\"", "book", "found the key 'group'")]
    public void What_a_treatment_says_itself_of_its_actives_is_refused_unless_it_differs_by_a_source(
        string said,
        string source,
        string problem
    ) =>
        Assert.Contains(
            problem,
            Assert
                .Single(
                    new FixtureKnowledge()
                        .Change(Treatment, "drift-hazard: false", $"drift-hazard: false\n  {said}")
                        .Change(Treatment, "all: book", $"all: {source}")
                        .Change(Treatment, "  checked:", "  searched: [book]\n  checked:")
                        .Load()
                        .Refusals
                )
                .ToString(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(
        "  volatile: low\n",
        "",
        Treatment,
        "a treatment without 'volatile', which 'oxadine' does not say either"
    )]
    [InlineData("volatile: low", "volatile: lw", Active, "did you mean 'low'?")]
    [InlineData("id: oxadine", "id: oxadin", Treatment, "found 'oxadine'; expected the id of an active: oxadin")]
    [InlineData("checked: 2026-11-25", "checkd: 2026-11-25", Active, "found the key 'checkd'")]
    [InlineData(
        "from: { all: book }",
        "from: { all: memory }",
        Active,
        "found 'checked' in an active that names no source"
    )]
    [InlineData("from: { all: book }", "from: { group: book }", Active, "no source for 'was'")]
    public void What_is_wrong_with_an_active_is_said_where_it_shows(
        string was,
        string now,
        string file,
        string problem
    ) =>
        Assert.Contains(new FixtureKnowledge().Change(Active, was, now).Load().Refusals, one =>
            one.Where.File == file && one.ToString().Contains(problem, StringComparison.Ordinal)
        );

    [Theory]
    [InlineData("name: fumine", "name: Oxadine")]
    [InlineData("name: fumine", "name: fumine, also-called: [oxy-adine]")]
    public void No_two_actives_share_a_name(string was, string now) =>
        Assert.Contains(
            "a second time; expected another name: actives/",
            Assert
                .Single(
                    new FixtureKnowledge()
                        .With("actives/fumine.yaml", Second.Replace(was, now, StringComparison.Ordinal))
                        .Load()
                        .Refusals
                )
                .ToString(),
            StringComparison.Ordinal
        );

    // The oracle reads the records of the actives by itself: the highest word, and whether any of them says yes.
    [Fact]
    public void Every_shipped_treatment_has_the_worst_of_its_actives()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        Dictionary<string, ActiveIngredient> byName = knowledge.Ingredients.Values.ToDictionary(one => one.Name);
        Assert.All(knowledge.Treatments.Values, treatment =>
        {
            ActiveIngredient[] held = [.. treatment.Actives.Select(active => byName[active.Name])];
            Assert.Equal(held.Select(one => one.Group), treatment.Actives.Select(active => active.Group));
            Assert.Equal(held.Select(one => one.Was), treatment.Actives.Select(active => active.Was));
            if (treatment.From.Inherited.Contains("volatile"))
                Assert.Equal(held.Max(one => s_vapour.IndexOf(one.Volatile!)), s_vapour.IndexOf(treatment.Volatile));
            if (treatment.From.Inherited.Contains("root-inhibitor"))
                Assert.Equal(held.Any(one => one.RootInhibitor!.Value), treatment.RootInhibitor);
            if (treatment.From.Inherited.Contains("water-hazard"))
                Assert.Equal(held.Any(one => one.WaterHazard!.Value), treatment.WaterHazard);
        });
    }
}
