using System.Text.Json;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>Lessons at the command line: listed, straight through, with pauses, and scored.</summary>
public sealed class LessonCommandTests
{
    [Fact]
    public void All_are_listed_and_each_opens()
    {
        string list = Run("lesson").Out;
        foreach (string id in ShippedRules.Knowledge.Lessons.Select(lesson => lesson.Id))
            Assert.Contains(id, list, StringComparison.Ordinal);
        CommandRun one = Run("lesson", "liverwort");
        Assert.Equal(0, one.Code);
        Assert.Contains("STEP 7 OF 7", one.Out, StringComparison.Ordinal);
        Assert.Contains("WHAT IS LEARNT", one.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Enter shows", one.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_terminal_it_waits_after_each_question_and_ends_with_the_input()
    {
        CommandRun all = OnTerminal(string.Concat(Enumerable.Repeat("\n", 20)));
        Assert.Equal(7, all.Out.Split("Enter shows the answer> ").Length - 1);
        Assert.Contains("WHAT IS LEARNT", all.Out, StringComparison.Ordinal);
        CommandRun two = OnTerminal("first we look\n");
        Assert.Contains("STEP 2 OF 7", two.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("STEP 3 OF 7", two.Out, StringComparison.Ordinal);
        Assert.Equal(0, two.Code);
    }

    [Fact]
    public void An_order_is_scored_and_what_was_missed_is_told_with_its_reason()
    {
        string text = Run("lesson", "liverwort", "--score", "screen the vents, shorten-mist, scrape-off-liverwort").Out;
        Assert.Contains("Kendall's tau-b", text, StringComparison.Ordinal);
        Assert.Contains("EASILY OVERLOOKED, AND WORTH NAMING", text, StringComparison.Ordinal);
        Assert.Contains("Throw the worst out:", text, StringComparison.Ordinal);
        Assert.Contains("NAMED, BUT NOT CLEAR HERE", text, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(
            Run(
                "lesson",
                "liverwort",
                "--score",
                "shorten-mist, fix-leaks-and-heads, discard-infested",
                "--format",
                "json"
            ).Out
        );
        Assert.Equal(1, json.RootElement.GetProperty("tauB").GetDouble());
    }

    [Fact]
    public void Where_nothing_is_clear_a_score_says_so()
    {
        string text = Run("lesson", "entry", "--score", "hand-weed-now, glufosinate-floor-spray").Out;
        Assert.Contains("nothing is clear", text, StringComparison.Ordinal);
        Assert.DoesNotContain("THE ADVICE HAS FIRST", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no lesson 'liverwurt' (did you mean 'liverwort'?)", "liverwurt")]
    [InlineData("no action 'pray'", "liverwort", "--score", "shorten-mist, pray")]
    [InlineData(
        "'shorten-mist' stands in your order a second time",
        "liverwort",
        "--score",
        "shorten-mist, shorten-mist"
    )]
    [InlineData("no action in your order", "liverwort", "--score", " , ")]
    public void A_slip_is_one_line(string told, params string[] args)
    {
        CommandRun run = Run(["lesson", .. args]);
        Assert.Equal(2, run.Code);
        Assert.Contains(told, Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rule: no-such-rule", "demo-spring", "no-such-rule")]
    [InlineData("rule: seed-is-stopped-before-it-comes-up", "no-such-visit", "the visit 'no-such-visit'")]
    public void A_lesson_that_names_what_is_not_there_is_told_with_its_place(string rule, string visit, string told)
    {
        using var copy = new RulesCopy();
        string folder = Path.Combine(copy.Folder, "lessons");
        Directory.CreateDirectory(folder);
        using (StreamWriter file = File.CreateText(Path.Combine(folder, "one.yaml")))
            file.Write(
                $"- id: one\n  title: One\n  visit: {visit}\n  area: a\n  about: A.\n  points: [a]\n"
                    + $"  steps:\n    - {rule}\n      ask: What?\n"
            );
        CommandRun run = CommandRun.Of("knowledge", "check", "--knowledge", copy.Folder);
        Assert.NotEqual(0, run.Code);
        Assert.Contains(run.Complaints, line =>
            line.StartsWith("lessons/one.yaml:", StringComparison.Ordinal)
            && line.Contains(told, StringComparison.Ordinal)
        );
    }

    private static CommandRun OnTerminal(string typed) =>
        CommandRun.With(
            s => s with { In = new StringReader(typed), IsInputTerminal = true, IsOutputTerminal = true },
            "lesson",
            "liverwort",
            "--knowledge",
            Repository.Rules
        );

    private static CommandRun Run(params string[] args) => CommandRun.Of([.. args, "--knowledge", Repository.Rules]);
}
