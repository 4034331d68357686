using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Session;

public sealed class UndoTests
{
    private const int Edits = 50;
    private readonly FakeKeeper _keeper = new();

    [Fact]
    public void After_fifty_edits_undoing_all_gives_back_the_same_file_and_advice_and_redoing_all_the_last_ones() =>
        Gen.Int[0, int.MaxValue]
            .Array[499]
            .Sample(
                tape =>
                {
                    var source = new SwitchedAdvice();
                    var session = new InterviewSession(
                        ShippedRules.Knowledge,
                        source,
                        WithHead(ShippedRules.Demo),
                        _keeper
                    );
                    (string File, string Advice) first = Bytes(session);
                    source.IsLive = false;
                    string begun = States(session);
                    var edits = new RandomEdits(session, tape);
                    var files = new List<string> { first.File };
                    while (session.EditsDone < Edits)
                    {
                        edits.Edit();
                        Add(files, VisitText.Of(session.Visit));
                    }

                    source.IsLive = true;
                    int lastArea = session.AreaIndex;
                    session.GoToArea(lastArea);
                    (string File, string Advice) last = Bytes(session);
                    string states = States(session);

                    source.IsLive = false;
                    var undone = new List<string> { last.File };
                    while (session.EditsUndone < Edits)
                    {
                        source.IsLive = session.EditsUndone == Edits - 1;
                        Assert.NotNull(session.Undo());
                        Add(undone, VisitText.Of(session.Visit));
                    }

                    Assert.Null(session.Undo());
                    Assert.Equal(files.AsEnumerable().Reverse(), undone);
                    Assert.True(session.IsSaved);
                    session.GoToArea(0);
                    Assert.Equal(first, Bytes(session));
                    Assert.Equal(begun, States(session));

                    source.IsLive = false;
                    var redone = new List<string> { first.File };
                    while (session.EditsUndone > 0)
                    {
                        source.IsLive = session.EditsUndone == 1;
                        Assert.NotNull(session.Redo());
                        Add(redone, VisitText.Of(session.Visit));
                    }

                    Assert.Null(session.Redo());
                    Assert.Equal(files, redone);
                    Assert.Equal(states, States(session));
                    Assert.Equal(last.File, VisitText.Of(_keeper.Kept!));
                    source.IsLive = true;
                    session.GoToArea(lastArea);
                    Assert.Equal(last, Bytes(session));
                },
                iter: Sizes.Of(8, 1000),
                threads: 1
            );

    [Fact]
    public void An_edit_undone_takes_the_interview_back_to_its_page_and_names_it()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.Next();
        Say(session, "cover", "open-sky");
        session.Next();
        Assert.Equal("stock", session.Current?.Id);

        Assert.Equal("cover of Area 1", session.Undo());
        Assert.Equal("cover", session.Current?.Id);
        Assert.False(session.Area.Answers.ContainsKey("cover"));
        Assert.Equal("place of Area 1", session.Undo());
        Assert.Equal("place", session.Current?.Id);
        Assert.Null(session.Undo());

