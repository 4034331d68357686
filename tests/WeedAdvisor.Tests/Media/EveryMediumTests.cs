using System.Text.Json;
using System.Xml.Linq;
using WeedAdvisor.Reports.Tests.Documents;
using WeedAdvisor.Tests.Commands;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Media;

/// <summary>Every command that reports has every medium, and all of them say the same.</summary>
public sealed class EveryMediumTests
{
    private static readonly string s_rules = Repository.Rules;
    private static readonly string s_demo = Path.Combine(s_rules, "visits", "demo-spring.yaml");

    public static TheoryData<string[]> Reports { get; } = new(
        ["advise", s_demo],
        ["advise", s_demo, "--full", "--sources"],
        ["why", s_demo, "hand-weed-now"],
        ["why", s_demo, "oxadiazon-granule"],
        ["weeding", s_demo, "--uncertain"],
        ["money", s_demo],
        ["money", s_demo, "--area", "container-yard", "--against", "bark-mulch"],
        ["season", s_demo, "--area", "container-yard", "--full"],
        ["rate", "product", "treatment", "--treatment", "oxadiazon-granule", "--area", "1000 ft2"]);

    [Theory]
    [MemberData(nameof(Reports))]
    public void Every_figure_stands_in_every_medium(string[] command)
    {
        string text = Run(command, "text");
        string html = Saying.Bare(XDocument.Parse(Run(command, "html")).Root!.Value);
        string markdown = Saying.Bare(Run(command, "md").Replace("\\", "", StringComparison.Ordinal));
        string[] figures = FiguresOf(text);
        Assert.All(figures, figure => Assert.Contains(Saying.Bare(figure), html, StringComparison.Ordinal));
        Assert.All(figures, figure => Assert.Contains(Saying.Bare(figure), markdown, StringComparison.Ordinal));
        using var json = JsonDocument.Parse(Run(command, "json"));
        Assert.Equal(1, json.RootElement.GetProperty("schemaVersion").GetInt32());
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void No_figure_is_dropped_on_a_narrow_page(string[] command)
    {
        string width = command[0] == "rate" ? "--columns" : "--width";
        string narrow = Run([.. command, width, "40"], "text");
        Assert.All(narrow.Split('\n'), line => Assert.InRange(line.Length, 0, 40));
        string bare = Saying.Bare(narrow);
        Assert.All(
            FiguresOf(Run([.. command, width, "160"], "text")),
            figure => Assert.Contains(Saying.Bare(figure), bare, StringComparison.Ordinal));
    }

    private static string[] FiguresOf(string text)
    {
        string[] figures =
        [
            .. text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)
                .Select(word => word.Trim([.. ",.;:()[]"]))
                .Where(word => word.Any(char.IsAsciiDigit))
                .Distinct(),
        ];
        Assert.NotEmpty(figures);
        return figures;
    }

    private static string Run(string[] command, string format)
    {
        CommandRun run = CommandRun.Of([.. command, "--format", format, "--knowledge", s_rules]);
        Assert.Equal(ExitCode.Done, run.Code);
        return run.Out;
    }
}
