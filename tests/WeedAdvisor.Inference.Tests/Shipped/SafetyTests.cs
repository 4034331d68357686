using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>What no visit whatsoever may bring about with the rules that ship.</summary>
public class SafetyTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly RandomVisits s_visits = new(s_knowledge);

    // Common practice: no chemical control exists for weeds among unrooted cuttings.
    [Fact]
    public void Over_unrooted_cuttings_no_clear_treatment_reaches_the_crop() =>
        NoClearTreatmentReachesTheCrop(area => area.With("stock", "unrooted-cuttings"));

    [Fact]
    public void With_the_stock_unanswered_no_clear_treatment_reaches_the_crop() =>
        NoClearTreatmentReachesTheCrop(area => area with { Answers = area.Answers.Remove("stock") });

    [Fact]
    public void With_the_stock_said_not_to_be_known_no_clear_treatment_reaches_the_crop() =>
        NoClearTreatmentReachesTheCrop(area => area.With("stock", new Answer.NotKnown()));

    [Theory]
    [InlineData("place")]
    [InlineData("stock")]
    public void With_a_first_question_unanswered_no_treatment_at_all_is_clear(string question) =>
        s_visits.Area.Sample(
            area => Assert.Empty(ClearTreatments(Advise(area with { Answers = area.Answers.Remove(question) }))),
            iter: Sizes.Of(40, 1000)
        );

    // A floor spray that may be used under every cover, beside a crop, does not wait for the cover. Where the visit
    // says that no plant stands in the house, one for empty houses does not either: it may go on whether there is a
    // roof or not.
    [Fact]
    public void With_the_cover_unanswered_only_what_every_cover_allows_is_clear() =>
        s_visits.Area.Sample(
            area =>
                Assert.All(
                    ClearTreatments(Advise(area with { Answers = area.Answers.Remove("cover") }))
                        .Select(id => s_knowledge.Treatments[id]),
                    treatment =>
                    {
                        Assert.Contains(
                            treatment.EnclosedUse,
                            SaysEmpty(area) ? ["with-crop", "empty-house"] : (string[])["with-crop"]
                        );
                        Assert.False(treatment.ReachesCrop, treatment.Id);
                        Assert.All(s_knowledge.QuestionOf("cover")!.Choices, cover =>
                            Assert.True(treatment.AllowedUnder.Contains(cover.Id), treatment.Id)
                        );
                    }
                ),
            iter: Sizes.Of(40, 1000)
        );

    private static bool SaysEmpty(VisitArea area) =>
        area.Answers.GetValueOrDefault("plants-in-house") is Answer.Words plants && plants.Value.Contains("none");

    [Fact]
    public void With_nothing_answered_no_treatment_is_clear_and_a_question_is_asked()
    {
        AreaAdvice advice = Advise(VisitArea.Blank("a", "A"));
        Assert.Empty(ClearTreatments(advice));
        Assert.NotNull(advice.NextQuestion);
        HashSet<string> spoken =
        [
            .. advice.Waiting.Select(one => one.Action),
            .. advice.Barred.Select(one => one.Action),
            // What more speaks against for sure than could ever speak for it is told as such.
            .. advice.NotAdvised.Where(one => !one.Against.IsEmpty).Select(one => one.Action),
        ];
        Assert.All(
            advice
                .AllConclusions()
                .Where(one => one.Then is Consequence.Argument { IsDoubt: false })
                .Select(one => one.Action!)
                .Where(s_knowledge.Treatments.ContainsKey),
            treatment => Assert.Contains(treatment, spoken)
        );
    }

    private static void NoClearTreatmentReachesTheCrop(Func<VisitArea, VisitArea> change) =>
        s_visits.Area.Sample(
            area =>
                Assert.DoesNotContain(ClearTreatments(Advise(change(area))), action =>
                    s_knowledge.Treatments[action].ReachesCrop
                ),
            iter: Sizes.Of(60, 2000)
        );

    private static AreaAdvice Advise(VisitArea area) => ShippedRules.On(AreaCase.Alone(RandomVisits.Day, area));

    private static IEnumerable<string> ClearTreatments(AreaAdvice advice) =>
        advice.Clear.Select(one => one.Action).Where(s_knowledge.Treatments.ContainsKey);
}
