using CsCheck;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Identify;

public sealed class WeedKeyTests
{
    private static readonly Gen<Case> s_cases = RandomKeys.Cases;

    [Fact]
    public void A_match_counts_one_a_silence_nothing_a_contradiction_two_less()
    {
        KnowledgeBase knowledge = RandomKeys.Of(
            ["pairs", "single", "sap", "hair"],
            [("pairs", "leaves"), ("single", "leaves")],
            ("all", ["pairs", "sap"]),
            ("silent", ["sap"]),
            ("rival", ["single", "sap"]),
            ("hairy", ["pairs", "sap", "hair"])
        );
        Identification found = new WeedKey(knowledge).Of(Sighting.Of(["pairs", "sap"], ["hair"]));
        Assert.Equal(
            [("all", 2, 0), ("silent", 1, 0), ("hairy", 0, 1), ("rival", -1, 1)],
            found.Fits.Select(fit => (fit.Weed.Id, fit.Score, fit.Contradictions))
        );
        Assert.Equal([true, false, false, false], found.Fits.Select(fit => fit.FitsAll));
        Assert.Equal(WordSet.Of("pairs"), found.Fits[1].NotRecorded);
        Assert.Equal(WordSet.Of("hair"), found.Fits[2].Missing);
        Assert.Equal([new ShutOut("pairs", "single")], found.Fits[3].ShutOut);
    }

    [Fact]
    public void A_weed_that_shows_both_of_two_rival_features_is_shut_out_by_neither()
    {
        KnowledgeBase knowledge = RandomKeys.Of(
            ["pairs", "single"],
            [("pairs", "leaves"), ("single", "leaves")],
            ("both", ["pairs", "single"])
        );
        Assert.True(new WeedKey(knowledge).Of(Sighting.Empty.See("single")).Fits[0].FitsAll);
    }

    [Fact]
    public void The_last_word_on_a_feature_holds()
    {
        Sighting sighting = Sighting.Empty.See("sap").Miss("sap").Pass("sap").See("hair").Forget("hair");
        Assert.Equal(Sighting.Empty.Pass("sap"), sighting);
        Assert.Throws<ArgumentException>(() => Sighting.Of(["sap"], ["sap"]));
    }

    [Fact]
    public void Weeds_that_fit_all_of_it_stand_before_all_others() =>
        s_cases.Sample(one =>
        {
            Identification found = one.Ask();
            int fitting = found.Fits.TakeWhile(fit => fit.FitsAll).Count();
            Assert.DoesNotContain(found.Fits.Skip(fitting), fit => fit.FitsAll);
            Assert.All(found.Fits.Skip(fitting), fit => Assert.True(fit.Score < one.Seen.Length));
        });

    [Fact]
    public void A_true_feature_never_drops_a_weed_below_one_that_lacks_it() =>
        s_cases.Sample(one =>
        {
            var key = new WeedKey(one.Knowledge);
            Sighting before = one.Sighting;
            string[] Order(Sighting sighting) => [.. key.Of(sighting).Fits.Select(fit => fit.Weed.Id)];
            string[] order = Order(before);
            foreach (string feature in key.Features.All.Select(pair => pair.Key).Where(word => !before.Speaks(word)))
            {
                string[] after = Order(before.See(feature));
                foreach (Weed with in one.Knowledge.Weeds.Values.Where(weed => weed.Features.Contains(feature)))
                {
                    foreach (Weed without in one.Knowledge.Weeds.Values.Where(weed => !weed.Features.Contains(feature)))
                    {
                        bool wasAhead = Array.IndexOf(order, with.Id) < Array.IndexOf(order, without.Id);
                        if (wasAhead)
                            Assert.True(Array.IndexOf(after, with.Id) < Array.IndexOf(after, without.Id));
                    }
                }
            }
        });

    [Fact]
    public void One_wrong_look_costs_a_weed_three_points_and_never_more() =>
        s_cases.Sample(one =>
        {
            var key = new WeedKey(one.Knowledge);
            foreach (string feature in one.Seen)
            {
                Identification right = key.Of(one.Sighting),
                    wrong = key.Of(one.Sighting.Miss(feature));
                foreach (Weed weed in one.Knowledge.Weeds.Values.Where(weed => weed.Features.Contains(feature)))
                    Assert.Equal(ScoreOf(right, weed) - 3, ScoreOf(wrong, weed));
            }
        });

    [Fact]
    public void The_order_in_which_features_are_told_does_not_matter() =>
        s_cases.Sample(one =>
        {
            var key = new WeedKey(one.Knowledge);
            Sighting forwards = Sighting.Empty,
                backwards = Sighting.Empty;
            foreach (string seen in one.Seen)
                forwards = forwards.See(seen);
            foreach (string absent in one.Absent)
                forwards = forwards.Miss(absent);
            foreach (string absent in one.Absent.Reverse())
                backwards = backwards.Miss(absent);
            foreach (string seen in one.Seen.Reverse())
                backwards = backwards.See(seen);
            Assert.Equal(forwards, backwards);
            Identification left = key.Of(forwards),
                right = key.Of(backwards);
            Assert.Equal(
                left.Fits.Select(fit => (fit.Weed.Id, fit.Score)),
                right.Fits.Select(fit => (fit.Weed.Id, fit.Score))
            );
            Assert.Equal(left.Next, right.Next);
            Assert.Equal(left.Tells, right.Tells);
        });

    [Fact]
    public void No_other_feature_leaves_fewer_candidates_on_average() =>
        s_cases.Sample(one =>
        {
            Identification found = one.Ask();
            var features = new FeatureList(one.Knowledge);
            double Left(string feature)
            {
                // Counted one candidate at a time: what it shows decides which candidates stay with it.
                bool Shows(WeedFit fit) => fit.Weed.Features.Contains(feature);
                return found.Candidates.Average(fit =>
                    (double)found.Candidates.Count(other => Shows(other) == Shows(fit))
                );
            }

            string[] open =
            [
                .. features
                    .All.Select(pair => pair.Key)
                    .Where(feature =>
                        !one.Sighting.Speaks(feature) && features.RivalOf(feature, one.Sighting.Seen) is null
                    ),
            ];
            if (found.Next is null)
            {
                Assert.All(open, feature => Assert.Equal(found.Candidates.Length, Left(feature)));
                return;
            }

            double least = open.Min(Left);
            Assert.Equal(least, found.Next.ExpectedLeft, 9);
            Assert.Equal(open.First(feature => Left(feature) < least + 1e-9), found.Next.Feature);
            Assert.True(least < found.Candidates.Length);
        });

    [Fact]
    public void Between_look_alikes_in_front_the_tell_comes_once_and_first()
    {
        var key = new WeedKey(ShippedRules.Knowledge);
        Identification found = key.Of(Sighting.Empty.See("three-heart-shaped-leaflets"));
        Assert.Equal(["woodsorrel-creeping", "woodsorrel-yellow"], found.Leaders.Select(fit => fit.Weed.Id));
        (string, string)[] tells = [.. found.Tells.Select(tell => (tell.Weed, tell.Other))];
        Assert.Equal(("woodsorrel-creeping", "woodsorrel-yellow"), tells[0]);
        Assert.DoesNotContain(("woodsorrel-yellow", "woodsorrel-creeping"), tells);
        Assert.Contains(("woodsorrel-creeping", "white-clover"), tells);
        Assert.Contains(("woodsorrel-yellow", "white-clover"), tells);
    }

    private static int ScoreOf(Identification found, Weed weed) =>
        found.Fits.Single(fit => fit.Weed.Id == weed.Id).Score;
}
