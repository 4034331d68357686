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

    // The sheets and guides of these records give amounts and intervals, and no number of uses.
    [Theory]
    [InlineData("prodiamine-granule")]
    [InlineData("prodiamine-spray")]
    [InlineData("isoxaben-prodiamine-granule")]
    [InlineData("dimethenamid-p-spray")]
    [InlineData("isoxaben-spray")]
    [InlineData("indaziflam-granule")]
    [InlineData("indaziflam-floor-spray")]
    public void Uses_of_a_year_that_no_source_gives_are_not_held(string treatment) =>
        Assert.Null(Treatment(treatment).UsesPerYear);

    // lbl-dith-ny prints 0.56 kg/ha for New York alone; of indaziflam no yearly amount was found.
    [Theory]
    [InlineData("dithiopyr")]
    [InlineData("indaziflam")]
    [InlineData("pendimethalin")]
    [InlineData("diquat")]
    public void Where_no_yearly_limit_was_found_none_is_held(string active) =>
        Assert.DoesNotContain(s_knowledge.ActiveLimits.Values, limit => limit.Active == active);

    // nc-prodiamine, nc-isoxaben, nc-smetolachlor, nc-flumi-gr, nc-oxadiazon, pnw-landscape-post, co-simazine: pounds
    // an acre and year x 1.1209.
    [Theory]
    [InlineData("prodiamine", 1.5)]
    [InlineData("isoxaben", 3.0)]
    [InlineData("S-metolachlor", 4.0)]
    [InlineData("flumioxazin", 0.75)]
    [InlineData("oxadiazon", 8.0)]
    [InlineData("bentazon", 2.0)]
    [InlineData("simazine", 4.0)]
    public void A_printed_limit_is_held_as_it_is_printed(string active, double poundsAnAcre) =>
        Assert.Equal(
            poundsAnAcre * 1.1209,
            (double)
                s_knowledge
                    .ActiveLimits.Values.Single(limit => limit.Active == active && limit.KgAiHaPerYear is not null)
                    .KgAiHaPerYear!,
            0.01
        );

    [Fact]
    public void Limits_are_held_for_seventeen_actives() =>
        Assert.Equal(
            17,
            s_knowledge
                .ActiveLimits.Values.Where(limit => !limit.IsUnlimited)
                .Select(limit => limit.Active)
                .Distinct(StringComparer.Ordinal)
                .Count()
        );

    // pnw-areas leaves it on top in midwinter; pnw-8930 works it into bare mineral soil. Never on pots.
    [Fact]
    public void Dichlobenil_goes_on_empty_ground_alone_and_both_ways_are_told()
    {
        Treatment treatment = Treatment("dichlobenil-granule");
        Assert.Equal(["granule-on-ground"], treatment.Applied);
        Assert.Equal(["none-present"], treatment.StockStages);
        Assert.Contains("mineral soil", treatment.What, StringComparison.Ordinal);
        Assert.Contains("midwinter", treatment.What, StringComparison.Ordinal);
    }

    // A pair of metazachlor's source was read as contents pages only: nothing of the record rests on it.
    [Fact]
    public void Of_metazachlor_no_value_that_decides_rests_on_pages_that_were_not_read() =>
        Assert.All(
            Treatment("metazachlor-spray").From.Values.Where(value => value.Sources.Contains("adas-2013")),
            value => Assert.Contains("memory", value.Sources)
        );

    // Sheets, trials and a leaflet on drift speak of no spreader.
    [Fact]
    public void Tools_are_common_practice_where_no_source_names_one() =>
        Assert.True(
            s_knowledge.Treatments.Values.Count(one => one.From.Of("needs-equipment") is ["common-practice"]) >= 42
        );

    // 40 CFR 156.208(c)(2): 48 hours where nothing else is printed.
    [Fact]
    public void Where_no_interval_was_read_forty_eight_hours_count()
    {
        Assert.True(s_knowledge.Treatments.Values.Count(one => one.ReiHours is null) >= 42);
        Assert.Equal(48, s_knowledge.Usual[UsualIds.EntryHours]);
    }

    // Means of three places and frosts of four stand in a source; all else of the 43 is from memory, and marked.
    [Fact]
    public void Forty_three_places_have_a_climate_and_say_where_it_is_from()
    {
        Assert.Equal(43, s_knowledge.Regions.Count);
        Assert.Equal("us", s_knowledge.Regions["colorado-front-range"].Country);
        Assert.Equal(["wrcc-denver"], s_knowledge.Regions["colorado-front-range"].From.Of("mean-temperature-c"));
        Assert.Equal(Hemisphere.South, s_knowledge.Regions["canterbury-plains"].Hemisphere);
        Assert.Contains(s_knowledge.Regions.Values, region => region.BorrowsMonths);
    }

    // A copy on a sharing site is not the publisher: its note says where it was read.
    [Fact]
    public void A_source_that_was_read_in_a_copy_says_so()
    {
        string[] hosts = ["docslib", "vdocuments", "studylib", "pdffox", "docbox", "yumpu", "pdfslide"];
        Source[] copies =
        [
            .. s_knowledge.Sources.Values.Where(one =>
                hosts.Any(host => one.Url?.Contains(host, StringComparison.Ordinal) == true)
            ),
        ];
        Assert.True(copies.Length > 30);
        Assert.All(copies, one => Assert.NotNull(one.Note));
    }

    private static Treatment Treatment(string id) => s_knowledge.Treatments[id];
}
