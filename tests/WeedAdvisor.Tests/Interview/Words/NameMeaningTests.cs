using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Words;

public sealed class NameMeaningTests
{
    [Theory]
    [InlineData("nutgrass", "nutsedge-yellow, nutsedge-purple")]
    [InlineData("oxalis", "woodsorrel-yellow, woodsorrel-creeping")]
    [InlineData("spurge", "spurge-spotted, spurge-prostrate, spurge-garden")]
    [InlineData("nutsedge", "nutsedge-yellow, nutsedge-purple")]
    public void A_name_that_several_weeds_carry_means_none_of_them_and_the_commonest_stands_first(
        string typed,
        string ids
    )
    {
        var hits = NameSearch.Weeds(ShippedRules.Knowledge, typed, null);
        Assert.Equal(ids, string.Join(", ", hits.Select(hit => hit.Id)));
        Assert.Null(NameMeaning.Sole(hits, typed));
    }

    [Theory]
    [InlineData("yellow nutsedge", "nutsedge-yellow")]
    [InlineData("nutsedge-purple", "nutsedge-purple")]
    [InlineData("Cocograss", "nutsedge-purple")]
    [InlineData("creeping oxalis", "woodsorrel-creeping")]
    [InlineData("Oxalis stricta", "woodsorrel-yellow")]
    [InlineData("milk purslane", "spurge-spotted")]
    [InlineData("liverwort", "liverwort")]
    [InlineData("eclip", "eclipta")]
    public void A_name_of_its_own_is_taken_at_once(string typed, string id) =>
        Assert.Equal(id, NameMeaning.Sole(NameSearch.Weeds(ShippedRules.Knowledge, typed, null), typed)?.Id);

    [Fact]
    public void Every_weed_is_meant_by_its_id_and_by_its_own_name()
    {
        foreach (var weed in ShippedRules.Knowledge.Weeds.Values)
        {
            foreach (string name in new[] { weed.Id, weed.Name })
                Assert.Equal(weed.Id, NameMeaning.Sole(NameSearch.Weeds(ShippedRules.Knowledge, name, null), name)?.Id);
        }
    }

    [Fact]
    public void No_other_name_of_two_weeds_is_taken_for_one_of_them()
    {
        foreach (var weed in ShippedRules.Knowledge.Weeds.Values)
        {
            foreach (string other in weed.AlsoCalled)
            {
                bool shared = ShippedRules.Knowledge.Weeds.Values.Any(one =>
                    one.Id != weed.Id
                    && one.AlsoCalled.Append(one.Name).Contains(other, StringComparer.OrdinalIgnoreCase)
                );
                string? meant = NameMeaning.Sole(NameSearch.Weeds(ShippedRules.Knowledge, other, null), other)?.Id;
                Assert.True(meant is null || (meant == weed.Id && !shared), other);
            }
        }
    }

    [Fact]
    public void A_treatment_of_one_active_stands_before_mixtures()
    {
        var hits = NameSearch.Treatments(ShippedRules.Knowledge, "oxad");
        Assert.Equal("oxadiazon-granule", hits[0].Id);
        Assert.True(hits.Length > 1);
        Assert.Null(NameMeaning.Sole(hits, "oxad"));
    }

    [Fact]
    public void The_weeds_of_the_place_stand_first_among_equals() =>
        Assert.Equal(
            "spurge-prostrate",
            NameSearch
                .Weeds(
                    SmallTrade.Knowledge with
                    {
                        Weeds = SmallTrade.Knowledge.Weeds.SetItem(
                            "spurge-spotted",
                            SmallTrade.Knowledge.Weeds["spurge-spotted"] with
                            {
                                Places = WordSet.Empty,
                            }
                        ),
                    },
                    "spurge",
                    "container-yard"
                )[0]
                .Id
        );

    [Fact]
    public void What_tells_weeds_apart_is_said_once()
    {
        string tell = Assert.Single(NameMeaning.Apart(ShippedRules.Knowledge, ["nutsedge-yellow", "nutsedge-purple"]));
        Assert.Contains("single tubers", tell, StringComparison.Ordinal);
        Assert.StartsWith(
            "common liverwort: ",
            NameMeaning.Apart(ShippedRules.Knowledge, ["liverwort"])[0],
            StringComparison.Ordinal
        );
    }
}
