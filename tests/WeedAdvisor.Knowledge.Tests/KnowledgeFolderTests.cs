using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class KnowledgeFolderTests
{
    [Fact]
    public void A_weed_is_read_with_all_its_fields()
    {
        Weed weed = FixtureKnowledge.Good.Weeds["liverwort"];

        Assert.Equal("Liverwort", weed.Name);
        Assert.Equal(["umbrella plant"], weed.AlsoCalled);
        Assert.Equal([1, 2, 12], weed.Emergence["south"]);
        Assert.Empty(weed.Emergence["heated-house"]);
        Assert.Equal(new Span(4, 4), weed.BaseTemperatureC);
        Assert.Equal(new Span(6, 10), weed.WeeksToFirstSeed);
        Assert.Null(weed.SeedsPerPlant);
        Assert.Equal(1.6m, weed.SpreadDistanceM);
        Assert.Equal("yes", weed.NeedsLight);
        Assert.False(weed.Underground);
        Assert.Equal(["liverwort", "bryophytes"], weed.RatedAs);
        Assert.Equal([new LookAlike("spurge", "Only one of them has leaves.")], weed.LookAlikes);
        Assert.Equal("Flat green ribbons with cups.", weed.Identify);
        Assert.Equal(["spread-distance-m"], weed.Memory);
        Assert.Equal(new Place("weeds/liverwort.yaml", 2, 3), weed.Where);
    }

    [Fact]
    public void A_treatment_is_read_with_all_its_fields()
    {
        Treatment treatment = FixtureKnowledge.Good.Treatments["oxadine-granules"];

        Assert.Equal([new Active("oxadine", "14", "oxidase", "E")], treatment.Actives);
        Assert.Equal(14, treatment.WaitAfterPottingDays);
        Assert.Null(treatment.WaitBareRootDays);
        Assert.Equal(new Span(6, 13), treatment.WaterInMm);
        Assert.Equal(new Span(24, 24), treatment.ReiHours);
        Assert.Equal(new Strength(2, "percent"), treatment.Strength);
        Assert.Equal(new Span(100, 100), Assert.Single(treatment.Rates).Product);
        Assert.Equal(["spurge", "bryophytes", "annual-grasses"], treatment.Ratings.Select(rating => rating.On));
        Assert.Equal(new DateOnly(2026, 11, 25), treatment.Checked);
        Assert.True(treatment.ReachesCrop);
        Assert.Null(treatment.Cost);
    }

    [Fact]
    public void A_practice_is_read_with_its_cost_and_effects()
    {
        Practice practice = FixtureKnowledge.Good.Practices["let-it-dry"];

        Assert.Equal(new Span(0, 1.5m), practice.Cost!.LabourHours);
        Assert.Equal(["liverwort", "all"], practice.Effects.Select(effect => effect.On));
        Assert.Equal(new Span(5, 5), practice.Effects[1].ReductionPercent);
        Assert.Same(practice, FixtureKnowledge.Good.ActionOf("let-it-dry"));
    }

    [Fact]
    public void A_crop_is_itself_and_every_group_above_it()
    {
        KnowledgeBase knowledge = FixtureKnowledge.Good;

        Assert.Equal(["dwarf-hollies", "hollies", "shrubs"], knowledge.Crops["dwarf-hollies"].IsA);
        Assert.Equal(["shrubs"], knowledge.Crops["shrubs"].IsA);
    }

    [Fact]
    public void Questions_keep_their_order_and_their_conditions()
    {
        KnowledgeBase knowledge = FixtureKnowledge.Good;

        Assert.Equal(Enumerable.Range(0, knowledge.Questions.Length), knowledge.Questions.Select(q => q.Order));
        Assert.Equal(["place", "cover", "sides"], knowledge.Questions.Take(3).Select(question => question.Id));
        Assert.Equal("cover", Assert.Single(knowledge.QuestionOf("sides")!.AskedWhen).Attribute);
        Assert.Equal(new Span(0, 30), knowledge.QuestionOf("mulch-depth")!.Between);
        Assert.True(knowledge.QuestionOf("potted-on")!.PastOnly);
        Assert.Equal("A house", knowledge.QuestionOf("place")!.Choices[0].Text);
    }

    [Fact]
    public void Small_records_are_read()
    {
        KnowledgeBase knowledge = FixtureKnowledge.Good;

        Assert.Equal("1.2.3", knowledge.Stamp.Version);
        Assert.Equal(-0.5m, knowledge.Regions["warm-coast"].MeanTemperatureC[11]);
        Assert.Equal("04-05", knowledge.Regions["warm-coast"].LastFrost);
        Assert.Null(knowledge.Regions["warm-coast"].FirstFrost);
        Assert.Equal(18.50m, knowledge.Prices["labour"].Value);
        Assert.Equal(new DateOnly(2026, 11, 25), knowledge.Prices["labour"].Checked);
        Assert.Equal(new Span(80, 95), knowledge.Scale["good"].ReductionPercent);
        Assert.Equal("The authors. 1999. A book: with a colon", knowledge.Sources["book"].Citation);
        Assert.Contains("common-practice", knowledge.Sources.Keys);
        Assert.Equal("granules", knowledge.Vocabulary["formulation"].TextOf("GR"));
    }

    [Fact]
    public void A_worked_visit_is_read_with_what_it_must_lead_to()
    {
        WorkedVisit worked = Assert.Single(FixtureKnowledge.Good.WorkedVisits);
        Expectation expectation = Assert.Single(worked.Expectations);

        Assert.Equal("visits/wet-house.yaml", worked.File);
        Assert.Equal(["let-it-dry"], expectation.Clear);
        Assert.Equal([new ExpectedBar("oxadine-granules", "treatment-must-allow-the-cover")], expectation.Barred);
        Assert.Equal([new ExpectedWait("let-it-dry", "sides")], expectation.Waiting);
        Assert.Equal([new ExpectedStatus("oxadine-granules", "not-yet")], expectation.Status);
        Assert.Equal([new ExpectedUntil("oxadine-granules", new DateOnly(2026, 5, 2), null)], expectation.Until);
        Assert.Equal([new ExpectedWait("let-it-dry", "sides")], expectation.Unless);
        Assert.Equal("treatment", expectation.NoClear);
        Assert.True(expectation.NoClearReachingCrop);
        Assert.Equal("sides", expectation.NextQuestion);
        Assert.Equal(["drying-helps"], expectation.Fires);
        Assert.Empty(expectation.Holds);
    }

    [Fact]
    public void The_order_in_which_files_were_written_changes_neither_stamp_nor_content()
    {
        var fixture = new FixtureKnowledge();
        using var forwards = new TempFolder();
        using var backwards = new TempFolder();
        fixture.WriteTo(forwards);
        fixture.WriteTo(backwards, fixture.Paths.Reverse());

        KnowledgeBase one = KnowledgeFolder.Load(forwards.Path).Value!;
        KnowledgeBase other = KnowledgeFolder.Load(backwards.Path).Value!;

        Assert.Equal(one.Stamp, other.Stamp);
        Assert.Equal(one.Judgements.Select(j => j.Id), other.Judgements.Select(j => j.Id));
        Assert.Equal(one.Judgements.Select(j => j.Where), other.Judgements.Select(j => j.Where));
        Assert.Equal(one.Judgements.Select(j => j.Id).Order(StringComparer.Ordinal), one.Judgements.Select(j => j.Id));
    }

    [Fact]
    public void One_changed_byte_changes_the_stamp()
    {
        KnowledgeStamp changed = new FixtureKnowledge()
            .Change("weeds/liverwort.yaml", "with cups.", "with cups!")
            .Load()
            .Value!.Stamp;

        Assert.NotEqual(FixtureKnowledge.Good.Stamp, changed);
        Assert.Matches("^[0-9a-f]{64}$", changed.Hash);
        Assert.Equal($"1.2.3+{changed.Hash[..12]}", changed.Brief);
    }

    [Fact]
    public void Content_that_moves_to_another_file_changes_the_stamp()
    {
        var moved = new FixtureKnowledge();
        moved.With("judgements/roof.yaml", moved["judgements/under-cover.yaml"]).Without("judgements/under-cover.yaml");

        Assert.NotEqual(FixtureKnowledge.Good.Stamp, moved.Load().Value!.Stamp);
    }

    [Fact]
    public void Notes_and_editors_leftovers_beside_the_records_change_nothing()
    {
        var fixture = new FixtureKnowledge()
            .With("README.md", "# Notes")
            .With("weeds/.#liverwort.yaml", "half a file: [")
            .With("crops.yaml.bak", "old");

        Assert.Equal(FixtureKnowledge.Good.Stamp, fixture.Load().Value!.Stamp);
    }

    [Fact]
    public void Culture_changes_nothing()
    {
        using var culture = new CommaCulture();

        KnowledgeBase knowledge = new FixtureKnowledge().Load().Value!;

        Assert.Equal(1.6m, knowledge.Weeds["liverwort"].SpreadDistanceM);
        Assert.Equal(-0.5m, knowledge.Regions["warm-coast"].MeanTemperatureC[11]);
        Assert.Equal(FixtureKnowledge.Good.Stamp, knowledge.Stamp);
        Assert.Equal(new DateOnly(2026, 11, 25), knowledge.Treatments["oxadine-granules"].Checked);
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over()
    {
        var fixture = new FixtureKnowledge();
        fixture.With("crops.yaml", [0xEF, 0xBB, 0xBF, .. fixture["crops.yaml"]]);

        Assert.Equal(3, fixture.Load().Value!.Crops.Count);
    }
}
