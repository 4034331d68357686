using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview.Session;

public sealed class InterviewSessionTests
{
    private static readonly DateOnly s_day = new(2026, 4, 14);
    private readonly FakeKeeper _keeper = new();

    [Fact]
    public void The_first_questions_are_the_ones_every_area_is_asked()
    {
        InterviewSession session = Begin();
        var asked = new List<string?>();
        for (int i = 0; i < 5; i++)
        {
            asked.Add(session.Current?.Id);
            session.Skip();
        }

        Assert.Equal(["place", "cover", "stock", "weeds", "region"], asked);
        Assert.Equal("surface-moisture", session.Current?.Id);
    }

    [Fact]
    public void A_question_that_no_rule_could_use_here_is_not_asked()
    {
        InterviewSession session = Begin();
        var asked = new List<string?>();
        while (session.Current is { } question)
        {
            asked.Add(question.Id);
            session.SayNotKnown(question);
            session.Next();
        }

        Assert.DoesNotContain("equipment", asked);
        Assert.Contains("mulch-depth", asked);
    }

    [Fact]
    public void A_question_waits_until_the_one_it_depends_on_was_put()
    {
        InterviewSession session = Begin();
        Assert.DoesNotContain(session.Questions, entry => entry.Question.Id == "sides");

        Say(session, "cover", "film-on");
        Assert.Contains(session.Questions, entry => entry.Question.Id == "sides");

        Say(session, "cover", "open-sky");
        Assert.DoesNotContain(session.Questions, entry => entry.Question.Id == "sides");
    }

    [Fact]
    public void A_question_whose_condition_is_not_known_is_asked()
    {
        InterviewSession session = Begin();
        session.SayNotKnown(SmallTrade.Question("cover"));
        Assert.Contains(session.Questions, entry => entry.Question.Id == "sides");
    }

    [Fact]
    public void An_answer_that_stops_applying_leaves_the_visit_and_comes_back_when_it_applies_again()
    {
        InterviewSession session = Begin();
        Say(session, "cover", "film-on");
        Say(session, "sides", "open");

        Say(session, "cover", "open-sky");
        Assert.False(session.Area.Answers.ContainsKey("sides"));

        Say(session, "cover", "film-on");
        Assert.Equal(new Answer.Words(WordSet.Of("open")), session.Area.Answers["sides"]);
    }

    [Fact]
    public void Back_and_next_walk_the_way_already_gone()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.Next();
        Say(session, "cover", "open-sky");
        session.Next();
        Assert.Equal("stock", session.Current?.Id);

