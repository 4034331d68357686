using WeedAdvisor.Interview;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Commands;

public sealed class AskCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("weedadvisor-").FullName;

    private string Recovery => Path.Combine(_folder, "state", "weedadvisor", "recovery.yaml");

    private string Aside => Path.Combine(_folder, "state", "weedadvisor", "recovery-aside.yaml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_saved_interview_is_a_visit_that_advise_reads()
    {
        CommandRun asked = Ask("1\nsave\nquit\n", "ask", "--out", "mine.yaml");
        Assert.Equal(ExitCode.Done, asked.Code);
        Assert.Contains("Saved to mine.yaml.", asked.Out, StringComparison.Ordinal);
        Assert.False(File.Exists(Recovery));
        Assert.False(File.Exists(Recovery + ".bak"));
        CommandRun advised = Ask("", "advise", "mine.yaml");
        Assert.Equal("", advised.Error);
        Assert.Equal(ExitCode.Done, advised.Code);
    }

    [Fact]
    public void An_interview_goes_on_from_a_file()
    {
        CommandRun asked = Ask("area name Far end\nsave\nquit\n", "ask", CommandRun.SmallVisit, "--out", "copy.yaml");
        Assert.Equal(ExitCode.Done, asked.Code);
        Assert.Contains("Far end", File.ReadAllText(Path.Combine(_folder, "copy.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public void When_the_input_ends_the_exit_code_says_so_and_the_answers_are_there()
    {
        CommandRun asked = Ask("1\n", "ask");
        Assert.Equal(ExitCode.Negative, asked.Code);
        Assert.Contains("The input has ended before the visit was saved.", asked.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Recovery));
    }

    [Fact]
    public void A_broken_off_interview_is_offered_and_goes_on()
    {
        Ask("area name Mist house\n", "ask");
        CommandRun asked = Ask("yes\nsave all.yaml\nquit\n", "ask");
        Assert.Contains("(Mist house) was broken off", asked.Out, StringComparison.Ordinal);
        Assert.Contains("Mist house", File.ReadAllText(Path.Combine(_folder, "all.yaml")), StringComparison.Ordinal);
        Assert.False(File.Exists(Recovery));
    }

    [Theory]
    [InlineData("no\narea name Mist house\nsave all.yaml\nquit\n")]
    [InlineData("area name Mist house\nsave all.yaml\nquit\n")]
    public void A_broken_off_interview_that_is_not_wanted_is_put_aside_and_no_line_is_lost(string typed)
    {
        Ask("area name Old house\n", "ask");
        Ask(typed, "ask");
        Assert.Contains("Mist house", File.ReadAllText(Path.Combine(_folder, "all.yaml")), StringComparison.Ordinal);
        Assert.Contains("Old house", File.ReadAllText(Aside), StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_that_cannot_be_read_is_put_aside_and_told()
    {
        Ask("1\n", "ask");
        File.Delete(Recovery + ".bak");
        AtomicFile.Write(Recovery, "nothing: [good");
        File.Delete(Recovery + ".bak");
        CommandRun asked = Ask("quit\n", "ask");
        Assert.Contains("cannot be read with this knowledge", asked.Out, StringComparison.Ordinal);
        Assert.Equal("nothing: [good", File.ReadAllText(Aside));
    }

    [Fact]
    public void Where_nothing_can_be_kept_the_first_answer_says_so_and_saving_still_works()
    {
        AtomicFile.Write(Path.Combine(_folder, "state"), "a file where the folder should be");
        CommandRun asked = Ask("1\nsave mine.yaml\nquit\n", "ask");
        Assert.Contains("Note: this answer is not kept for recovery:", asked.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(_folder, "mine.yaml")));
    }

    [Fact]
    public void Standard_input_is_for_the_answers()
    {
        CommandRun asked = Ask("", "ask", "-");
        Assert.Equal(ExitCode.Usage, asked.Code);
        Assert.Equal(
            "weedadvisor: standard input is for the answers. Name the file of the visit, or leave it out.\n", asked.Error);
    }

    [Fact]
    public void A_visit_with_mistakes_is_not_begun()
    {
        AtomicFile.Write(Path.Combine(_folder, "bad.yaml"), "visit: bad\ndate: 2026-13-01\nareas: []\n");
        Assert.Equal(ExitCode.Usage, Ask("1\n", "ask", "bad.yaml").Code);
        Assert.False(File.Exists(Recovery));
    }

    [Fact]
    public void The_store_tells_why_a_file_cannot_be_written()
    {
        KnowledgeBase knowledge = KnowledgeFolder.Load(CommandRun.SmallRules).Value!;
        var store = new VisitStore(knowledge, path => Path.GetFullPath(path, _folder));
        Visit visit = VisitEdits.Begin(new DateOnly(2026, 4, 14));
        Assert.StartsWith("'none/a.yaml' cannot be written: ", store.Save("none/a.yaml", visit), StringComparison.Ordinal);
        Assert.Equal(["There is no file 'a.yaml'."], store.Load("a.yaml").Problems);
        Assert.Null(store.Save("a.yaml", visit));
        Assert.Equal("visit-2026-04-14", store.Load("a.yaml").Visit!.Id);
    }

    private CommandRun Ask(string typed, params string[] args) => CommandRun.With(
        s => s with
        {
            In = new StringReader(typed),
            WorkingFolder = _folder,
            Environment = name => name == "XDG_STATE_HOME" ? Path.Combine(_folder, "state") : s.Environment(name),
        },
        args);
}
