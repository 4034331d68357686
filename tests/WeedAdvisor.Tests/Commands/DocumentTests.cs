using System.Text;
using System.Text.RegularExpressions;
using WeedAdvisor.Golden;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>Runs the commands of the pages in <c>docs</c>: what a page prints is what the program prints.</summary>
public sealed partial class DocumentTests
{
    private const string Indent = "    ",
        Prompt = Indent + "$ ",
        Cut = Indent + "...";

    private static readonly string s_root = Repository.Folder;

    [Theory]
    [InlineData("rates.md", 5)]
    [InlineData("season-plan.md", 4)]
    public void What_a_page_prints_is_what_its_commands_print(string name, int least)
    {
        string file = Path.Combine(s_root, "docs", name);
        (string page, int commands) = WithOutputsAnew(File.ReadAllLines(file));
        Assert.True(commands >= least, $"only {commands} commands were found on the page");
        ExpectedText.MatchesFile(page, file);
    }

    private static (string Page, int Commands) WithOutputsAnew(string[] lines)
    {
        var page = new StringBuilder();
        int commands = 0;
        for (int at = 0; at < lines.Length; at++)
        {
            page.Append(lines[at]).Append('\n');
            if (!lines[at].StartsWith(Prompt, StringComparison.Ordinal))
                continue;
            string command = lines[at][Prompt.Length..];
            while (command.EndsWith('\\'))
            {
                page.Append(lines[++at]).Append('\n');
                command = $"{command}\n{lines[at].Trim()}";
            }

            int end = EndOfBlock(lines, at + 1);
            bool isCut = lines[end - 1] == Cut;
            page.Append(Indented(Output(command), isCut));
            commands++;
            at = end - 1;
        }

        return (page.ToString(), commands);
    }

    /// <summary>The line after a block: blank lines belong to it when more of it follows.</summary>
    private static int EndOfBlock(string[] lines, int at)
    {
        int end = at;
        for (
            int i = at;
            i < lines.Length && (lines[i].Length == 0 || lines[i].StartsWith(Indent, StringComparison.Ordinal));
            i++
        )
        {
            if (lines[i].StartsWith(Prompt, StringComparison.Ordinal))
                break;
            if (lines[i].Length > 0)
                end = i + 1;
        }

        return end;
    }

    private static string Output(string command)
    {
        string[] words = ShellWords.Of(command);
        Assert.Equal("weedadvisor", words[0]);
        CommandRun run = CommandRun.With(
            surroundings => surroundings with { WorkingFolder = s_root },
            [.. words[1..], "--knowledge", Path.Combine(s_root, "rules")]
        );
        Assert.Equal("", run.Error);
        Assert.True(run.Code is ExitCode.Done or ExitCode.Negative, command);
        return run.Out;
    }

    private static string Indented(string output, bool isCut)
    {
        // The stamp of the knowledge changes with every word of the rules.
        string[] lines = Stamp().Replace(output, "knowledge ...").TrimEnd('\n').Split('\n');
        if (isCut)
            lines = [.. lines.TakeWhile(line => line != "ASSUMED").SkipLast(1), "..."];
        return string.Concat(lines.Select(line => (Indent + line).TrimEnd() + "\n"));
    }

    [GeneratedRegex(@"knowledge \d+\.\d+\.\d+\+[0-9a-f]{12}")]
    private static partial Regex Stamp();
}
