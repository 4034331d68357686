using System.Text.RegularExpressions;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Why;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>The explanations in docs are what the program says.</summary>
public sealed partial class ExplanationsTests
{
    private static readonly string s_text = File.ReadAllText(
        Path.Combine(Repository.Folder, "docs", "explanations.md")
    );

    [Fact]
    public void Each_is_said_as_the_page_has_it()
    {
        MatchCollection pairs = Pair().Matches(s_text.ReplaceLineEndings("\n"));
        Assert.Equal(24, pairs.Count);
        foreach (Match pair in pairs)
        {
            string said = string.Join(
                '\n',
                Said(ShellWords.Of(pair.Groups["command"].Value)).Split('\n').Select(line => line.Trim())
            );
            // Of a section one item may stand on the page: each paragraph of it stands together in the output.
            string[] lines = [.. pair.Groups["now"].Value.Split('\n').Select(line => line.Trim())];
            Assert.Contains(lines[0], said, StringComparison.Ordinal);
            Assert.Contains(string.Join('\n', lines.Skip(1)).Trim(), said, StringComparison.Ordinal);
        }
    }

    // weedadvisor why VISIT ACTION --area ID, as the command writes it.
    private static string Said(string[] command)
    {
        Assert.Equal(["weedadvisor", "why"], command.Take(2));
        Assert.Equal("--area", command[4]);
        VisitAdvice advice = ShippedRules.Advisor.Advise(
            ShippedRules.Visit(Path.GetFileNameWithoutExtension(command[2]))
        );
        AreaAdvice area = advice.Areas.Single(one => one.Area.Id == command[5]);
        return DocumentText.Of(
            WhyDocument.Of(
                advice with
                {
                    Areas = [area],
                },
                ShippedRules.Knowledge.ActionOf(command[3])!,
                ShippedRules.Knowledge
            ),
            80
        );
    }

    [GeneratedRegex(
        @"^`(?<command>weedadvisor why [^`]*)`\n\nBefore:\n\n.*?\nNow:\n\n(?<now>(?:    [^\n]*\n|\n(?=    ))+)",
        RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Pair();
}
