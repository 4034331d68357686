using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>Codes against the published lists transcribed in <c>Tables/</c>.</summary>
public class PublishedCodesTests
{
    private static readonly string[] s_unclassified = ["surface-oxidiser", "disinfectant", "burn-down", "acid-or-oil"];

    private static IEnumerable<Active> Actives =>
        ShippedRules.Knowledge.Treatments.Values.SelectMany(treatment => treatment.Actives);

    // HRAC/WSSA classification of sites of action; where each line was read, or that it is from memory, stands in the
    // table.
    [Fact]
    public void Every_active_has_the_group_of_the_published_list()
    {
        Dictionary<string, string> groups = Table
            .Read("site-of-action-groups.csv")
            .ToDictionary(cell => cell[0], cell => cell[1]);
        Assert.All(Actives.Where(active => active.Group is not null), active =>
            Assert.Equal((active.Name, groups.GetValueOrDefault(active.Name)), (active.Name, active.Group))
        );
    }

    // The letters in use before 2020, and numbers that changed then; from memory, like the table's third cells.
    [Fact]
    public void Every_earlier_code_belongs_to_the_active()
    {
        var earlier = Table.Read("site-of-action-groups.csv").ToDictionary(cell => cell[0], cell => cell[2].Split(','));
        Active[] renamed = [.. Actives.Where(active => active.Was is not null)];
        Assert.NotEmpty(renamed);
        Assert.All(renamed, active => Assert.Contains(active.Was, earlier[active.Name]));
    }

    [Fact]
    public void A_group_has_one_site_of_action() =>
        Assert.All(Actives.Where(active => active.SiteOfAction is not null).GroupBy(active => active.Group), group =>
            Assert.Single(group.Select(active => active.SiteOfAction).Distinct())
        );

    [Fact]
    public void Only_what_burns_bleaches_or_cleans_is_without_a_group() =>
        Assert.All(
            ShippedRules.Knowledge.Treatments.Values.Where(treatment =>
                treatment.Actives.Any(active => active.Group is null)
            ),
            treatment => Assert.Contains(treatment.Role, s_unclassified)
        );

    // CropLife International, Technical Monograph no. 2, 7th edition (2017): international coding system for
    // formulations.
    [Fact]
    public void Every_formulation_code_is_in_the_international_list()
    {
        Dictionary<string, string> codes = Table
            .Read("formulation-codes.csv")
            .ToDictionary(cell => cell[0], cell => cell[1]);
        Assert.All(ShippedRules.Knowledge.Treatments.Values, treatment =>
            Assert.True(codes.ContainsKey(treatment.Formulation), $"{treatment.Id}: {treatment.Formulation}")
        );
        Assert.All(ShippedRules.Knowledge.Vocabulary["formulation"].Words, word =>
            Assert.Contains(codes[word.Key].Split(' ', ',')[0], word.Value, StringComparison.OrdinalIgnoreCase)
        );
    }
}
