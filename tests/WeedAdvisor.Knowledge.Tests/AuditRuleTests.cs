using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// Rows of docs/audit.md that speak of rules, questions and whole files. What is expected is written down here from the
/// sources that each row names, and from none of the records.
/// </summary>
public sealed class AuditRuleTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    // judge-2004 (trifluralin on bark), malaysia-pendi, long-2014, savage-jordan: what was seen to go faster in heat.
    [Fact]
    public void Heat_is_said_to_end_just_what_was_seen_to_fade_in_it()
    {
        Judgement rule = Rule("heat-ends-it-sooner");
        Assert.IsType<Consequence.Caution>(rule.Then);
        Assert.Equal(
            WordSet.Of(["trifluralin", "benfluralin", "pendimethalin", "S-metolachlor"]),
            Words(rule, FactKind.Treatment, "actives")
        );
    }

    // nc-oxadiazon names azalea as sensitive; frank-1985 and beste-frank saw no harm in two years: a conflict, no ban.
    [Fact]
    public void On_oxadiazon_and_azaleas_there_is_a_doubt_that_tells_both_sides_and_no_ban()
    {
        Judgement rule = Rule("on-oxadiazon-and-azaleas-the-sources-differ");
        Assert.True(Assert.IsType<Consequence.Argument>(rule.Then).IsDoubt);
        Assert.Contains("sensitive", rule.Because, StringComparison.Ordinal);
        Assert.Contains("without harm", rule.Because, StringComparison.Ordinal);
        Treatment[] holding = [.. Holding("oxadiazon").Where(one => one.ReachesCrop)];
        Assert.NotEmpty(holding);
        Assert.All(holding, one => Assert.DoesNotContain("azaleas", one.CropsHurt));
        Assert.All(holding, one => Assert.Contains("ericaceous-shrubs", one.CropsHurt));
        Assert.Contains("ericaceous-shrubs", s_knowledge.Crops["rhododendrons"].Parents);
        Assert.DoesNotContain("ericaceous-shrubs", s_knowledge.Crops["azaleas"].Parents);
    }

    // neal-2011: two to three weeks in the open; the longer of them holds for what gives off vapour.
    [Fact]
    public void Two_to_three_open_weeks_are_asked_for_and_the_longer_is_kept_for_vapour()
    {
        Judgement rule = Rule("volatile-never-just-before-covering");
        Assert.Contains("Two to three weeks", rule.Because, StringComparison.Ordinal);
        Assert.Equal(new AttributeTest.Limit(Comparison.AtMost, 21), Test(rule, FactKind.Site, "days-to-covering"));
        Assert.Equal(WordSet.Of(["moderate", "high"]), Words(rule, FactKind.Treatment, "volatile"));
    }

    // cochran-2009 and bartley-2015: spurge wants 2.5 cm of bark; sidhu-mulch-2024: liverwort was held by 0.6 cm.
    [Theory]
    [InlineData("bark-too-thin-to-work", 2.5)]
    [InlineData("bark-too-thin-for-what-may-come", 2.5)]
    [InlineData("bark-too-thin-even-for-liverwort", 0.6)]
    public void How_thin_bark_may_be_depends_on_what_it_is_to_hold(string rule, double cm) =>
        Assert.Equal(
            new AttributeTest.Limit(Comparison.LessThan, (decimal)cm),
            Test(Rule(rule), FactKind.Site, "mulch-depth")
        );

    // hewson-2012: discs gape round many stems.
    [Fact]
    public void Discs_are_not_advised_on_prostrate_junipers()
    {
        Judgement against = Rule("discs-do-not-fit-many-stems");
        Assert.True(Assert.IsType<Consequence.Argument>(against.Then).IsDoubt);
        Assert.Contains("prostrate-junipers", Words(against, FactKind.Crop, "is-a"));
        AttributeTest.Every kinds = Assert.IsType<AttributeTest.Every>(
            Test(Rule("discs-for-single-stems"), FactKind.Crop, "is-a")
        );
        Assert.Contains(new AttributeTest.Word(WordSet.Of(["prostrate-junipers"]), Negated: true), kinds.Tests);
    }

    // uconn-gh and cloyd-clean name these; mouse-ear chickweed is in neither.
    [Fact]
    public void Weeds_that_carry_viruses_are_those_that_the_sources_name() =>
        Assert.DoesNotContain(
            "chickweed-mouseear",
            Words(Rule("weeds-in-houses-carry-crop-viruses"), FactKind.Weed, "id")
        );

    // udel-drift: more than a mile; uc-outside-gh: nothing volatile round a house. Far from houses neither bars.
    [Theory]
    [InlineData("no-vapour-beside-a-house", "beside")]
    [InlineData("growth-regulators-stay-away-from-houses", "beside within-a-mile")]
    public void On_a_strip_it_is_the_house_that_bars(string rule, string near)
    {
        Assert.IsType<Consequence.Bar>(Rule(rule).Then);
        Assert.Equal(WordSet.Of(near.Split(' ')), Words(Rule(rule), FactKind.Site, "houses-near"));
        Assert.Contains(s_knowledge.QuestionOf("houses-near")!.Choices, answer => answer.Id == "none-near");
    }

    // A definition needs no doubt: what a rule only gives another name is certain.
    [Theory]
    [InlineData("bare-mix-is-an-open-bed")]
    [InlineData("plants-that-flower-are-about-to-seed")]
    [InlineData("ripe-weeds-are-seeding")]
    [InlineData("the-film-goes-on-soon")]
    [InlineData("run-off-from-here-reaches-water")]
    [InlineData("an-edible-crop-makes-the-place-edible")]
    [InlineData("an-edible-crop-under-the-same-roof")]
    [InlineData("more-went-on-than-is-published")]
    public void What_is_true_by_definition_is_certain(string rule) =>
        Assert.Equal(1, Assert.IsType<Consequence.MakesFinding>(Rule(rule).Then).Certainty);

    // ncsu-weedfreq2: no weed of the area that seeds within a month may be up where another is said to wait.
    [Fact]
    public void No_seedling_waits_beside_one_that_may_not()
    {
        Judgement may = Rule("seedlings-can-wait-a-round-when-hours-are-short");
        Pattern.Fact other = Assert.IsType<Pattern.Fact>(Assert.Single(may.When.OfType<Pattern.None>()).Inner);
        AttributeTest soon = other.Tests.Single(test => test.Attribute == "weeks-to-first-seed").Test;
        Assert.Equal(new AttributeTest.Limit(Comparison.AtMost, 4), soon);
        Assert.Equal(soon, Test(Rule("fast-weeds-never-wait-a-round"), FactKind.Weed, "weeks-to-first-seed"));
    }

    [Fact]
    public void The_near_duplicates_are_one_rule_each()
    {
        Assert.Single(s_knowledge.Judgements, rule =>
            rule.Then is Consequence.Caution { Text: var text }
            && text.Contains("flame", StringComparison.OrdinalIgnoreCase)
            && text.Contains("Film", StringComparison.Ordinal)
        );
        Assert.Single(s_knowledge.Judgements, rule =>
            rule.Then is Consequence.Bar
            && Find(rule, FactKind.Treatment, "edible-ok") is AttributeTest.Word { Words: var words }
            && words.Contains("false")
        );
    }

    // ccr-3-6400(d) and 6800(a): simazine and bentazon; pnw-restricted: Washington and three actives.
    [Theory]
    [InlineData("california-restricts-what-reached-its-ground-water", "simazine bentazon")]
    [InlineData("california-asks-a-permit-for-restricted-materials", "simazine bentazon")]
    [InlineData("washington-restricts-some-for-ground-water", "simazine S-metolachlor clopyralid")]
    public void Two_states_restrict_what_their_lists_name(string rule, string actives)
    {
        Assert.Equal(WordSet.Of(actives.Split(' ')), Words(Rule(rule), FactKind.Treatment, "actives"));
        Assert.Equal("us", Rule(rule).Law!.Country);
    }

    // Usual widths across the top, from memory; the classes are the trade's.
    [Theory]
    [InlineData("#1", 16.5)]
    [InlineData("#3", 25.4)]
    [InlineData("#6", 31.8)]
    [InlineData("#100", 96.5)]
    [InlineData("2 litre", 17)]
    public void A_pot_can_be_told_by_its_class_or_litres(string name, double cm)
    {
        Question width = s_knowledge.QuestionOf("pot-width")!;
        Assert.Equal((decimal)cm, width.Sizes.Single(size => size.Name == name).Value);
        Assert.Contains("sizes", width.Memory);
    }

    // What could not be said of a place: each is a word of an answer, and some rule reads it.
    [Theory]
    [InlineData("neighbours", "people-and-crop")]
    [InlineData("plants-in-house", "in-a-joined-bay")]
    [InlineData("waters-in-evenly", "no")]
    [InlineData("plant-worth", "yes")]
    [InlineData("equipment", "handgun")]
    [InlineData("equipment", "tractor-sprayer")]
    [InlineData("ships-to", "other-states")]
    [InlineData("ships-to", "abroad")]
    [InlineData("comes-next", "plants-come")]
    public void What_could_not_be_said_is_an_answer_that_rules_read(string question, string answer)
    {
        Assert.Contains(s_knowledge.QuestionOf(question)!.Choices, one => one.Id == answer);
        Assert.Contains(s_knowledge.Judgements, rule =>
            rule.When.OfType<Pattern.Fact>()
                .SelectMany(fact => fact.Tests)
                .Any(test => Flat(test.Test).Any(word => word.Words.Contains(answer)))
        );
    }

    [Fact]
    public void A_field_edge_is_told_as_the_strip_that_it_is() =>
        Assert.Contains(
            "field edge",
            s_knowledge.QuestionOf("place")!.Choices.Single(one => one.Id == "noncrop-strip").Text,
            StringComparison.Ordinal
        );

    // Field rows are no place here: EPTC and what is worked in as an emulsion are left out.
    [Fact]
    public void What_belongs_in_field_rows_is_no_treatment_here()
    {
        Assert.Empty(Holding("EPTC"));
        Assert.DoesNotContain(Holding("trifluralin"), one => one.Form == "spray");
    }

    private static Judgement Rule(string id) => s_knowledge.Judgements.Single(rule => rule.Id == id);

    private static IEnumerable<Treatment> Holding(string active) =>
        s_knowledge.Treatments.Values.Where(one => one.Actives.Any(held => held.Name == active));

    private static AttributeTest Test(Judgement rule, FactKind kind, string attribute) =>
        Find(rule, kind, attribute) ?? throw new InvalidOperationException($"{rule.Id} does not test {attribute}");

    private static AttributeTest? Find(Judgement rule, FactKind kind, string attribute) =>
        rule
            .When.OfType<Pattern.Fact>()
            .Where(fact => fact.Kind == kind)
            .SelectMany(fact => fact.Tests)
            .FirstOrDefault(test => test.Attribute == attribute)
            ?.Test;

    private static WordSet Words(Judgement rule, FactKind kind, string attribute) =>
        Assert.IsType<AttributeTest.Word>(Test(rule, kind, attribute)).Words;

    private static IEnumerable<AttributeTest.Word> Flat(AttributeTest test) =>
        test switch
        {
            AttributeTest.Word word => [word],
            AttributeTest.Every every => every.Tests.SelectMany(Flat),
            _ => [],
        };
}
