using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;
using Record = WeedAdvisor.Knowledge.Records.Record;

namespace WeedAdvisor.Tests.Commands;

/// <summary>
/// The shipped rules: how much of what decides over a chemical may be from memory, and values traced to the source that
/// says them. The sources stand in <c>rules/sources.yaml</c>.
/// </summary>
public sealed class TracedValuesTests
{
    private static readonly Lazy<KnowledgeBase> s_knowledge = new(() => KnowledgeFolder.Load(Repository.Rules).Value!);

    // Restricted use has no limit here: the federal table was read in part, and what a registration restricts is from
    // memory for all. Entry intervals: 43 of 61 are from memory, and one in four was the aim. Public labels were read
    // of 16 actives; where none was read, the record names what was looked through. The figure may only fall.
    [Theory]
    [InlineData("rei-hours", 0.71)]
    [InlineData("organic-ok", 0.34)]
    [InlineData("uses-per-year", 0.34)]
    [InlineData("yearly-limit-kg-ai-ha", 0.34)]
    [InlineData("status", 0.5)]
    [InlineData("edible-ok", 0.5)]
    public void Of_what_decides_over_a_chemical_no_more_is_from_memory_than(string field, double most)
    {
        FieldSource[] values =
        [
            .. s_knowledge
                .Value.Treatments.Values.Concat<Record>(s_knowledge.Value.ActiveLimits.Values)
                .SelectMany(record => record.From.Values)
                .Where(value => value.Field == field),
        ];
        Assert.NotEmpty(values);
        int memory = values.Count(value => value.Sources.Contains("memory"));
        Assert.True(memory <= most * values.Length, $"{memory} of {values.Length}");
    }

    // The national list says what organic growers may use, and the statute that a use off the label is none. Neither
    // says how a chemical is spread, how often, or what it hurts.
    [Theory]
    [InlineData("cfr-205", "organic-ok")]
    [InlineData("usc-7-136j", "edible-ok")]
    public void A_law_is_named_only_for_what_it_speaks_of(string law, string field)
    {
        string[] others =
        [
            .. s_knowledge
                .Value.Treatments.Values.SelectMany(record => record.From.Values)
                .Where(value => value.Sources.Contains(law) && value.Field != "cautions")
                .Select(value => value.Field)
                .Distinct(),
        ];
        Assert.Equal([field], others);
    }

    // Where a practice belongs, to which plants and with which tools is our own sorting: a paper on one trial says none
    // of it. One list of sources under all of them was put there in bulk.
    [Fact]
    public void The_sorting_of_practices_does_not_hide_behind_papers()
    {
        string[] sorting = ["places", "stock-stages", "works-on", "needs-equipment", "enclosed-ok"];
        IEnumerable<string> bulk =
            from practice in s_knowledge.Value.Practices.Values
            let lists = practice
                .From.Values.Where(value => sorting.Contains(value.Field) && value.Sources.Length > 1)
                .Select(value => string.Join(", ", value.Sources))
            where lists.GroupBy(list => list).Any(same => same.Count() >= 3)
            select practice.Id;
        Assert.Empty(bulk);
    }

    /// <summary>
    /// Ten values with the place that says them: 7 CFR 205.601 (organic), 40 CFR 152.175 as far as it was read
    /// (restricted use), public label boxes (entry), NC State factsheets (water, amount), Newby 2007 and OSU
    /// (liverwort).
    /// </summary>
    [Theory]
    [InlineData("oxadiazon-granule", "yearly limit kg ai ha", "nc-oxadiazon")]
    [InlineData("oxadiazon-granule", "water in mm", "pnw-containers")]
    [InlineData("oxadiazon-granule", "organic ok", "cfr-205")]
    [InlineData("glufosinate-directed", "rei hours", "labels-structured")]
    [InlineData("dichlobenil-granule", "rei hours", "labels-structured")]
    [InlineData("pendimethalin-spray", "restricted use", "cfr-152-175, pnw-restricted")]
    [InlineData("simazine-spray", "edible ok", "usc-7-136j")]
    [InlineData("clethodim-over-top", "organic ok", "cfr-205")]
    [InlineData("isoxaben-yearly", "yearly limit kg ai ha", "nc-isoxaben")]
    [InlineData("liverwort", "control", "osu-hort-lw, osu-lw-water")]
    public void A_value_is_traced_to_its_source_by_show(string id, string field, string sources)
    {
        string text = Flat(CommandRun.Of("knowledge", "show", id, "--knowledge", Repository.Rules).Out);
        Assert.Matches($@"[ ,]{field}[^:]*: {sources}\b", text);
    }

