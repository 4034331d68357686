using System.Text.RegularExpressions;
using WeedAdvisor.World;
using Record = WeedAdvisor.Knowledge.Records.Record;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>
/// What decides whether a chemical may be used, or when people may go in, rests on memory no more often than was set: a
/// quarter, a third or half of the records that hold the value. What rests on it says what was looked through.
/// </summary>
public sealed partial class MemoryShareTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Theory]
    [InlineData("restricted-use", 4)]
    [InlineData("rei-hours", 4)]
    [InlineData("organic-ok", 3)]
    [InlineData("uses-per-year", 3)]
    [InlineData("yearly-limit-kg-ai-ha", 3)]
    [InlineData("status", 2)]
    [InlineData("edible-ok", 2)]
    public void Of_the_treatments_that_hold_a_gate_at_most_one_in_so_many_has_it_from_memory(string gate, int many) =>
        AssertShare(s_knowledge.Treatments.Values, gate, many);

    [Theory]
    [InlineData("yearly-limit-kg-ai-ha", 3)]
    [InlineData("uses-per-year", 3)]
    [InlineData("interval-days", 3)]
    public void So_of_the_limits_of_actives(string gate, int many) =>
        AssertShare(s_knowledge.ActiveLimits.Values, gate, many);

    // 40 CFR 156.208(c)(2): 48 hours is the longest that is asked for in general. What is shorter lets people in
    // sooner, so it needs a text that says so.
    [Fact]
    public void No_entry_interval_is_from_memory() =>
        Assert.All(s_knowledge.Treatments.Values.Where(treatment => treatment.ReiHours is not null), treatment =>
            Assert.DoesNotContain("rei-hours", treatment.Memory)
        );

    // The list of the Pacific Northwest handbook, and 40 CFR 152.175: of what is held here paraquat alone is on them.
    [Fact]
    public void Of_the_actives_held_here_the_federal_list_names_paraquat_alone()
    {
        string[] named =
        [
            "acrolein",
            "atrazine",
            "dazomet",
            "1,3-dichloropropene",
            "metam-sodium",
            "methyl bromide",
            "paraquat",
            "phenmedipham",
            "picloram",
            "propyzamide",
        ];
        Assert.All(s_knowledge.Treatments.Values, treatment =>
            Assert.Equal(
                treatment.Actives.Any(active => named.Contains(active.Name, StringComparer.OrdinalIgnoreCase)),
                treatment.RestrictedUse
            )
        );
        Assert.Equal(
            ["paraquat-directed"],
            s_knowledge.Treatments.Values.Where(treatment => treatment.RestrictedUse).Select(treatment => treatment.Id)
        );
    }

    [Fact]
    public void No_caution_stands_in_two_records()
    {
        string[] told =
        [
            .. s_knowledge.Treatments.Values.SelectMany(treatment => treatment.Cautions),
            .. s_knowledge.Practices.Values.SelectMany(practice => practice.Cautions),
        ];
        Assert.NotEmpty(told);
        Assert.Empty(
            told.GroupBy(text => Blanks().Replace(text, " ").Trim(), StringComparer.OrdinalIgnoreCase)
                .Where(alike => alike.Count() > 1)
                .Select(alike => alike.Key)
        );
    }

    private static void AssertShare(IEnumerable<Record> records, string gate, int many)
    {
        Record[] holding = [.. records.Where(record => !record.From.Of(gate).IsEmpty)];
        Record[] fromMemory = [.. holding.Where(record => record.Memory.Contains(gate))];
        Assert.NotEmpty(holding);
        Assert.True(
            fromMemory.Length * many <= holding.Length,
            $"{gate}: {fromMemory.Length} of {holding.Length} from memory"
        );
        Assert.All(fromMemory, record => Assert.NotEmpty(record.From.Searched));
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
