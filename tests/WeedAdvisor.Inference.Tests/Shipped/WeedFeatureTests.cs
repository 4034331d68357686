using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>The features in the shipped records tell the weeds apart.</summary>
public sealed class WeedFeatureTests
{
    // Twice the seven halvings that a hundred weeds need: nobody answers more than that with a tray in hand.
    private const int MostQuestions = 14;

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    private static readonly WeedKey s_key = new(s_knowledge);

    public static TheoryData<string> Weeds =>
        [.. s_knowledge.Weeds.Values.Where(weed => !weed.IsUnnamed).Select(weed => weed.Id)];

    [Theory]
    [MemberData(nameof(Weeds))]
    public void A_weed_comes_first_alone_from_all_its_features(string id)
    {
        Identification found = s_key.Of(Sighting.Of(s_knowledge.Weeds[id].Features, []));
        Assert.Equal([id], found.Leaders.Select(fit => fit.Weed.Id));
    }

    [Theory]
    [MemberData(nameof(Weeds))]
    public void True_answers_to_the_questions_lead_to_the_weed(string id)
    {
        Weed weed = s_knowledge.Weeds[id];
        Sighting sighting = Sighting.Empty;
        int asked = 0;
        while (s_key.Of(sighting).Next is { } next)
        {
            sighting = weed.Features.Contains(next.Feature) ? sighting.See(next.Feature) : sighting.Miss(next.Feature);
            asked++;
        }

        Assert.Equal([id], s_key.Of(sighting).Leaders.Select(fit => fit.Weed.Id));
        Assert.InRange(asked, 1, MostQuestions);
    }

    [Theory]
    [MemberData(nameof(Weeds))]
    public void Each_of_two_look_alikes_has_a_feature_that_the_other_lacks(string id)
    {
        Weed weed = s_knowledge.Weeds[id];
        Assert.All(weed.LookAlikes, other =>
        {
            Weed taken = s_knowledge.Weeds[other.Weed];
            Assert.True(
                weed.Features.Any(word => !taken.Features.Contains(word)),
                $"{id} has nothing that {taken.Id} lacks"
            );
            Assert.True(
                taken.Features.Any(word => !weed.Features.Contains(word)),
                $"{taken.Id} has nothing that {id} lacks"
            );
            Assert.Contains(taken.LookAlikes, back => back.Weed == id);
        });
    }

    [Fact]
    public void Features_that_shut_each_other_out_are_features_and_never_alone()
    {
        WordList either = s_knowledge.Vocabulary["weed-feature-either"];
        Assert.All(either.Words, word => Assert.Contains(s_key.Features.All, feature => feature.Key == word.Key));
        Assert.All(either.Words.GroupBy(word => word.Value), group => Assert.True(group.Count() > 1, group.Key));
    }

    [Fact]
    public void Every_feature_is_some_weeds_and_none_is_every_weeds() =>
        Assert.All(s_key.Features.All, feature =>
            Assert.InRange(
                s_knowledge.Weeds.Values.Count(weed => weed.Features.Contains(feature.Key)),
                1,
                s_knowledge.Weeds.Count - 1
            )
        );
}
