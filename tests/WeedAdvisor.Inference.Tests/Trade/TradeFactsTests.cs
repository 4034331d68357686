using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// Facts of the trade, held against the advice. All are common practice, with no source of their own.
/// </summary>
public class TradeFactsTests
{
    private const string CleanFirst = "clean-first-preemergence-kills-no-plants";

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly DateOnly s_day = new(2026, 5, 12);

    private static IEnumerable<Treatment> Preemergence =>
        s_knowledge.Treatments.Values.Where(treatment => treatment.Role == "preemergence");

    // Common practice: no chemical control exists for weeds among unrooted cuttings.
    [Theory]
    [InlineData("propagation-house", "film-on", "liverwort")]
    [InlineData("propagation-house", "glass-or-rigid", "silvery-thread-moss")]
    [InlineData("liner-bed", "open-sky", "bittercress-flexuous")]
    [InlineData("growing-house", "shade-cloth", "woodsorrel-creeping")]
    [InlineData("container-yard", "open-sky", "spurge-spotted")]
    public void Nothing_chemical_that_reaches_unrooted_cuttings_is_clear_and_the_reason_is_said(
        string place,
        string cover,
        string weed
    )
    {
        const string Rule = "nothing-chemical-reaches-unrooted-cuttings";
        string[] stages = ["expected", "seedling", "mature"];
        Treatment[] reaching = [.. s_knowledge.Treatments.Values.Where(treatment => treatment.ReachesCrop)];
        Assert.NotEmpty(reaching);
        foreach (string stage in stages)
        {
            AreaAdvice advice = Advise(
                Area(("place", place), ("cover", cover), ("stock", "unrooted-cuttings")) with
                {
                    Weeds = [new WeedSeen(weed, stage, 20)],
                }
            );
            var barred = advice.Barred.ToDictionary(one => one.Action);
            Assert.All(reaching, treatment =>
                Assert.Contains(
                    "without roots",
                    Assert.Single(barred[treatment.Id].Because, reason => reason.Judgement == Rule).Text
                )
            );
            Assert.DoesNotContain(reaching, treatment => advice.Clear.Any(one => one.Action == treatment.Id));
            Assert.NotEmpty(advice.Clear);
        }
    }

    // Common practice: preemergence herbicides do not control weeds that are up, however small.
    [Fact]
    public void A_preemergence_treatment_never_answers_weeds_that_are_up()
    {
        VisitArea area = Yard() with { Weeds = [new WeedSeen("spurge-spotted", "seedling", 5)] };
        AreaAdvice advice = Advise(area);
        ClearAction[] preemergence =
        [
            .. advice.Clear.Where(one => Preemergence.Any(treatment => treatment.Id == one.Action)),
        ];
        Assert.NotEmpty(preemergence);
        Assert.All(preemergence, one => Assert.NotEqual("now", one.When));
        Assert.All(preemergence, one =>
            Assert.Contains(one.Cautions, caution => caution.Judgement == CleanFirst && caution.IsCertain)
        );
    }

    // The same, for every such treatment, clear or not, and for every weed alone in the yard.
    [Fact]
    public void Whatever_weed_is_up_every_preemergence_treatment_is_told_to_wait_and_hands_come_now() =>
        Assert.All(s_knowledge.Weeds.Keys, weed =>
        {
            AreaAdvice advice = Advise(Yard() with { Weeds = [new WeedSeen(weed, "seedling", null)] });
            HashSet<string?> told =
            [
                .. advice
                    .AllConclusions()
                    .Where(one => one.Judgement == CleanFirst && one.IsCertain)
                    .Select(one => one.Action),
            ];
            Assert.All(Preemergence, treatment => Assert.Contains(treatment.Id, told));
            // A film of algae is scrubbed off; no hand pulls it, and no water weed in a yard. A vine is followed to its
            // root, horsetail is cut again and again, the first film of mosses and ferns is lifted (common practice).
            // Nobody pulls poison ivy as if it were any weed.
            Assert.Equal(
                s_knowledge.Weeds[weed].Kind is not ("alga" or "water" or "horsetail" or "fern" or "bryophyte")
                    && weed != "poison-ivy",
                advice.Clear.Any(one => one.Action is "hand-weed-now" or "dig-out-roots" && one.When == "now")
            );
            Assert.Equal(
                s_knowledge.Weeds[weed].Kind is "fern" or "bryophyte",
                advice.Clear.Any(one => one is { Action: "scrape-off-liverwort", When: "now" })
            );
        });

    [Fact]
    public void No_preemergence_treatment_is_ever_a_thing_for_now() =>
        Assert.All(Preemergence, treatment => Assert.NotEqual("now", treatment.When));

    [Fact]
    public void Every_preemergence_record_acts_on_germinating_seed_alone() =>
        Assert.All(Preemergence.Where(treatment => treatment.Status == "current"), treatment =>
            Assert.Equal(WordSet.Of(["germinating"]), treatment.ActsOn)
        );

    // Common practice: liverwort lives on a wet, fed surface and spreads by spores and gemmae.
    [Fact]
    public void Liverwort_is_favoured_by_wet_fed_surfaces_and_spreads_by_spores_and_gemmae()
    {
        Weed liverwort = s_knowledge.Weeds["liverwort"];
        Assert.True(liverwort.FavouredBy.Contains("wet-surface"));
        Assert.True(liverwort.FavouredBy.Contains("high-nitrogen"));
        Assert.True(liverwort.SpreadsBy.Contains("spores"));
        Assert.True(liverwort.SpreadsBy.Contains("gemmae"));
    }

