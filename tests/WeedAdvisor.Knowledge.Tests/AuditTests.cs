using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// Rows of docs/audit.md, held against the records of today. The values are written down here from the sources that
/// each row names, and from none of the records.
/// </summary>
public sealed class AuditTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    // HRAC list of 2020: not classified; 15 (K3) before.
    [Fact]
    public void Napropamide_is_in_no_group_and_was_in_fifteen()
    {
        ActiveIngredient napropamide = s_knowledge.Ingredients["napropamide"];
        Assert.Equal("0", napropamide.Group);
        Assert.Equal("15", napropamide.WasNumber);
    }

    // In pots 4 to 12 weeks (from memory); its pairs are printed as 4 to 8 and 6 to 12. Judge 2004: trifluralin held
    // 3 days and more in summer.
    [Theory]
    [InlineData("prodiamine-granule", 4, 12)]
    [InlineData("prodiamine-spray", 4, 12)]
    [InlineData("trifluralin-granule", 0.4, 8)]
    public void A_preventive_lasts_in_pots_as_long_as_it_was_seen_to(string treatment, double low, double high) =>
        Assert.Equal(new Span((decimal)low, (decimal)high), Treatment(treatment).ResidualWeeks);

    // Labels as transcribed for worker safety; the RED of diquat (EPA-738-F-95-015): 7 days for the time being.
    [Theory]
    [InlineData("clethodim-over-top", 24)]
    [InlineData("triclopyr-noncrop", 48)]
    [InlineData("hydrogen-peroxide-peroxyacetic-acid", 4)]
    [InlineData("trifluralin-granule", 12)]
    [InlineData("diquat-floor-spray", 168)]
    public void Nobody_goes_in_before_the_longest_printed_interval(string treatment, int hours) =>
        Assert.Equal(hours, Treatment(treatment).ReiHours?.High);

    // A granule label of 2024-11: CAUTION. A label of clethodim with 26.4 %: WARNING.
    [Theory]
    [InlineData("trifluralin-granule", "caution")]
    [InlineData("clethodim-over-top", "warning")]
    public void The_signal_word_is_that_of_a_label(string treatment, string word) =>
        Assert.Equal(word, Treatment(treatment).SignalWord);

    // 7 CFR 205.601(a)(8) and (b)(1), NOP 5034-2; of pelargonic acid near food nothing was found: the label is asked.
    [Fact]
    public void Organic_growing_and_food_are_as_the_law_says_or_left_to_the_label()
    {
        Assert.True(Treatment("ammonium-nonanoate-floor-spray").OrganicOk);
        Assert.False(Treatment("ammonium-nonanoate-floor-spray").EdibleOk);
        Assert.True(Treatment("sodium-carbonate-peroxyhydrate").OrganicOk);
        Assert.Null(Treatment("sodium-carbonate-peroxyhydrate-over-top").OrganicOk);
        Assert.False(Treatment("pelargonic-acid-floor-spray").OrganicOk);
        Assert.Null(Treatment("pelargonic-acid-floor-spray").EdibleOk);
    }

    // neal-2005: three uses of all products; pnw-fieldpost: 2.24 kg/ha a year sprayed. No record says more.
    [Fact]
    public void Oxyfluorfen_has_one_limit_and_no_record_says_more()
    {
        Treatment[] holding =
        [
            .. s_knowledge.Treatments.Values.Where(one => one.Actives.Any(active => active.Name == "oxyfluorfen")),
        ];
        Assert.NotEmpty(holding);
        Assert.All(holding, one => Assert.InRange(one.UsesPerYear ?? 0, 0, 3));
        Assert.Equal(3, s_knowledge.ActiveLimits["oxyfluorfen-uses"].UsesPerYear);
        Assert.Equal(2.24m, s_knowledge.ActiveLimits["oxyfluorfen-sprays"].KgAiHaPerYear);
    }

    // A policy of this knowledge: guides list both for floors, none says that plants may stay in.
    [Theory]
    [InlineData("indaziflam-floor-spray")]
    [InlineData("diquat-floor-spray")]
    public void A_floor_spray_kept_for_empty_houses_says_that_no_source_asks_for_it(string treatment)
    {
        Assert.Equal("empty-house", Treatment(treatment).EnclosedUse);
        Assert.Contains(Treatment(treatment).Cautions, told =>
            told.Contains("not of a source", StringComparison.Ordinal)
        );
    }

    // kim-2022 and dahlquist-2007: seed wants 60 C for an hour; half an hour is a figure for diseases.
    [Fact]
    public void Mix_is_steamed_for_an_hour() =>
        Assert.Contains("60 C for an hour", s_knowledge.Practices["steam-mix"].What, StringComparison.Ordinal);

    // The label that was read is of another product: no rate is taken from it.
    [Fact]
    public void Fluazifop_has_no_rate() => Assert.Empty(Treatment("fluazifop-over-top").Rates);

    // Acids, oils and soaps burn; what goes into the plant, and diquat, are told apart from them.
    [Fact]
    public void The_role_of_acids_and_oils_holds_nothing_else() =>
        Assert.Equal(
            [
                "acetic-acid-spray",
                "ammonium-nonanoate-floor-spray",
                "caprylic-capric-acid-spray",
                "cinnamaldehyde-experimental",
                "d-limonene-spray",
                "essential-oils-experimental",
                "pelargonic-acid-floor-spray",
                "sodium-bicarbonate-experimental",
            ],
            s_knowledge.Treatments.Values.Where(one => one.Role == "acid-or-oil").Select(one => one.Id)
        );

    [Fact]
    public void What_was_one_record_is_as_many_as_there_are_kinds() =>
        Assert.All(
            [
                "bindweed-field",
                "bindweed-hedge",
                "silvery-thread-moss",
                "moss-cord",
                "moss-purple",
                "crescent-cup-liverwort",
                "liverwort",
            ],
            weed => Assert.Contains(weed, s_knowledge.Weeds.Keys)
        );

    // porter-parish-1993: 72 to 87 percent of broadcast granules, 48 to 75 in bands.
    [Fact]
    public void The_loss_of_granules_is_the_printed_one() =>
        Assert.Contains(s_knowledge.Judgements, rule =>
            rule.Because.Contains("72 to 87 percent", StringComparison.Ordinal)
            && rule.Because.Contains("48 to 75", StringComparison.Ordinal)
        );

    [Fact]
    public void Sacramento_has_a_winter_rain_climate() =>
        Assert.Equal("winter-rain", s_knowledge.Regions["central-valley-california"].EmergenceZone);

    private static Treatment Treatment(string id) => s_knowledge.Treatments[id];
}