        Assert.Equal("place of Area 1", session.Redo());
        Assert.Equal("cover of Area 1", session.Redo());
        Assert.Equal("cover", session.Current?.Id);
        Assert.Null(session.Redo());
        Assert.Equal("open-sky", session.Area.WordOf("cover"));
    }

    [Fact]
    public void Every_kind_of_edit_has_a_name()
    {
        InterviewSession session = Begin();
        session.Change(session.Area.WithWeed(new WeedSeen("liverwort", "mature", 20)));
        session.SayNotKnown(SmallTrade.Question("weeds"));
        session.Change(session.Area.WithPast(new PastApplication("pendimethalin-granules", null, null, WordSet.Empty)));
        session.AddArea("Mist house");
        session.RenameArea(1, "Far mist house");
        session.Describe(session.Visit.Date.AddDays(1), null, null);
        session.RemoveArea(0);
        var names = new List<string>();
        while (session.Undo() is { } name)
            names.Add(name);
        Assert.Equal(
            [
                "removing Area 1",
                "the visit's day, title or nursery",
                "naming Far mist house",
                "adding Mist house",
                "earlier applications of Area 1",
                "weeds of Area 1",
                "weeds of Area 1",
            ],
            names
        );
    }

    [Fact]
    public void An_area_that_was_removed_comes_back_with_all_that_was_said_of_it_and_is_shown()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        Say(session, "cover", "film-on");
        Say(session, "sides", "open");
        Say(session, "cover", "open-sky");
        session.SayNotKnown(SmallTrade.Question("weeds"));
        session.AddArea("Mist house");
        string before = States(session);
        session.RemoveArea(0);
        session.AddArea("Area 1");
        session.Undo();

        Assert.Equal("removing Area 1", session.Undo());
        Assert.Equal("Area 1", session.Area.Name);
        Assert.Equal(before, States(session));
        Say(session, "cover", "film-on");
        Assert.Equal("open", session.Area.WordOf("sides"));
    }

    [Fact]
    public void The_same_answer_again_is_no_edit()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        Say(session, "place", "walkway");
        session.RenameArea(0, "Area 1");
        session.Describe(session.Visit.Date, " ", null);
        Assert.Equal(1, session.EditsDone);
        Assert.Equal(1, _keeper.Times);
    }

    [Fact]
    public void A_new_edit_ends_what_could_be_done_again()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.Undo();
        Say(session, "cover", "open-sky");
        Assert.Null(session.Redo());
    }

    [Fact]
    public void What_is_kept_for_recovery_and_whether_it_is_saved_follow_every_undo()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.MarkSaved("a.yaml");
        Say(session, "cover", "open-sky");
        session.Undo();
        Assert.True(session.IsSaved);
        Assert.Null(_keeper.Kept);
        session.Undo();
        Assert.False(session.IsSaved);
        Assert.Empty(_keeper.Kept!.Areas[0].Answers);
        session.Redo();
        Assert.True(session.IsSaved);
        session.Redo();
        Assert.False(session.IsSaved);
        Assert.Equal(session.Visit, _keeper.Kept);
    }

    [Fact]
    public void Another_visit_has_edits_of_its_own()
    {
        InterviewSession session = Begin();
        Say(session, "place", "walkway");
        session.Open(ShippedRules.Demo, "demo.yaml");
        Assert.Null(session.Undo());
        Assert.Same(ShippedRules.Demo, session.Visit);
    }

    [Fact]
    public void Answers_that_an_edit_sets_aside_are_named()
    {
        InterviewSession session = Begin();
        Say(session, "stock", "established");
        session.Say("potted-on", new Answer.Date(new DateOnly(2026, 4, 1)));
        session.Say("mulch-depth", new Answer.Number(3));
        Assert.Empty(session.SetAside);
        Say(session, "stock", "none-present");
        Assert.Equal(["potted-on", "mulch-depth"], session.SetAside.Select(question => question.Id));
        session.Undo();
        Assert.Empty(session.SetAside);
        Assert.True(session.Area.Answers.ContainsKey("potted-on"));
    }

    private InterviewSession Begin() =>
        new(SmallTrade.Knowledge, new FakeAdvice(), VisitEdits.Begin(new DateOnly(2026, 4, 14)), _keeper);

    private static void Say(InterviewSession session, string question, string word) =>
        session.Say(question, new Answer.Words(WordSet.Of(word)));

    /// <summary>
    /// The visit with what all its areas say said at its head, and an area of whose weeds and past nothing was said.
    /// </summary>
    private static Visit WithHead(Visit visit)
    {
        Visit told = visit with
        {
            Areas = visit.Areas.SetItem(0, visit.Areas[0] with { Weeds = null, Past = null }),
            Head = visit
                .Areas[0]
                .Answers.RemoveRange(
                    visit
                        .Areas[0]
                        .Answers.Where(said =>
                            visit.Areas.Any(area =>
                                area.Answers.GetValueOrDefault(said.Key)?.Equals(said.Value) != true
                            )
                        )
                        .Select(said => said.Key)
                ),
        };
        Assert.NotEmpty(told.Head);
        return told;
    }

    /// <summary>The visit as its file holds it, and the advice of the area shown as programs read it.</summary>
    private static (string File, string Advice) Bytes(InterviewSession session)
    {
        Visit here = session.Visit with { Areas = [session.Area] };
        return (
            VisitText.Of(session.Visit),
            JsonReport.Of(new VisitAdvice(session.Knowledge.Stamp, here, [session.Advice]), session.Knowledge)
        );
    }

    /// <summary>How far every question of every area has got; the interview comes back to where it was.</summary>
    private static string States(InterviewSession session)
    {
        int at = session.AreaIndex;
        var states = new List<string>();
        for (int i = 0; i < session.Visit.Areas.Length; i++)
        {
            session.GoToArea(i);
            states.Add(
                session.Area.Id
                    + ": "
                    + string.Join(
                        ' ',
                        session
                            .Knowledge.Questions.Select(session.StateOf)
                            .Select(state => state == QuestionState.Skipped ? QuestionState.Open : state)
                    )
            );
        }

        session.GoToArea(at);
        return string.Join('\n', states);
    }

    private static void Add(List<string> files, string file)
    {
        if (files[^1] != file)
            files.Add(file);
    }

    /// <summary>
    /// The advice of the shipped rules where a law looks at it; in between, when nobody looks, the quick one.
    /// </summary>
    private sealed class SwitchedAdvice : IAdviceSource
    {
        private readonly LiveAdviceSource _live = new(ShippedRules.Advisor);
        private readonly FakeAdvice _quick = new();

        public bool IsLive { get; set; } = true;

        public AreaAdvice Of(AreaCase area) => IsLive ? _live.Of(area) : _quick.Of(area);
    }
}
