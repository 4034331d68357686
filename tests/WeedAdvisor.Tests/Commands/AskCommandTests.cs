using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Commands;

public sealed class AskCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("weedadvisor-").FullName;

    private string State => Path.Combine(_folder, "state", "weedadvisor");

    private string[] Drafts => Directory.Exists(State) ? Directory.GetFiles(State, "recovery-*") : [];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_saved_interview_is_a_visit_that_advise_reads()
    {
        CommandRun asked = Ask("1\nsave\nquit\n", "ask", "--out", "mine.yaml");
        Assert.Equal(ExitCode.Done, asked.Code);
        Assert.Contains("Saved to mine.yaml.", asked.Out, StringComparison.Ordinal);
        Assert.Empty(Drafts);
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
        Assert.Single(Drafts);
    }

    [Fact]
    public void A_broken_off_interview_is_offered_and_goes_on()
    {
        Ask("area name Mist house\n", "ask");
        CommandRun asked = Ask("yes\nsave all.yaml\nquit\n", "ask");
        Assert.Contains("(Mist house) was broken off", asked.Out, StringComparison.Ordinal);
        Assert.Contains("Mist house", File.ReadAllText(Path.Combine(_folder, "all.yaml")), StringComparison.Ordinal);
        Assert.Empty(Drafts);
    }

    [Fact]
    public void A_broken_off_interview_that_is_not_wanted_is_put_aside_and_told_where_and_the_next_does_not_replace_it()
    {
        foreach (string house in new[] { "Old house", "Older house" })
        {
            Ask($"area name {house}\n", "ask");
            CommandRun asked = Ask("no\narea name Mist house\nsave all.yaml\nquit\n", "ask");
            Assert.Contains(
                "Mist house",
                File.ReadAllText(Path.Combine(_folder, "all.yaml")),
                StringComparison.Ordinal
            );
            Assert.Contains("It is put aside in ", Flat(asked.Out), StringComparison.Ordinal);
            Assert.Empty(Drafts);
        }

        string[] aside = [.. Directory.GetFiles(State, "declined-*").Order(StringComparer.Ordinal)];
        Assert.Equal(2, aside.Length);
        Assert.Contains("Older house", File.ReadAllText(aside[0]), StringComparison.Ordinal);
        Assert.Contains("Old house", File.ReadAllText(aside[1]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_script_that_knows_nothing_of_a_broken_off_interview_loses_nothing()
    {
        Ask("area name Old house\n", "ask");
        CommandRun asked = Ask("area name Mist house\nsave all.yaml\nquit\n", "ask");
        Assert.Contains("Mist house", File.ReadAllText(Path.Combine(_folder, "all.yaml")), StringComparison.Ordinal);
        Assert.Contains("It is kept, and offered again at the next start.", asked.Out, StringComparison.Ordinal);
        Assert.Contains("Old house", File.ReadAllText(Assert.Single(Drafts)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_that_cannot_be_read_is_put_aside_and_told()
    {
        Ask("1\n", "ask");
        AtomicFile.Write(Assert.Single(Drafts), "nothing: [good");
        CommandRun asked = Ask("quit\n", "ask");
        Assert.Contains("cannot be read with this knowledge", Flat(asked.Out), StringComparison.Ordinal);
        Assert.Equal("nothing: [good", File.ReadAllText(Path.Combine(State, "declined-unreadable.yaml")));
    }

    [Fact]
    public void A_recovered_visit_knows_its_file_and_that_others_have_changed_it()
    {
        string file = Path.Combine(_folder, "mine.yaml");
        string told = "# told by the foreman\n" + File.ReadAllText(CommandRun.SmallVisit);
        AtomicFile.Write(file, told);
        Ask("nursery Far End (invented)\n", "ask", "mine.yaml");
        CommandRun asked = Ask("yes\nsave\nquit\n", "ask");
        Assert.Contains($"at Far End (invented)", Flat(asked.Out), StringComparison.Ordinal);
        Assert.Contains($"Its file is {file}.", Flat(asked.Out), StringComparison.Ordinal);
        Assert.Contains(
            "Saved to mine.yaml. What was there before is in mine.yaml.bak.",
            Flat(asked.Out),
            StringComparison.Ordinal
        );
        Assert.StartsWith("# told by the foreman\n", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Contains("nursery: Far End", File.ReadAllText(file), StringComparison.Ordinal);

        Ask("nursery Near End (invented)\n", "ask", "mine.yaml");
        AtomicFile.Write(file, told);
        asked = Ask("yes\nsave\nquit\n", "ask");
        Assert.Contains(
            "Not saved: mine.yaml was changed by another window or program",
            Flat(asked.Out),
            StringComparison.Ordinal
        );
        Assert.Equal(told, File.ReadAllText(file));
    }

    [Fact]
    public void A_file_changed_by_others_is_written_over_only_when_asked_for_and_a_copy_is_kept()
    {
        string file = Path.Combine(_folder, "mine.yaml");
        File.Copy(CommandRun.SmallVisit, file);
        string theirs = "# theirs\n" + File.ReadAllText(file);
        using var typed = new TypedWithDeeds(
            "nursery Mine (invented)\n!\nsave\nsave other.yaml\nnursery Mine again (invented)\nsave mine.yaml\nsave! "
                + "mine.yaml\nquit\n",
            () => AtomicFile.Write(file, theirs)
        );
        CommandRun asked = Ask(typed, "ask", "mine.yaml");
        Assert.Contains(
            "Not saved: mine.yaml was changed by another window or program since it was read here. Type save! to write "
                + "over it "
                + "(a copy of it is kept), or save and another name.",
            Flat(asked.Out),
            StringComparison.Ordinal
        );
        Assert.Contains("Saved to other.yaml.", asked.Out, StringComparison.Ordinal);
        Assert.Contains(
            "Saved to mine.yaml. What was there before is in mine.yaml.bak.",
            Flat(asked.Out),
            StringComparison.Ordinal
        );
        Assert.Equal(theirs, File.ReadAllText(file + ".bak"));
        Assert.Contains("Mine again", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_saves_keep_the_comments_and_the_state_before_the_first()
    {
        string file = Path.Combine(_folder, "mine.yaml");
        string told = "# told by the foreman\n" + File.ReadAllText(CommandRun.SmallVisit);
        AtomicFile.Write(file, told);
        Ask("nursery One (invented)\nsave\nnursery Two (invented)\nsave\nquit\n", "ask", "mine.yaml");
        string[] before = told.Split('\n'),
            after = File.ReadAllText(file).Split('\n');
        Assert.Equal(told, File.ReadAllText(file + ".bak"));
        Assert.Equal(
            before.Where(line => !line.StartsWith("nursery:", StringComparison.Ordinal)),
            after.Where(line => !line.StartsWith("nursery:", StringComparison.Ordinal) && line != "format: 2")
        );
        Assert.Contains("nursery: Two (invented)", after);
    }

    [Fact]
    public void A_visit_is_read_through_a_pipe_and_saved_to_a_file_only()
    {
        if (OperatingSystem.IsWindows())
            return;
        string pipe = Path.Combine(_folder, "pipe");
        Pipes.Make(pipe);
        var feeding = Task.Run(
            () =>
            {
                using var end = new FileStream(pipe, FileMode.Open, FileAccess.Write);
                end.Write(File.ReadAllBytes(CommandRun.SmallVisit));
            },
            TestContext.Current.CancellationToken
        );
        CommandRun asked = Ask("nursery One (invented)\nsave pipe\nsave\nmine.yaml\nquit\n", "ask", "pipe");
        Assert.True(feeding.IsCompleted);
        Assert.Contains(
            "Not saved: 'pipe' is a pipe, not a file; nothing was written to it.",
            asked.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("Saved to mine.yaml.", asked.Out, StringComparison.Ordinal);
        Assert.Contains("nursery: One", File.ReadAllText(Path.Combine(_folder, "mine.yaml")), StringComparison.Ordinal);
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
            "weedadvisor: standard input is for the answers. Name the file of the visit, or leave it out.\n",
            asked.Error
        );
    }

    [Fact]
    public void A_visit_with_mistakes_is_not_begun()
    {
        AtomicFile.Write(Path.Combine(_folder, "bad.yaml"), "visit: bad\ndate: 2026-13-01\nareas: []\n");
        Assert.Equal(ExitCode.Usage, Ask("1\n", "ask", "bad.yaml").Code);
        Assert.Empty(Drafts);
    }

    [Fact]
    public void The_store_tells_why_a_file_cannot_be_written()
    {
        KnowledgeBase knowledge = KnowledgeFolder.Load(CommandRun.SmallRules).Value!;
        var store = new VisitStore(knowledge, path => Path.GetFullPath(path, _folder));
        Visit visit = VisitEdits.Begin(new DateOnly(2026, 4, 14));
        Assert.StartsWith(
            "'none/a.yaml' cannot be written: ",
            store.Save("none/a.yaml", visit).Refusals[0].Why,
            StringComparison.Ordinal
        );
        Assert.Equal(["There is no file 'a.yaml'."], store.Load("a.yaml").Problems);
        Assert.True(store.Save("a.yaml", visit).IsGood);
        Assert.Equal("visit-2026-04-14", store.Load("a.yaml").Visit!.Id);
    }

    private static string Flat(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private CommandRun Ask(string typed, params string[] args)
    {
        using var input = new StringReader(typed);
        return Ask(input, args);
    }

    private CommandRun Ask(TextReader typed, params string[] args) =>
        CommandRun.With(
            s =>
                s with
                {
                    In = typed,
                    WorkingFolder = _folder,
                    Environment = name =>
                        name == "XDG_STATE_HOME" ? Path.Combine(_folder, "state") : s.Environment(name),
                },
            args
        );

    /// <summary>Lines typed, with something done where a line is no more than an exclamation mark.</summary>
    private sealed class TypedWithDeeds(string typed, Action deed) : StringReader(typed)
    {
        public override string? ReadLine()
        {
            string? line = base.ReadLine();
            if (line != "!")
                return line;
            deed();
            return base.ReadLine();
        }
    }
}
