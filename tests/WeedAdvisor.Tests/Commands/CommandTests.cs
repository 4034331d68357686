using System.Text.Json;
using WeedAdvisor.Commands;
using WeedAdvisor.Golden;

namespace WeedAdvisor.Tests.Commands;

public sealed class CommandTests
{
    [Fact]
    public void Demo() => ExpectedText.Matches(Good("demo"), "Demo");

    [Fact]
    public void Why() => ExpectedText.Matches(Good("why", "demo-spring.yaml", "sample-granule"), "Why");

    [Fact]
    public void Why_takes_a_name_as_well() =>
        Assert.Equal(
            Good("why", "demo-spring.yaml", "pull-by-hand"),
            Good("why", "demo-spring.yaml", "pull the WEEDS by hand")
        );

    [Fact]
    public void Knowledge_check() => ExpectedText.Matches(Good("knowledge", "check"));

    [Fact]
    public void Knowledge_show_of_a_treatment() => ExpectedText.Matches(Good("knowledge", "show", "sample-granule"));

    [Fact]
    public void Knowledge_list() => Assert.Equal("liverwort  Liverwort\n", Good("knowledge", "list", "weeds"));

    [Fact]
    public void Advise_on_the_demo_visit_is_the_demo() =>
        Assert.Equal(Good("demo"), Good("advise", "demo-spring.yaml"));

    [Fact]
    public void Full_shows_everything()
    {
        string full = Good("advise", "demo-spring.yaml", "--full");
        Assert.Contains("why: standing-weeds-are-pulled", full, StringComparison.Ordinal);
        Assert.DoesNotContain("why: standing-weeds-are-pulled", Good("demo"), StringComparison.Ordinal);
        Assert.Equal(full, Good("demo", "--full"));
    }

    [Fact]
    public void A_visit_may_come_through_a_pipe()
    {
        using var visit = new StringReader(File.ReadAllText(CommandRun.SmallVisit));
        Assert.Equal(Good("demo"), CommandRun.In(visit, "advise", "-").Out);
    }

