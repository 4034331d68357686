using System.Text.Json;
using WeedAdvisor.Commands.Rates;
using WeedAdvisor.Golden;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Reports.Rates;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class RateCommandTests
{
    private static readonly string s_rules = Repository.Rules;

    public static TheoryData<string, string> Forms =>
        [.. RateForms.Groups.SelectMany(group => group.Forms, (group, form) => (group.Id, form.Id))];

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_example_shown_can_be_pasted_and_gives_an_answer(string group, string id)
    {
        string shown = string.Join('\n', RateCommandLine.Example(Form(group, id), 76));
        Assert.All(shown.Split('\n'), line => Assert.True(line.Length <= 76, line));
        string[] words = ShellWords.Of(shown);
        Assert.Equal(["weedadvisor", "rate", group, id], words[..4]);
        CommandRun run = CommandRun.Of([.. words[1..], "--knowledge", s_rules]);
        Assert.Equal("", run.Error);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("\nRESULT\n", run.Out, StringComparison.Ordinal);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_example_as_json_has_what_was_typed_the_figures_and_every_source_in_full(string group, string id)
    {
        RateForm form = Form(group, id);
        string[] words = [.. form.Example.SelectMany(entry => new[] { $"--{entry.Key}", entry.Value })];
        CommandRun run = CommandRun.Of(["rate", group, id, .. words, "--format", "json", "--knowledge", s_rules]);
        Assert.Equal("", run.Error);
        using var json = JsonDocument.Parse(run.Out);
        JsonElement root = json.RootElement;
        Assert.Equal(
            form.Example.Select(entry => (entry.Key, entry.Value)).Order(),
            root.GetProperty("entered")
                .EnumerateArray()
                .Where(entry => !entry.GetProperty("usual").GetBoolean())
                .Select(entry => (entry.GetProperty("field").GetString()!, entry.GetProperty("typed").GetString()!))
                .Order()
        );
        Assert.NotEqual(0, root.GetProperty("results").GetArrayLength());
        Assert.All(root.GetProperty("sources").EnumerateArray(), source =>
            Assert.True(source.GetProperty("citation").GetString() is not null, $"no citation of {source}")
        );
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Help_and_lists_name_every_form_and_no_line_is_too_long(string group, string id)
    {
        CommandRun list = CommandRun.Of("rate");
        CommandRun inGroup = CommandRun.Of("rate", group);
        CommandRun groupHelp = CommandRun.Of("rate", group, "--help");
        CommandRun help = CommandRun.Of("rate", group, id, "--help");
        Assert.Contains($"  {id} ", list.Out, StringComparison.Ordinal);
        Assert.Contains($"weedadvisor rate {group} {id} --", inGroup.Out, StringComparison.Ordinal);
        Assert.Contains($"weedadvisor rate {group} {id} --", groupHelp.Out, StringComparison.Ordinal);
        Assert.All(Form(group, id).Fields, field =>
            Assert.Contains($"--{field.Id} ", help.Out, StringComparison.Ordinal)
        );
        Assert.All(string.Concat(list.Out, inGroup.Out, groupHelp.Out, help.Out).Split('\n'), line =>
            Assert.True(line.TrimEnd().Length <= 80, line)
        );
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void No_field_takes_the_name_of_an_option_of_every_form(string group, string id) =>
        Assert.Empty(Form(group, id).Fields.Select(field => field.Id).Intersect(RateFormCommand.Reserved));

    [Theory]
    [MemberData(nameof(Forms))]
    public void Without_entries_and_without_a_terminal_it_says_what_is_missing(string group, string id)
    {
        string[] needed = [.. Form(group, id).Fields.Where(field => field.IsRequired).Select(field => field.Id)];
        CommandRun run = CommandRun.Of("rate", group, id, "--knowledge", s_rules);
        if (needed.Length == 0)
            return;
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Empty(run.Out);
        Assert.Equal(needed.Length, run.Complaints.Length);
        Assert.All(needed.Zip(run.Complaints), pair =>
            Assert.StartsWith($"weedadvisor: --{pair.First}: not entered: ", pair.Second, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("-4 fl-oz", "--caught: -4 fl-oz is below zero; it must be above zero")]
    [InlineData("-4fl-oz", "--caught: -4 fl-oz is below zero; it must be above zero")]
    [InlineData("--4", "--caught: '--4' is not a number with a unit such as fl-oz, gal, mL, L")]
    [InlineData("40", "--caught: 40 has no unit; write one, such as fl-oz, gal, mL, L")]
    [InlineData("@40", "--caught: '@40' is not a number with a unit such as fl-oz, gal, mL, L")]
    public void What_cannot_be_is_one_line_that_names_the_field(string caught, string said)
    {
        CommandRun apart = CommandRun.Of(
            "rate",
            "sprayer",
            "test-strip",
            "--caught",
            caught,
            "--course",
            "57 ft",
            "--width",
            "6 ft"
        );
        Assert.Equal(ExitCode.Usage, apart.Code);
        Assert.Equal("weedadvisor: " + said, Assert.Single(apart.Complaints));
        CommandRun joined = CommandRun.Of(
            "rate",
            "sprayer",
            "test-strip",
            $"--caught={caught}",
            "--course",
            "57 ft",
            "--width",
            "6 ft"
        );
        Assert.Equal(apart.Error, joined.Error);
    }

    [Theory]
    [InlineData("unknown command 'sprayr' (did you mean 'sprayer'?). See 'weedadvisor rate --help'.", "sprayr")]
    [InlineData("unknown command 'test-stripe' (did you mean 'test-strip'?)", "sprayer", "test-stripe")]
    [InlineData("unknown option '--cought' (did you mean '--caught'?)", "sprayer", "test-strip", "--cought", "4")]
    [InlineData("--format is one of text, md, html, json, not 'xml'", "sprayer", "test-strip", "--format", "xml")]
    [InlineData("--columns takes a number from ", "sprayer", "test-strip", "--columns", "many")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = CommandRun.Of(["rate", .. args]);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void A_sum_that_needs_no_knowledge_reads_none() =>
        Assert.Equal(
            ExitCode.Done,
            CommandRun
                .Of(
                    "rate",
                    "sprayer",
                    "test-strip",
                    "--caught",
                    "40 fl-oz",
                    "--course",
                    "57 ft",
                    "--width",
                    "6 ft",
                    "--knowledge",
                    "/no/such/folder"
                )
                .Code
        );

    [Fact]
    public void At_a_terminal_it_asks_field_by_field()
    {
        using var answers = new StringReader("40\n40 fl-oz\nback\n40 fl oz\n?\n340.3125 ft\n12 in\n\n\n\n");
        CommandRun run = CommandRun.With(
            s => s with { In = answers, IsInputTerminal = true },
            "rate",
            "sprayer",
            "test-strip"
        );
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("[1 of 6] Spray caught\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("  40 has no unit; write one, such as", run.Out, StringComparison.Ordinal);
        Assert.Contains("  Walk it at the pace", run.Out, StringComparison.Ordinal);
        Assert.Contains("Spray volume  40 gal/acre", run.Out, StringComparison.Ordinal);
        Assert.EndsWith(
            "  weedadvisor rate sprayer test-strip --caught \"40 fl oz\" --course \"340.3125 ft\" --width \"12 in\"\n",
            run.Out,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("quit\n")]
    [InlineData("40 fl-oz\n")]
    public void An_unfinished_talk_gives_no_result(string said)
    {
        using var answers = new StringReader(said);
        CommandRun run = CommandRun.With(
            s => s with { In = answers, IsInputTerminal = true },
            "rate",
            "sprayer",
            "test-strip"
        );
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.DoesNotContain("RESULT", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_never_asks()
    {
        CommandRun run = CommandRun.With(
            s => s with { IsInputTerminal = true },
            "rate",
            "sprayer",
            "test-strip",
            "--format",
            "json"
        );
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Empty(run.Out);
    }

    private static RateForm Form(string group, string id) =>
        RateForms.Groups.Single(one => one.Id == group).Forms.Single(one => one.Id == id);
}