    [Fact]
    public void A_wet_fed_surface_is_found_to_be_why_liverwort_is_here_and_a_dry_lean_one_is_not()
    {
        VisitArea wet = Yard(
            ("surface-moisture", "wet"),
            ("nitrogen", "high"),
            ("fertiliser-placement", "top-dressed")
        ) with
        {
            Weeds = [new WeedSeen("liverwort", "mature", 20)],
        };
        VisitArea dry = Yard(
            ("surface-moisture", "dry-between"),
            ("nitrogen", "low"),
            ("fertiliser-placement", "layered-below"),
            ("irrigation", "drip"),
            ("drainage", "free")
        ) with
        {
            Weeds = [new WeedSeen("liverwort", "mature", 20)],
        };
        string[] causes = [.. Certain(Advise(wet)).Except(Advise(dry).Findings.Select(finding => finding.Id))];
        Assert.Contains("mats-are-being-fed", causes);
        Assert.Contains("surface-stays-wet", causes);
    }

    // Common practice: most preemergence herbicides miss liverwort.
    [Fact]
    public void Fewer_than_half_of_the_preemergence_actives_and_premixes_are_rated_good_on_liverwort()
    {
        // One count for each active or premix, however many products it is sold as.
        var kinds = Preemergence
            .GroupBy(treatment =>
                string.Join('+', treatment.Actives.Select(active => active.Name).Order(StringComparer.Ordinal))
            )
            .ToArray();
        int good = kinds.Count(kind =>
            kind.Any(treatment => treatment.Ratings.Any(rating => rating.On == "liverwort" && rating.Grade == "good"))
        );
        int rated = kinds.Count(kind =>
            kind.Any(treatment => treatment.Ratings.Any(rating => rating.On == "liverwort"))
        );
        Assert.True(
            good > 0 && good < kinds.Length - good,
            $"{good} good, {rated} rated, of {kinds.Length} actives and premixes"
        );
    }

    // Common practice: a coarse layer on top and feed in a layer below the surface together leave about 5 % of the pot
    // under liverwort, where an ordinary mix with incorporated or top-dressed feed is covered fully.
    [Fact]
    public void Coarse_top_and_layered_feed_together_leave_about_a_twentieth_of_the_liverwort()
    {
        double coarse = MiddleOn("coarse-over-fine-mix", "liverwort");
        double below = MiddleOn("feed-below-surface", "liverwort");
        Assert.InRange(1 - ((1 - coarse) * (1 - below)), 0.93, 0.97);
        // Neither does it alone.
        Assert.InRange(coarse, 0.5, 0.9);
        Assert.InRange(below, 0.5, 0.9);
    }

    // Common practice: rice hulls drain and dry fast, and suit against liverwort.
    [Fact]
    public void Rice_hulls_are_advised_against_liverwort()
    {
        VisitArea area = Yard(("surface-moisture", "wet")) with { Weeds = [new WeedSeen("liverwort", "mature", 20)] };
        ClearAction hulls = Assert.Single(Advise(area).Clear, one => one.Action == "rice-hull-mulch");
        Assert.True(hulls.Effect.Reduction > 0.8);
        Assert.Contains("dry", s_knowledge.Practices["rice-hull-mulch"].What, StringComparison.Ordinal);
    }

    private static double MiddleOn(string practice, string weed) =>
        (double)
            Assert.Single(s_knowledge.Practices[practice].Effects, effect => effect.On == weed).ReductionPercent.Middle
        / 100;

    private static IEnumerable<string> Certain(AreaAdvice advice) =>
        advice.Findings.Where(finding => finding.IsCertain).Select(finding => finding.Id);

    private static AreaAdvice Advise(VisitArea area) => ShippedRules.On(AreaCase.Alone(s_day, area));

    // An ordinary yard of settled woody stock, so that only what a test changes makes the difference.
    private static VisitArea Yard(params (string Question, string Answer)[] answers) =>
        Area([
            .. new (string Question, string Answer)[]
            {
                ("place", "container-yard"),
                ("cover", "open-sky"),
                ("covering-planned", "no"),
                ("stock", "established"),
                ("crops", "woody-evergreen-shrubs"),
                ("edible", "no"),
                ("growth-state", "hardened"),
                ("spacing", "pot-tight"),
                ("shipping-soon", "no"),
                ("surface-moisture", "moist"),
                ("irrigation", "overhead"),
                ("drainage", "free"),
                ("air", "good"),
                ("light", "full-sun"),
                ("fertiliser-placement", "incorporated"),
                ("nitrogen", "moderate"),
                ("substrate", "fine-bark"),
                ("substrate-storage", "clean-paved"),
                ("pots-used", "new"),
                ("mulch", "none"),
                ("floor", "gravel-over-fabric"),
                ("floor-state", "clean"),
                ("incoming-stock", "inspected"),
                ("surroundings", "mown"),
                ("organic", "no"),
                ("water-nearby", "none-near"),
                ("neighbours", "none-near"),
                ("licensed", "yes"),
                ("equipment", "hand-spreader"),
                ("region", s_knowledge.Regions.Keys.First()),
            }.Where(pair => !answers.Any(answer => answer.Question == pair.Question)),
            .. answers,
        ]) with
        {
            Past = [],
        };

    private static VisitArea Area(params (string Question, string Answer)[] answers)
    {
        var given = AreaAnswers.Of(answers);
        return new VisitArea(
            "area",
            "Area",
            given.Add("potted-on", new Answer.Date(s_day.AddDays(-200))).Add("weeding-interval", new Answer.Number(3)),
            [],
            []
        );
    }
}
