using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Files;

public sealed class RecoveryTests : IDisposable
{
    private static readonly FileStamp s_stamp = FileStamp.Of("as read"u8);

    private readonly string _folder = Directory.CreateTempSubdirectory("weedadvisor-").FullName;
    private readonly List<RecoveryFile> _windows = [];

    private string State => Path.Combine(_folder, "state");

    public void Dispose()
    {
        _windows.ForEach(window => window.Dispose());
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void Each_window_keeps_its_own_draft_and_sees_none_of_a_living_one()
    {
        RecoveryFile one = Window(),
            other = Window();
        one.Keep(Visit("One"), null);
        other.Keep(Visit("Other"), null);

        Assert.NotEqual(one.Where, other.Where);
        Assert.Contains("One", File.ReadAllText(one.Where), StringComparison.Ordinal);
        Assert.Contains("Other", File.ReadAllText(other.Where), StringComparison.Ordinal);
        Assert.Empty(Window().Offers().Found);
    }

    [Fact]
    public void Drafts_of_dead_windows_are_offered_newest_first_to_one_window_only_with_day_nursery_and_file()
    {
        Leave(Visit("Old"), null, hoursAgo: 2);
        Leave(Visit("New") with { Nursery = "Far End (invented)" }, "mine.yaml", hoursAgo: 1);
        RecoveryFile window = Window();

        IReadOnlyList<BrokenOff> found = window.Offers().Found;

        Assert.Equal(["New", "Old"], found.Select(one => one.Draft.Visit.Areas[0].Name));
        Assert.Equal(
            [
                "The interview of 2026-04-14 at Far End (invented) (New) was broken off before it was saved. "
                    + $"Its file is {Path.Combine(_folder, "mine.yaml")}.",
                "The interview of 2026-04-14 (Old) was broken off before it was saved. It is in no file yet.",
            ],
            found.Select(one => one.Told)
        );
        Assert.Equal(s_stamp, found[0].Draft.Stamp);
        Assert.Empty(Window().Offers().Found);
        window.Release();
        Assert.Equal(2, Window().Offers().Found.Count);
    }

    [Fact]
    public void A_draft_that_is_taken_is_kept_by_the_window_that_took_it_and_the_others_are_offered_again()
    {
        Leave(Visit("Old"), null, hoursAgo: 2);
        Leave(Visit("New"), null, hoursAgo: 1);
        RecoveryFile window = Window();
        BrokenOff taken = window.Offers().Found[0];

        window.Adopt(taken);
        Assert.Equal(taken.Path, window.Where);
        Assert.Equal(["Old"], Names(Window().Offers().Found));

        window.Keep(Visit("Newer"), null);
        window.Dispose();
        Assert.Equal(["Newer"], Names(Window().Offers().Found));
    }

    [Fact]
    public void A_declined_draft_never_replaces_another()
    {
        Leave(Visit("One"), null);
        string first = Window().Offers().Found.Single().Decline();
        _windows[^1].Dispose();
        Leave(Visit("Two"), null);
        string second = Window().Offers().Found.Single().Decline();

        string[] aside =
        [
            Path.Combine(State, "declined-2026-04-14.yaml"),
            Path.Combine(State, "declined-2026-04-14-2.yaml"),
        ];
        Assert.Equal([$"It is put aside in {aside[0]}.", $"It is put aside in {aside[1]}."], [first, second]);
        Assert.Contains("One", File.ReadAllText(aside[0]), StringComparison.Ordinal);
        Assert.Contains("Two", File.ReadAllText(aside[1]), StringComparison.Ordinal);
        _windows[^1].Dispose();
        Assert.Empty(Window().Offers().Found);
    }

    [Fact]
    public void What_was_there_before_a_visit_was_emptied_is_offered_too()
    {
        using (RecoveryFile window = Window())
        {
            var session = new InterviewSession(SmallTrade.Knowledge, new FakeAdvice(), Visit("Full"), window);
            foreach (
                string question in new[] { "place", "cover", "stock", "edible" }.Where(id =>
                    SmallTrade.Knowledge.Questions.Any(q => q.Id == id)
                )
            )
                session.Say(question, new Answer.NotKnown());
            session.Change(
                session.Area with
                {
                    Weeds = [new WeedSeen("liverwort", null, 5), new WeedSeen("oxalis", null, 5)],
                }
            );
            session.Change(session.Area with { Weeds = null });
            while (session.Area.Answers.Count > 0)
                session.Clear(SmallTrade.Question(session.Area.Answers.Keys.First()));
            Assert.True(session.IsSaved);
        }

        BrokenOff found = Assert.Single(Window().Offers().Found);
        Assert.EndsWith("This is how it stood before most of it was taken out.", found.Told, StringComparison.Ordinal);
        Assert.Equal(2, found.Draft.Visit.Areas[0].Weeds!.Value.Length);
        _windows[^1].Adopt(found);
        _windows[^1].Discard();
        _windows[^1].Dispose();
        Assert.Empty(Directory.GetFiles(State));
    }

    [Fact]
    public void Filled_again_or_saved_there_is_nothing_fuller_to_offer()
    {
        Visit full = Visit("Full") with
        {
            Areas = [.. Enumerable.Range(0, 9).Select(i => VisitArea.Blank($"a-{i}", $"A {i}"))],
        };
        RecoveryFile window = Window();
        window.Keep(full, null);
        window.Keep(Visit("Emptied"), null);
        Assert.Equal(3, Directory.GetFiles(State).Length);
        window.Keep(full, null);
        Assert.Equal(2, Directory.GetFiles(State).Length);
        window.Discard();
        window.Dispose();
        Assert.Empty(Directory.GetFiles(State));
    }

    [Fact]
    public void The_one_draft_of_earlier_programs_is_still_read()
    {
        Directory.CreateDirectory(State);
        string old = Path.Combine(State, "recovery.yaml");
        AtomicFile.Write(old, VisitText.Of(Visit("Old")));
        AtomicFile.Write(old + ".bak", VisitText.Of(Visit("Older")));
        Assert.Equal(["Old"], Names(Window().Offers().Found));
        _windows[^1].Dispose();
        Assert.Equal(["Old"], Names(Window().Offers().Found));
        Assert.False(File.Exists(old));
    }

    [Fact]
    public void A_broken_draft_of_earlier_programs_gives_way_to_the_copy_before_it()
    {
        Directory.CreateDirectory(State);
        string old = Path.Combine(State, "recovery.yaml");
        AtomicFile.Write(old, "visit: [broken");
        AtomicFile.Write(old + ".bak", VisitText.Of(Visit("Before")));
        Assert.Equal(["Before"], Names(Window().Offers().Found));
        Assert.Equal("visit: [broken", File.ReadAllText(Path.Combine(State, "declined-unreadable.yaml")));
        Assert.False(File.Exists(old));
    }

    [Fact]
    public void Going_on_with_another_visit_leaves_the_draft_for_the_next_start()
    {
        RecoveryFile window = Window();
        var session = new InterviewSession(SmallTrade.Knowledge, new FakeAdvice(), Visit("Left"), window);
        session.RenameArea(0, "Left behind");
        session.Open(Visit("Next"), "next.yaml");
        session.RenameArea(0, "Next one");

        Assert.Equal(["Left behind"], Names(Window().Offers().Found));
        window.Dispose();
        Assert.Equal(["Next one"], Names(Window().Offers().Found));
    }

    private static IEnumerable<string> Names(IEnumerable<BrokenOff> found) =>
        found.Select(one => one.Draft.Visit.Areas[0].Name);

    private static Visit Visit(string area) =>
        new("v", null, new DateOnly(2026, 4, 14), null, [VisitArea.Blank("a", area)]);

    private RecoveryFile Window()
    {
        var window = new RecoveryFile(
            State,
            SmallTrade.Knowledge,
            path => Path.GetFullPath(path, _folder),
            _ => s_stamp
        );
        _windows.Add(window);
        return window;
    }

    private void Leave(Visit visit, string? file, int hoursAgo = 0)
    {
        using RecoveryFile window = Window();
        Assert.Null(window.Keep(visit, file));
        File.SetLastWriteTimeUtc(window.Where, File.GetLastWriteTimeUtc(window.Where).AddHours(-hoursAgo));
    }
}
