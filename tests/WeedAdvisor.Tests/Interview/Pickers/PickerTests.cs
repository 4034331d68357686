using WeedAdvisor.Interview.Pickers;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview.Pickers;

public sealed class PickerTests
{
    private readonly InterviewSession _session = new(
        SmallTrade.Knowledge,
        new FakeAdvice(),
        VisitEdits.Begin(new DateOnly(2026, 4, 14))
    );

    [Fact]
    public void A_weed_needs_a_pick_and_a_cover_that_makes_sense()
    {
        var picker = new WeedPicker(_session, null) { Text = "spotted" };
        Assert.Equal("Pick a weed from the list first.", picker.Accept());
        picker.Pick(7);
        Assert.Null(picker.Weed);
        picker.Pick(0);
        picker.Cover = "101";
        Assert.Equal("\"101\" is not a cover. Give a percentage from 0 to 100.", picker.Accept());
        picker.Cover = "";
        Assert.Null(picker.Accept());
        Assert.Equal([new WeedSeen("spurge-spotted", null, null)], _session.Area.Weeds!.Value.AsEnumerable());
    }

    [Fact]
    public void A_weed_that_turns_out_to_be_another_takes_its_place()
    {
        _session.Change(_session.Area.WithWeed(new WeedSeen("liverwort", "young", 5)));
        var picker = new WeedPicker(_session, _session.Area.Weeds!.Value[0]) { Text = "oxalis" };
        picker.Pick(0);
        Assert.Null(picker.Accept());
        Assert.Equal([new WeedSeen("oxalis", "young", 5)], _session.Area.Weeds!.Value.AsEnumerable());
    }

    [Fact]
    public void The_share_of_pots_that_have_it_is_told_beside_the_cover()
    {
        var picker = new WeedPicker(_session, null)
        {
            Text = "spotted",
            Cover = "100",
            Pots = "200",
        };
        picker.Pick(0);
        Assert.Equal("\"200\" is not a share of the pots. Give a percentage from 0 to 100.", picker.Accept());
        picker.Pots = "20";
        Assert.Null(picker.Accept());
        WeedSeen seen = Assert.Single(_session.Area.Weeds!.Value);
        Assert.Equal(new WeedSeen("spurge-spotted", null, 100) { PotsPercent = 20 }, seen);
        Assert.Equal(20, seen.CoverOfAreaPercent);
    }

    [Fact]
    public void A_weed_is_told_to_stand_beside_the_pots_and_keeps_it_when_it_is_changed()
    {
        var picker = new WeedPicker(_session, null) { Text = "spotted", Pots = "beside the pots" };
        picker.Pick(0);
        Assert.Null(picker.Accept());
        WeedSeen seen = Assert.Single(_session.Area.Weeds!.Value);
        Assert.Equal(new WeedSeen("spurge-spotted", null, null) { Stands = WeedSeen.InGround }, seen);
        Assert.Null(new WeedPicker(_session, seen) { Cover = "5" }.Accept());
        Assert.Equal(seen with { CoverPercent = 5 }, Assert.Single(_session.Area.Weeds!.Value));
    }

    [Fact]
    public void A_weed_found_by_its_features_is_picked()
    {
        var picker = new WeedPicker(_session, null);
        picker.Narrowing.Tick("milky-sap");
        picker.Narrowing.Tick("purple-spot-on-leaf");
        picker.Take(picker.Narrowing.Found.Fits[0].Weed.Id);
        Assert.Null(picker.Accept());
        Assert.Equal([new WeedSeen("spurge-spotted", null, null)], _session.Area.Weeds!.Value.AsEnumerable());
    }

    [Fact]
    public void An_application_is_told_changed_and_taken_out()
    {
        var picker = new PastPicker(_session, null) { Text = "pendi" };
        Assert.Equal(
            "Pick a treatment from the list first; one that is not in it is told under More.",
            picker.Accept()
        );
        picker.Pick(0);
        picker.Day = "2026-05-01";
        Assert.Equal("2026-05-01 lies after the visit of 2026-04-14.", picker.Accept());
        picker.Day = "2026-03-01";
        picker.Escaped = "liverwort, nothing known";
        Assert.Equal("No weed is called \"nothing known\".", picker.Accept());
        picker.Escaped = "liverwort";
        Assert.Null(picker.Accept());
        var told = new PastApplication(
            "pendimethalin-granules",
            new DateOnly(2026, 3, 1),
            "escapes",
            WordSet.Of("liverwort")
        );
        Assert.Equal([told], _session.Area.Past!.Value.AsEnumerable());

        picker = new PastPicker(_session, 0) { Escaped = "", Result = "clean" };
        Assert.Equal("2026-03-01", picker.Day);
        Assert.Null(picker.Accept());
        Assert.Equal(
            [told with { Result = "clean", Escaped = WordSet.Empty }],
            _session.Area.Past!.Value.AsEnumerable()
        );
        new PastPicker(_session, 0).Remove();
        Assert.Null(_session.Area.Past);
    }

    [Fact]
    public void Taking_the_last_tick_away_does_not_say_that_there_is_none()
    {
        Question question = SmallTrade.Question("equipment");
        Pick(question, 0);
        Pick(question, 2);
        Assert.Equal(new Answer.Words(WordSet.Of("hand-spreader", "mower")), _session.Area.Answers["equipment"]);
        Pick(question, 0);
        Pick(question, 2);
        Assert.False(_session.Area.Answers.ContainsKey("equipment"));
        Pick(question, 3);
        Assert.Equal(new Answer.Words(WordSet.Empty), _session.Area.Answers["equipment"]);
        Pick(question, 1);
        Assert.Equal(new Answer.Words(WordSet.Of("backpack-sprayer")), _session.Area.Answers["equipment"]);
    }

    [Fact]
    public void A_question_that_cannot_be_put_yet_brings_the_one_before_it()
    {
        Assert.Equal("stock", QuestionList.PutFirst(SmallTrade.Knowledge, _session.Area, "potted-on"));
        _session.Say("stock", new Answer.Words(WordSet.Of("established")));
        Assert.Equal("potted-on", QuestionList.PutFirst(SmallTrade.Knowledge, _session.Area, "potted-on"));
    }

    private void Pick(Question question, int at) =>
        ChoicePage.Pick(_session, question, ChoicePage.Of(_session, question)[at]);
}
