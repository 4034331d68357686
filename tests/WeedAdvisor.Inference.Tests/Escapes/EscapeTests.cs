using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Escapes;

/// <summary>
/// What came through, and why: Derr and Nichols 2020 (more dose does nothing against a resistant plant; first rule out
/// the fault), Norsworthy and others 2012 (several sites that each work on the driver weed).
/// </summary>
public sealed class EscapeTests
{
    private const string Spurge = "spurge-spotted",
        Eclipta = "eclipta";
    private static readonly DateOnly s_day = new(2026, 6, 30);
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void What_a_record_rates_less_than_good_explains_itself() =>
        Assert.Empty(EscapesOfArea.Of([Through("flumioxazin-granule", 1, Eclipta)], s_knowledge));

    [Fact]
    public void Once_is_to_be_looked_into_and_clears_nothing_out()
    {
        AreaAdvice advice = Advise(Through("prodiamine-granule", 1, Spurge));
        Assert.Contains(advice.Clear, clear => clear.Action == "find-out-why-it-came-through");
        Assert.DoesNotContain(Reasons(advice), reason => reason == "what-failed-twice-is-not-tried-again");
    }

    [Fact]
    public void Twice_takes_the_whole_site_of_action_out_here()
    {
        AreaAdvice advice = Advise(
            Through("prodiamine-granule", 1, Spurge),
            Through("pendimethalin-granule", 1, Spurge)
        );
        foreach (
            string sister in (string[])["prodiamine-spray", "trifluralin-granule", "oryzalin-spray", "dithiopyr-spray"]
        )
            Assert.Contains(Assert.Single(advice.Barred, one => one.Action == sister).Because, one =>
                one.Judgement == "what-failed-twice-is-not-tried-again"
            );
        Assert.DoesNotContain(advice.Clear, clear => clear.Action == "trifluralin-granule");
    }

    [Fact]
    public void Two_seasons_running_are_twice() =>
        Assert.True(Assert.Single(EscapesOfArea.Of([Through("prodiamine-granule", 2, Spurge)], s_knowledge)).HasLapsed);

    [Fact]
    public void A_resistance_on_record_counts_as_one_time()
    {
        Escape escape = Assert.Single(EscapesOfArea.Of([Through("prodiamine-granule", 1, "goosegrass")], s_knowledge));
        Assert.True(escape.IsOnRecord);
        Assert.True(escape.HasLapsed);
    }

    [Fact]
    public void Of_a_mixture_only_the_other_site_is_credited()
    {
        ImmutableArray<Escape> escapes = EscapesOfArea.Of([Through("prodiamine-granule", 2, Spurge)], s_knowledge);
        var weed = s_knowledge.Weeds[Spurge];
        var mixture = s_knowledge.Treatments.Values.First(one =>
            PastProduct.SitesOf(one) is { Count: 2 } sites
            && sites.Contains("3")
            && TreatmentControl.GradeOf(one, weed, s_knowledge) == "good"
        );
        string other = mixture.Actives.Single(active => active.Group != "3").Name;
        var sole = s_knowledge.Treatments["prodiamine-granule"];
        Assert.Null(TreatmentControl.GradeOf(sole, weed, s_knowledge, escapes));
        string? alone = s_knowledge
            .Treatments.Values.Where(one =>
                one.Actives is [var active] && active.Name == other && one.Role == mixture.Role
            )
            .Select(one => TreatmentControl.GradeOf(one, weed, s_knowledge))
            .MaxBy(grade => grade is null ? -1 : s_knowledge.Scale[grade].ReductionPercent.Low);
        Assert.Equal(alone, TreatmentControl.GradeOf(mixture, weed, s_knowledge, escapes));
    }

    [Fact]
    public void Seasons_that_are_not_told_leave_it_open() =>
        Assert.True(
            Assert.Single(EscapesOfArea.Of([Through("prodiamine-granule", null, Spurge)], s_knowledge))
                is { HasLapsed: false, MayBeMore: true }
        );

    [Fact]
    public void A_result_that_is_not_told_may_hide_an_escape()
    {
        PastApplication silent = Through("prodiamine-granule", null) with { Result = null };
        AreaAdvice advice = Advise(silent, Through("pendimethalin-granule", 1, Spurge));
        Assert.DoesNotContain(advice.Clear, clear => clear.Action == "trifluralin-granule");
    }

    [Fact]
    public void Two_actives_of_no_known_site_share_none()
    {
        foreach (
            var record in s_knowledge.Treatments.Values.Where(one => one.Actives.Any(active => active.Group == "0"))
        )
            Assert.False(PastProduct.SitesOf(record).Contains("0"), record.Id);
    }

    [Fact]
    public void The_same_site_of_action_goes_on_again_eight_weeks_later()
    {
        PastApplication use = new("flumioxazin-granule", s_day.AddDays(-6), "clean", WordSet.Empty);
        BarredAction sister = Assert.Single(Advise(use).Barred, one => one.Action == "oxadiazon-granule");
        Assert.Equal(ActionStatus.NotYet, sister.Status);
        Assert.Equal(s_day.AddDays(50), sister.Until!.Day);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void Over_what_was_just_laid_no_other_preventive_is_clear(int daysAgo)
    {
        AreaAdvice advice = Advise(
            new PastApplication("flumioxazin-granule", s_day.AddDays(-daysAgo), "clean", WordSet.Empty)
        );
        Assert.Contains(advice.Findings, finding => finding is { Id: "preventive-still-holds", IsCertain: true });
        Assert.DoesNotContain(advice.Clear, clear =>
            s_knowledge.Treatments.TryGetValue(clear.Action, out var one) && one.Role == "preemergence"
        );
    }

    private static IEnumerable<string> Reasons(AreaAdvice advice) =>
        advice.Barred.SelectMany(barred => barred.Because).Select(reason => reason.Judgement);

    private static AreaAdvice Advise(params ImmutableArray<PastApplication> past)
    {
        var answers = new Dictionary<string, string>
        {
            ["place"] = "container-yard",
            ["cover"] = "open-sky",
            ["covering-planned"] = "no",
            ["stock"] = "established",
            ["crops"] = "woody-evergreen-shrubs",
            ["growth-state"] = "hardened",
            ["edible"] = "no",
            ["organic"] = "no",
            ["water-nearby"] = "none-near",
            ["neighbours"] = "none-near",
            ["licensed"] = "yes",
            ["equipment"] = "hand-spreader",
            ["irrigation"] = "overhead",
            ["region"] = "north-carolina-piedmont",
            ["spacing"] = "pot-tight",
            ["put-on-lately"] = "no",
        };
        var area = new VisitArea(
            "yard",
            "Yard",
            AreaAnswers.Of(answers).Add("potted-on", new Answer.Date(new DateOnly(2024, 4, 1))),
            [new WeedSeen(Spurge, "expected", null)],
            past
        );
        return ShippedRules.On(AreaCase.Alone(s_day, area));
    }

    private static PastApplication Through(string treatment, int? seasons, params string[] weeds) =>
        new(treatment, new DateOnly(2026, 3, 1), "escapes", WordSet.Of(weeds)) { SeasonsRunning = seasons };
}