        Assert.True(session.Back());
        Assert.True(session.Back());
        Assert.Equal("place", session.Current?.Id);
        Assert.False(session.Back());
        session.Next();
        Assert.Equal("cover", session.Current?.Id);
        session.Next();
        Assert.Equal("stock", session.Current?.Id);
    }

    [Fact]
    public void What_was_passed_over_is_taken_up_from_the_end_page()
    {
        InterviewSession session = Begin();
        while (session.Current is not null)
            session.Skip();
        Assert.True(session.Progress.Skipped > 4);

        session.Next();
        Assert.Equal("place", session.Current?.Id);
        Assert.Equal(0, session.Progress.Skipped);
    }

    [Fact]
    public void Clearing_an_answer_opens_the_question_again()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.Clear(SmallTrade.Question("place"));
        Assert.Equal(QuestionState.Open, session.StateOf(SmallTrade.Question("place")));
        Assert.Empty(session.Area.Answers);
    }

    [Fact]
    public void Not_known_weeds_count_as_put_and_are_not_put_again()
    {
        InterviewSession session = Begin();
        session.SayNotKnown(SmallTrade.Question("weeds"));
        Assert.Null(session.Area.Weeds);
        Assert.Equal(QuestionState.NotKnown, session.StateOf(SmallTrade.Question("weeds")));

        session.Change(session.Area.WithWeed(new WeedSeen("liverwort", "mature", 20)));
        Assert.Equal(QuestionState.Answered, session.StateOf(SmallTrade.Question("weeds")));
    }

    [Fact]
    public void Every_answer_is_kept_at_once_and_the_draft_is_forgotten_after_saving()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        Assert.Equal(1, _keeper.Times);
        Assert.Equal(session.Visit, _keeper.Kept);
        Assert.False(session.IsSaved);

        var store = new FakeStore();
        Assert.True(session.SaveTo(store, "a.yaml").IsGood);
        Assert.True(session.IsSaved);
        Assert.Null(_keeper.Kept);
        Assert.Equal(session.Visit, store.Files["a.yaml"]);
    }

    [Fact]
    public void A_save_that_fails_says_why_and_keeps_the_draft()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        Assert.Equal("no room", session.SaveTo(new FakeStore { Refuses = "no room" }, "a.yaml").Refusals[0].Why);
        Assert.False(session.IsSaved);
        Assert.NotNull(_keeper.Kept);
    }

    [Fact]
    public void A_draft_that_cannot_be_kept_is_told()
    {
        _keeper.Trouble = "the disk is full";
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        Assert.Equal("the disk is full", session.DraftTrouble);
        Assert.Equal(new Answer.Words(WordSet.Of("walkway")), session.Area.Answers["place"]);
    }

    [Fact]
    public void Areas_are_added_renamed_and_removed_and_the_last_one_stays()
    {
        InterviewSession session = Begin();
        session.AddArea("Mist house");
        Assert.Equal("mist-house", session.Area.Id);
        session.AddArea("Mist house");
        Assert.Equal("mist-house-2", session.Area.Id);

        session.RenameArea(2, "Far mist house");
        Assert.Equal("Far mist house", session.Area.Name);
        Assert.Equal("mist-house-2", session.Area.Id);

        Assert.True(session.RemoveArea(0));
        Assert.Equal("Far mist house", session.Area.Name);
        Assert.True(session.RemoveArea(1));
        Assert.Equal("Mist house", session.Area.Name);
        Assert.False(session.RemoveArea(0));
        Assert.Single(session.Visit.Areas);
    }

    [Fact]
    public void A_new_area_has_what_the_head_of_the_visit_says_and_loses_nothing_of_its_own_when_it_goes()
    {
        Visit visit = VisitEdits.Begin(s_day);
        visit = visit with { Head = VisitArea.NoAnswers.Add("region", new Answer.Words(WordSet.Of("warm-south"))) };
        visit = visit.WithNewArea("Mist house");
        Assert.Equal("warm-south", visit.Areas[1].WordOf("region"));
        Assert.Null(Losses.OfArea(visit, visit.Areas[1]));
        Assert.Equal(
            "2 answers, 1 weed and 1 earlier application",
            Losses.OfArea(
                visit,
                visit
                    .Areas[1]
                    .WithAnswer("region", new Answer.NotKnown())
                    .WithAnswer("place", new Answer.Words(WordSet.Of("walkway")))
                    .WithWeed(new WeedSeen("liverwort", null, null))
                    .WithPast(new PastApplication("pendimethalin-granules", null, null, WordSet.Empty))
            )
        );
    }

    [Fact]
    public void Each_area_keeps_its_own_place_in_the_interview()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.Next();
        session.AddArea(null);
        Assert.Equal("Area 2", session.Area.Name);
        Assert.Equal("place", session.Current?.Id);
        session.GoToArea(0);
        Assert.Equal("cover", session.Current?.Id);
    }

    [Fact]
    public void Progress_counts_what_is_wanted_here()
    {
        InterviewSession session = Begin();
        Assert.Equal("0 of 6 answered", session.Progress.ToString());
        Say(session, "stock", "none-present");
        Assert.Equal("1 of 6 answered", session.Progress.ToString());
        Say(session, "stock", "newly-potted");
        Assert.Equal("1 of 8 answered", session.Progress.ToString());
    }

    [Fact]
    public void Removing_the_last_weed_does_not_say_that_there_are_none()
    {
        VisitArea area = VisitArea.Blank("a", "A").WithWeed(new WeedSeen("liverwort", null, null));
        area = area.WithWeed(new WeedSeen("liverwort", "young", 5));
        Assert.Equal([new WeedSeen("liverwort", "young", 5)], area.Weeds!.Value.AsEnumerable());
        Assert.Null(area.WithoutWeed("liverwort").Weeds);
    }

    [Fact]
    public void A_weed_in_two_stages_stands_twice_and_one_of_them_is_changed_or_taken_out_alone()
    {
        var young = new WeedSeen("liverwort", "young", 5);
        var grown = new WeedSeen("liverwort", "mature", 80) { PotsPercent = 20 };
        VisitArea area = VisitArea.Blank("a", "A").WithWeed(young).WithWeed(grown);
        Assert.Equal([young, grown], area.Weeds!.Value.AsEnumerable());
        WeedSeen more = young with { CoverPercent = 9 };
        Assert.Equal([more, grown], area.WithWeed(more).Weeds!.Value.AsEnumerable());
        Assert.Equal([grown], area.WithoutSeen(young).Weeds!.Value.AsEnumerable());
        Assert.Equal(
            [grown with { CoverPercent = 5 }],
            area.WithWeedInPlaceOf(young, grown with { CoverPercent = 5 }).Weeds!.Value.AsEnumerable()
        );
        Assert.Null(area.WithoutWeed("liverwort").Weeds);
    }

    private InterviewSession Begin() => new(SmallTrade.Knowledge, new FakeAdvice(), VisitEdits.Begin(s_day), _keeper);

    private static void Say(InterviewSession session, string question, string word) =>
        session.Say(question, new Answer.Words(WordSet.Of(word)));
}