    [Fact]
    public void Sources_are_cited_when_asked_for()
    {
        string text = Good("advise", "demo-spring.yaml", "--sources");
        Assert.Contains("[sample-book]\n      A. Author. 2001. A sample book\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("A. Author", Good("demo"), StringComparison.Ordinal);
    }

    [Fact]
    public void One_area_only()
    {
        string text = Good("advise", "demo-spring.yaml", "--area", "yard");
        Assert.Contains("Container yard", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Mist house", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_for_programs()
    {
        using var json = JsonDocument.Parse(Good("advise", "demo-spring.yaml", "--format", "json"));
        JsonElement mist = json.RootElement.GetProperty("areas")[0];
        Assert.Equal("pull-by-hand", mist.GetProperty("clear")[0].GetProperty("action").GetString());
        Assert.Equal("prohibited", mist.GetProperty("barred")[0].GetProperty("severity").GetString());
        JsonElement yard = json.RootElement.GetProperty("areas")[1];
        Assert.Equal("cover", yard.GetProperty("waiting")[0].GetProperty("needs")[0].GetProperty("id").GetString());
    }

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(100)]
    public void No_line_is_wider_than_asked_for(int width)
    {
        string[] args = ["--width", $"{width}"];
        string[] texts =
        [
            Good(["demo", .. args]),
            Good(["demo", "--full", .. args]),
            Good(["why", "demo-spring.yaml", "sample-granule", .. args]),
            Good(["knowledge", "show", "liverwort", .. args]),
            Good(["knowledge", "list", "judgements", .. args]),
        ];
        Assert.All(texts.SelectMany(text => text.Split('\n')), line => Assert.True(line.Length <= width, line));
    }

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    public void Another_culture_gives_the_same_bytes(string format)
    {
        string[] args = ["advise", "demo-spring.yaml", "--sources", "--format", format];
        string plain = Good(args);
        using var culture = new CommaCulture();
        Assert.Equal(plain, Good(args));
    }

    [Fact]
    public void Worked_visits_that_come_as_expected() =>
        Assert.EndsWith(" gaps\n5 passed, 0 failed\n", Good("knowledge", "test"), StringComparison.Ordinal);

    [Fact]
    public void Knowledge_coverage()
    {
        CommandRun run = CommandRun.Of("knowledge", "coverage");
        Assert.Equal(ExitCode.Negative, run.Code);
        ExpectedText.Matches(run.Out);
    }

    [Fact]
    public void Knowledge_doc() => ExpectedText.Matches(Good("knowledge", "doc"));

    [Fact]
    public void Worked_visits_that_do_not_end_with_code_1_and_a_line_each()
    {
        using var copy = new RulesCopy();
        copy.Replace("visits/demo-spring.yaml", "clear: [pull-by-hand]", "not-clear: [pull-by-hand]");
        CommandRun run = CommandRun.Of("knowledge", "test", "--knowledge", copy.Folder);
        Assert.Equal(ExitCode.Negative, run.Code);
        string[] lines = run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Matches(
            "^visits/demo-spring.yaml:\\d+: mist-house: expected pull-by-hand not to be clear; it is clear with rank "
                + "1$",
            lines[0]
        );
        Assert.Equal("4 passed, 1 failed", lines[^1]);
    }

    [Fact]
    public void The_option_wins_over_the_environment()
    {
        using var copy = new RulesCopy();
        copy.Replace("knowledge.yaml", "9.9.9", "8.8.8");
        Assert.Contains("8.8.8", Good("--knowledge", copy.Folder, "knowledge", "check"), StringComparison.Ordinal);
        Assert.Contains("8.8.8", Good("knowledge", "check", "--knowledge", copy.Folder), StringComparison.Ordinal);
        Assert.Contains("9.9.9", Good("knowledge", "check"), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_option_and_environment_the_shipped_rules_beside_the_program_are_used()
    {
        string program = Path.GetDirectoryName(CommandRun.SmallRules)!;
        CommandRun run = CommandRun.With(s => s with { ProgramFolder = program, Environment = _ => null }, "demo");
        Assert.Equal(ExitCode.InputOutput, run.Code);
        Assert.Contains(Path.Combine(program, "rules"), run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_person_at_a_terminal_gets_the_screens()
    {
        (CommandRun run, ScreensAsked? opened) = AtATerminal();
        Assert.Equal(new ScreensAsked(new KnowledgeFolders(CommandRun.SmallRules, null), null, null), opened);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("visits/demo-spring.yaml")]
    [InlineData("no/such/visit.yaml")]
    public void A_visit_file_alone_opens_the_screens_with_it(string visit)
    {
        (CommandRun run, ScreensAsked? opened) = AtATerminal(visit);
        Assert.Equal(new ScreensAsked(new KnowledgeFolders(CommandRun.SmallRules, null), null, visit), opened);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void A_word_that_names_no_file_is_a_command_spelt_wrong()
    {
        (CommandRun run, ScreensAsked? opened) = AtATerminal("advice");
        Assert.Null(opened);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains("unknown command 'advice' (did you mean 'advise'?)", run.Error, StringComparison.Ordinal);
    }

    // What is no visit is told before the screen is taken.
    [Theory]
    [InlineData("crops.yaml", ExitCode.Usage)]
    [InlineData("no-such-visit.yaml", ExitCode.InputOutput)]
    public void The_screens_do_not_open_on_what_is_no_visit(string file, int code)
    {
        string path = Path.Combine(CommandRun.SmallRules, file);
        CommandRun run = CommandRun.With(
            s => s with { IsInputTerminal = true, IsOutputTerminal = true, OpenScreens = ScreensCommand.Run },
            path
        );
        Assert.Equal(code, run.Code);
        Assert.Empty(run.Out);
        string said = code == ExitCode.Usage ? path : "weedadvisor: no visit file";
        Assert.StartsWith(said, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_terminal_a_visit_file_alone_shows_its_advice()
    {
        string visit = Path.Combine(CommandRun.SmallRules, "visits", "demo-spring.yaml");
        Assert.Equal(Good("advise", visit), Good(visit));
    }

    private static (CommandRun Run, ScreensAsked? Opened) AtATerminal(params string[] args)
    {
        ScreensAsked? opened = null;
        CommandRun run = CommandRun.With(
            s =>
                s with
                {
                    IsInputTerminal = true,
                    IsOutputTerminal = true,
                    OpenScreens = (_, asked) =>
                    {
                        opened = asked;
                        return ExitCode.Done;
                    },
                },
            args
        );
        return (run, opened);
    }

    [Fact]
    public void Without_a_terminal_the_program_alone_shows_the_demo() => Assert.Equal(Good("demo"), Good());

    private static string Good(params string[] args)
    {
        CommandRun run = CommandRun.Of(args);
        Assert.Equal("", run.Error);
        Assert.Equal(ExitCode.Done, run.Code);
        return run.Out;
    }
}
