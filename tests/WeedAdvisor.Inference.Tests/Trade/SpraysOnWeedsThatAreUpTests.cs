using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// What is said for and against sprays on weeds that are up, each held against the source it rests on.
/// </summary>
public class SpraysOnWeedsThatAreUpTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly DateOnly s_day = new(2026, 5, 14);

    // Lanini, trials with acids and oils: most broad-leaved weeds at 12 days of age, few at 26. Glufosinate, diquat and
    // the others were not in them.
    private static readonly string[] s_acidsAndOils =
    [
        "acetic acid",
        "ammonium nonanoate",
        "caprylic acid",
        "capric acid",
        "d-limonene",
        "pelargonic acid",
    ];

    [Fact]
    public void Evidence_about_acids_and_oils_speaks_of_acids_and_oils_only()
    {
        string[] judgements = ["contact-sprays-come-too-late-for-big-weeds", "cold-dull-days-weaken-contact-sprays"];
        var spoken = OnAPath(new DateOnly(2026, 1, 14), new WeedSeen("groundsel-common", "flowering", 20))
            .AllConclusions()
            .Where(reason => judgements.Contains(reason.Judgement))
            .Select(reason => s_knowledge.Treatments[reason.Action!])
            .ToArray();
        Assert.Contains(spoken, treatment => treatment.Id == "pelargonic-acid-floor-spray");
        Assert.DoesNotContain(spoken, treatment => treatment.Id.StartsWith("glufosinate", StringComparison.Ordinal));
        Assert.All(spoken, treatment =>
            Assert.True(
                treatment.Status != "current" || treatment.Actives.All(active => s_acidsAndOils.Contains(active.Name)),
                treatment.Id
            )
        );
    }

    // Pacific Northwest Weed Management Handbook, container growing areas: pelargonic acid works best above 65 F;
    // Lanini: warm, bright days. The cool of the day is for the rest.
    [Fact]
    public void Acids_and_oils_are_never_sent_into_the_cool_of_the_day()
    {
        AreaAdvice advice = OnAPath(s_day, new WeedSeen("groundsel-common", "young", 20));
        var cool = advice
            .AllConclusions()
            .Where(reason => reason.CautionText?.Contains("cool of the day", StringComparison.Ordinal) == true)
            .Select(reason => reason.Action!)
            .ToHashSet();
        var warm = advice
            .AllConclusions()
            .Where(reason => reason.Judgement == "acids-and-oils-want-warmth-and-light")
            .Select(reason => reason.Action!)
            .ToHashSet();
        Assert.NotEmpty(cool);
        Assert.All(
            s_knowledge.Treatments.Values.Where(treatment =>
                treatment.Actives.Any(active => s_acidsAndOils.Contains(active.Name))
            ),
            treatment => Assert.True(warm.Contains(treatment.Id) && !cool.Contains(treatment.Id), treatment.Id)
        );
        Assert.Contains("glyphosate-outdoor-directed", cool);
    }

    // Raudenbush and others 2021: 76 to 84 % injury of silvery thread moss at 14 days, 45 to 48 % at 28.
    [Theory]
    [InlineData("silvery-thread-moss", false)]
    [InlineData("liverwort", true)]
    [InlineData("crabgrass-large", true)]
    [InlineData("groundsel-common", false)]
    public void Carfentrazone_is_barred_where_nothing_that_it_takes_is_up(string weed, bool barred) =>
        Assert.Equal(
            barred,
            OnAPath(s_day, new WeedSeen(weed, "mature", 20)).Barred.Any(one => one.Action == "carfentrazone-directed")
        );

    // From memory, like the table of codes: napropamide went from 15 to 0, not classified, in the list of 2020.
    [Fact]
    public void Napropamide_shares_its_site_of_action_with_nothing()
    {
        Treatment napropamide = s_knowledge.Treatments["napropamide-granule"];
        Assert.Empty(PastProduct.SitesOf(napropamide));
        Assert.Null(Assert.Single(napropamide.Actives).SiteOfAction);
    }

    private static AreaAdvice OnAPath(DateOnly day, WeedSeen weed)
    {
        (string Question, string Answer)[] answers =
        [
            ("put-on-lately", "no"),
            ("place", "walkway"),
            ("cover", "open-sky"),
            ("covering-planned", "no"),
            ("stock", "none-present"),
            ("edible", "no"),
            ("organic", "no"),
            ("floor", "gravel"),
            ("floor-state", "clean"),
            ("water-nearby", "none-near"),
            ("neighbours", "none-near"),
            ("licensed", "yes"),
            ("equipment", "backpack-sprayer"),
        ];
        VisitArea path = new("path", "Path", AreaAnswers.Of(answers), [weed], []);
        return ShippedRules.On(AreaCase.Alone(day, path));
    }
}
