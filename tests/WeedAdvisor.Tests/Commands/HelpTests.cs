using WeedAdvisor.Golden;

namespace WeedAdvisor.Tests.Commands;

public sealed class HelpTests
{
    [Theory]
    [InlineData("root")]
    [InlineData("ask", "ask")]
    [InlineData("advise", "advise")]
    [InlineData("why", "why")]
    [InlineData("unlock", "unlock")]
    [InlineData("lesson", "lesson")]
    [InlineData("whatif", "whatif")]
    [InlineData("identify", "identify")]
    [InlineData("weeding", "weeding")]
    [InlineData("demo", "demo")]
    [InlineData("knowledge", "knowledge")]
    [InlineData("knowledge_check", "knowledge", "check")]
    [InlineData("knowledge_test", "knowledge", "test")]
    [InlineData("knowledge_coverage", "knowledge", "coverage")]
    [InlineData("knowledge_doc", "knowledge", "doc")]
    [InlineData("knowledge_list", "knowledge", "list")]
    [InlineData("knowledge_show", "knowledge", "show")]
    public void Help(string name, params string[] command)
    {
        CommandRun run = CommandRun.Of([.. command, "--help"]);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Empty(run.Error);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        ExpectedText.Matches(run.Out, $"Help_{name}");
    }

    [Fact]
    public void Help_reads_no_knowledge() =>
        Assert.Equal(ExitCode.Done, CommandRun.Of("advise", "--help", "--knowledge", "/no/such/folder").Code);

    [Fact]
    public void Help_needs_no_other_argument_to_be_right() =>
        Assert.Equal(ExitCode.Done, CommandRun.Of("advise", "--width", "many", "--help").Code);

    [Fact]
    public void Version_is_one_line() =>
        Assert.Matches(@"^\d+\.\d+\.\d+\S*\n$", CommandRun.Of("--version").Out.ReplaceLineEndings("\n"));
}