    [Theory]
    [InlineData("oxadiazon-granule", "restricted use", "cfr-152-175, pnw-restricted")]
    [InlineData("pendimethalin-spray", "rei hours", "labels-structured")]
    [InlineData("glufosinate-directed", "rei hours", "labels-structured")]
    [InlineData("pendimethalin-spray", "restricted use", "cfr-152-175, pnw-restricted")]
    public void A_value_that_has_to_be_minded_is_traced_to_its_source_by_why(string id, string field, string sources)
    {
        string visit = Path.Combine(Repository.Rules, "visits", "demo-spring.yaml");
        string text = Flat(CommandRun.Of("why", visit, id, "--full", "--knowledge", Repository.Rules).Out);
        string told = text[text.IndexOf("WHERE THE VALUES COME FROM", StringComparison.Ordinal)..];
        Assert.Matches($@"{field}[^:]*: {sources}\b", told);
    }

    [Theory]
    [InlineData("2026-12-01", false)]
    [InlineData("2028-01-01", true)]
    public void What_was_checked_over_a_year_ago_is_told_by_check_and_show(string day, bool isOld)
    {
        var today = DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture);
        string check = Reports.CatalogueText.Counts(s_knowledge.Value, today);
        Assert.Equal(isOld, check.Contains("over a year ago", StringComparison.Ordinal));
        Assert.Equal(isOld, check.Contains("ratings/cw-spurge", StringComparison.Ordinal));
        string[] dated = ["oxadiazon-granule", "isoxaben-yearly", "prodiamine", "what-was-used-is-on-display"];
        foreach (string id in dated)
        {
            string text = Reports.CatalogueText.Show(
                Reports.Catalogue.KnowledgeCatalogue.Find(s_knowledge.Value, id, today),
                120
            );
            Assert.Contains("last checked: 2026-", text, StringComparison.Ordinal);
            Assert.Equal(isOld, text.Contains(", over a year ago", StringComparison.Ordinal));
            Assert.Equal(
                isOld && id == "oxadiazon-granule",
                text.Contains("ratings/cw-spurge, 2026-", StringComparison.Ordinal)
            );
        }
    }

    // Who was never held against a source does not say when; the check names him, and so does the record.
    [Theory]
    [InlineData("simazine", "actives")]
    [InlineData("goosegrass-and-group-14", "resistance")]
    [InlineData("users-are-trained-and-certified-there", "law")]
    [InlineData("d-limonene-unlimited", "limits")]
    public void What_was_never_checked_is_told_as_such_by_check_and_show(string id, string kind)
    {
        var today = new DateOnly(2026, 12, 1);
        string check = Flat(Reports.CatalogueText.Counts(s_knowledge.Value, today));
        string never = check[check.IndexOf("never held against a source:", StringComparison.Ordinal)..];
        Assert.Matches($@"{kind}: ([a-z0-9/-]+, )*{id}\b", never);
        string text = Reports.CatalogueText.Show(
            Reports.Catalogue.KnowledgeCatalogue.Find(s_knowledge.Value, id, today),
            120
        );
        Assert.Contains("last checked: never", text, StringComparison.Ordinal);
    }

    private static string Flat(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
