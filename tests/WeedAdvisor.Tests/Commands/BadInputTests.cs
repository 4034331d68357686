using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class BadInputTests
{
    public static TheoryData<string, string[]> Usage =>
        new()
        {
            { "unknown command 'advice' (did you mean 'advise'?)", ["advice", "visit.yaml"] },
            { "unknown command 'xyzzy'. See 'weedadvisor --help'", ["xyzzy"] },
            {
                "unknown option '--formt' (did you mean '--format'?)",
                ["advise", "demo-spring.yaml", "--formt", "json"]
            },
            { "unknown option '--knowlege' (did you mean '--knowledge'?)", ["--knowlege", "x"] },
            { "'VISIT' missing", ["advise"] },
            { "'ACTION' missing", ["why", "demo-spring.yaml"] },
            {
                "--format is one of text, md, html, json, not 'jsn' (did you mean 'json'?)",
                ["advise", "v", "--format", "jsn"]
            },
            { "--width takes a number from 40 to 240", ["advise", "demo-spring.yaml", "--width", "39"] },
            { "--width takes a number from 40 to 240", ["advise", "demo-spring.yaml", "--width", "wide"] },
            { "--width takes a number from 40 to 240", ["demo", "--width", "99999999999999999999"] },
            { "argument missing for option: '--area'", ["advise", "demo-spring.yaml", "--area"] },
            { "unknown argument 'more'", ["advise", "demo-spring.yaml", "more"] },
            { "required command was not provided. See 'weedadvisor knowledge --help'", ["knowledge"] },
            { "unknown command 'lst' (did you mean 'list'?)", ["knowledge", "lst"] },
            { "not 'weedz' (did you mean 'weeds'?)", ["knowledge", "list", "weedz"] },
            { "no record 'liverwrt' (did you mean 'liverwort'?)", ["knowledge", "show", "liverwrt"] },
            {
                "no area 'mist-hose' (did you mean 'mist-house'?)",
                ["advise", "demo-spring.yaml", "--area", "mist-hose"]
            },
            { "Its areas: mist-house, yard.", ["advise", "demo-spring.yaml", "--area", "attic"] },
            { "no action 'pull-by-hnd' (did you mean 'pull-by-hand'?)", ["why", "demo-spring.yaml", "pull-by-hnd"] },
        };

    [Theory]
    [MemberData(nameof(Usage))]
    public void A_slip_ends_with_code_2_and_one_line(string said, string[] args)
    {
        CommandRun run = CommandRun.Of(args);
        Assert.Equal(ExitCode.Usage, run.Code);
        string complaint = Assert.Single(run.Complaints);
        Assert.StartsWith("weedadvisor: ", complaint, StringComparison.Ordinal);
        Assert.Contains(said, complaint, StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("answers: { region: 'x??x' }")]
    [InlineData("areas: [{ id: a, name: A, answers: { crops: ['x??x'] } }]")]
    [InlineData("areas: [{ id: a, name: A, weeds: [{ weed: 'x??x', stage: young }] }]")]
    [InlineData("areas: [{ id: a, name: A, past: [{ treatment: 'x??x', date: 2026-01-01 }] }]")]
    public void A_word_near_to_none_is_answered_by_the_command_that_lists_them_all(string line)
    {
        CommandRun Ask(params string[] args) =>
            CommandRun.With(
                s =>
                    s with
                    {
                        In = new StringReader($"visit: x\ntitle: t\ndate: 2026-04-14\nnursery: n\n{line}\n"),
                        Environment = name => name == "WEEDADVISOR_KNOWLEDGE" ? Repository.Rules : null,
                    },
                args
            );
        string complaint = Ask("advise", "-").Complaints.Single(one => one.Contains("x??x", StringComparison.Ordinal));
        string[] command = complaint.Split('\'')[^2].Split(' ');
        Assert.Equal("weedadvisor", command[0]);
        CommandRun listed = Ask(command[1..]);
        Assert.Equal(ExitCode.Done, listed.Code);
        Assert.True(listed.Out.Split('\n').Length > 15);
    }

    [Fact]
    public void A_single_problem_in_a_visit_is_one_line_that_an_editor_understands()
    {
        CommandRun run = CommandRun.Of("advise", "-");
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.StartsWith("standard input:1:1: found ", Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("weed: liverwort", "weed: liverwrt", "'liverwort'")]
    [InlineData("cover: film-on", "cover: filmon", "'film-on'")]
    [InlineData("date: 2026-04-14", "date: 14.4.2026", "expected")]
    public void A_wrong_word_in_a_visit_ends_with_code_2_and_its_place(string right, string wrong, string said)
    {
        using var copy = new RulesCopy();
        copy.Replace("visits/demo-spring.yaml", right, wrong);
        string file = Path.Combine(copy.Folder, "visits", "demo-spring.yaml");
        CommandRun run = CommandRun.Of("advise", file, "--area", "mist-house");
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.StartsWith($"{file}:", run.Complaints[0], StringComparison.Ordinal);
        Assert.Contains(said, run.Complaints[0], StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Several_problems_in_a_visit_are_all_named_and_the_last_line_says_what_to_do()
    {
        using var text = new StringReader("visit: v\ndate: never\nareas: maybe\n");
        CommandRun run = CommandRun.In(text, "advise", "-");
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.True(run.Complaints.Length >= 3);
        Assert.EndsWith("Mend them and run it again.", run.Complaints[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_visit_that_is_not_there_ends_with_code_4()
    {
        CommandRun run = CommandRun.Of("advise", "not-there.yaml");
        Assert.Equal(ExitCode.InputOutput, run.Code);
        Assert.Contains("no visit file 'not-there.yaml'", Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void A_knowledge_folder_that_is_not_there_ends_with_code_4()
    {
        CommandRun run = CommandRun.Of("knowledge", "check", "--knowledge", "/no/such/folder");
        Assert.Equal(ExitCode.InputOutput, run.Code);
        Assert.Contains("WEEDADVISOR_KNOWLEDGE", Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_knowledge_ends_with_code_3_and_every_problem()
    {
        using var copy = new RulesCopy();
        copy.Replace("weeds/liverwort.yaml", "kind: bryophyte", "kind: bryophite");
        copy.Replace("judgements/sample.yaml", "support: 0.7", "support: 1.7");
        CommandRun run = CommandRun.Of("knowledge", "check", "--knowledge", copy.Folder);
        Assert.Equal(ExitCode.BadKnowledge, run.Code);
        Assert.Equal(3, run.Complaints.Length);
        Assert.StartsWith("judgements/sample.yaml:", run.Complaints[0], StringComparison.Ordinal);
        Assert.Contains("did you mean 'bryophyte'?", run.Complaints[1], StringComparison.Ordinal);
        Assert.StartsWith(
            "weedadvisor: 2 problems in the knowledge folder",
            run.Complaints[2],
            StringComparison.Ordinal
        );
        Assert.Empty(run.Out);
    }

    [Fact]
    public void A_broken_worked_visit_stops_the_check_of_the_knowledge_and_no_advice()
    {
        using var copy = new RulesCopy();
        string visit = Path.Combine(CommandRun.SmallRules, "visits", "demo-spring.yaml");
        string before = CommandRun.Of("advise", visit, "--knowledge", copy.Folder).Out;
        copy.Replace("visits/demo-spring.yaml", "areas:", "areaz:");
        CommandRun check = CommandRun.Of("knowledge", "check", "--knowledge", copy.Folder);
        Assert.Equal(ExitCode.BadKnowledge, check.Code);
        Assert.StartsWith("visits/demo-spring.yaml:", check.Complaints[0], StringComparison.Ordinal);
        CommandRun advise = CommandRun.Of("advise", visit, "--knowledge", copy.Folder);
        Assert.Equal(ExitCode.Done, advise.Code);
        Assert.Equal(WithoutStamp(before), WithoutStamp(advise.Out));
    }

    // The stamp is that of all files, the broken one among them.
    private static IEnumerable<string> WithoutStamp(string text) =>
        text.Split('\n').Where(line => !line.Contains("; knowledge ", StringComparison.Ordinal));

    [Fact]
    public void Knowledge_without_a_demo_says_so()
    {
        using var copy = new RulesCopy();
        File.Delete(Path.Combine(copy.Folder, "visits", "demo-spring.yaml"));
        CommandRun run = CommandRun.Of("demo", "--knowledge", copy.Folder);
        Assert.Equal(ExitCode.BadKnowledge, run.Code);
        Assert.Contains("no demo visit", Assert.Single(run.Complaints), StringComparison.Ordinal);
    }
}
