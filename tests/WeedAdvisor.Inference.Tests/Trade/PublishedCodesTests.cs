using WeedAdvisor.Inference.Tests.Fixtures;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>Codes against the published lists transcribed in <c>Tables/</c>.</summary>
public class PublishedCodesTests
{
    private static readonly string[] s_unclassified = ["surface-oxidiser", "disinfectant", "burn-down"];

    // HRAC/WSSA classification of sites of action; where each line was read, or that it is from memory, stands in the table.
    [Fact]
    public void Every_active_has_the_group_of_the_published_list()
    {
        Dictionary<string, string> groups = Table.Read("site-of-action-groups.csv").ToDictionary(cell => cell[0], cell => cell[1]);
        Assert.All(
            ShippedKnowledge.Knowledge.Treatments.Values.SelectMany(treatment => treatment.Actives).Where(active => active.Group is not null),
            active => Assert.Equal((active.Name, groups.GetValueOrDefault(active.Name)), (active.Name, active.Group)));
    }

    [Fact]
    public void Only_what_burns_bleaches_or_cleans_is_without_a_group() => Assert.All(
        ShippedKnowledge.Knowledge.Treatments.Values.Where(treatment => treatment.Actives.Any(active => active.Group is null)),
        treatment => Assert.Contains(treatment.Role, s_unclassified));

    // CropLife International, Technical Monograph no. 2, 7th edition (2017): international coding system for formulations.
    [Fact]
    public void Every_formulation_code_is_in_the_international_list()
    {
        Dictionary<string, string> codes = Table.Read("formulation-codes.csv").ToDictionary(cell => cell[0], cell => cell[1]);
        Assert.All(
            ShippedKnowledge.Knowledge.Treatments.Values,
            treatment => Assert.True(codes.ContainsKey(treatment.Formulation), $"{treatment.Id}: {treatment.Formulation}"));
        Assert.All(
            ShippedKnowledge.Knowledge.Vocabulary["formulation"].Words,
            word => Assert.Contains(codes[word.Key].Split(' ', ',')[0], word.Value, StringComparison.OrdinalIgnoreCase));
    }
}
