using System.Text.Json;
using System.Xml.Linq;
using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Tests.Documents;
using WeedAdvisor.Tests.Commands;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Media;

/// <summary>Every command that reports has every medium, and all of them say the same.</summary>
public sealed class EveryMediumTests
{
    private static readonly string s_rules = Repository.Rules;
    private static readonly string s_demo = Path.Combine(s_rules, "visits", "demo-spring.yaml");

    // Years are long sums: the short run asks for one area, and plans the year of one with few choices.
    private static readonly string[] s_oneArea = Sizes.IsLong ? [] : ["--area", "liner-bed"];
    private static readonly string s_planned = Sizes.IsLong ? "container-yard" : "liner-bed";

    public static TheoryData<string[]> Reports { get; } =
        new(
            ["advise", s_demo],
            ["advise", s_demo, "--full", "--sources"],
            ["why", s_demo, "hand-weed-now"],
            ["why", s_demo, "oxadiazon-granule"],
            ["unlock", s_demo, "bark-mulch", "--area", "container-yard"],
            ["whatif", s_demo, "surface-moisture=wet", "--area", "container-yard", "--full"],
            ["lesson", "rotation"],
            ["lesson", "rounds", "--score", "hand-weed-now, bark-mulch"],
            ["weeding", s_demo, "--uncertain", .. s_oneArea],
            ["money", s_demo, .. s_oneArea],
            ["money", s_demo, "--area", "container-yard", "--against", "bark-mulch"],
            ["season", s_demo, "--area", s_planned, "--full"],
            ["plan", Path.Combine(s_rules, "visits", "organic-nursery.yaml"), "--robust", "--draws", "20"],
            ["rate", "product", "treatment", "--treatment", "oxadiazon-granule", "--area", "1000 ft2"]
        );

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
        Assert.Equal(2, json.RootElement.GetProperty("schemaVersion").GetInt32());
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void A_page_has_every_id_once_no_empty_list_and_no_row_without_a_head(string[] command)
    {
        XElement page = XDocument.Parse(Run(command, "html")).Root!;
        string[] ids = [.. page.DescendantsAndSelf().Attributes("id").Select(id => id.Value)];
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(page.Descendants("ul"), list => Assert.NotEmpty(list.Elements("li")));
        Assert.All(page.Descendants("tbody").Elements("tr"), row =>
            Assert.Equal("row", row.Elements().First().Attribute("scope")?.Value)
        );
        string[] heads =
        [
            .. page.Descendants().Select(one => one.Name.LocalName).Where(name => name is ['h', '2' or '3']),
        ];
        Assert.True(heads.Length == 0 || heads[0] == "h2");
    }

    [Fact]
    public void A_season_is_told_short_or_in_full_alike_in_every_medium()
    {
        string[] season = ["season", s_demo, "--area", s_planned];
        foreach (string format in (string[])["text", "md", "html"])
        {
            string full = Run([.. season, "--full"], format);
            Assert.DoesNotContain("all work, by day", Run(season, format), StringComparison.OrdinalIgnoreCase);
            Assert.Contains("all work, by day", full, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("weeding round. Weeding round", full, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void On_a_page_of_two_years_every_id_stands_once()
    {
        string[] season = ["season", s_demo, "--area", s_planned, "--year-after"];
        XElement page = XDocument.Parse(Run(season, "html")).Root!;
        string[] ids = [.. page.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.Equal(2, ids.Length);
        Assert.Equal(ids.Distinct(), ids);
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void No_figure_is_dropped_on_a_narrow_page(string[] command)
    {
        string width = command[0] == "rate" ? "--columns" : "--width";
        string narrow = Run([.. command, width, "40"], "text");
        Assert.All(narrow.Split('\n'), line => Assert.InRange(line.Length, 0, 40));
        string bare = Saying.Bare(narrow);
        Assert.All(FiguresOf(Run(command, "text")), figure =>
            Assert.Contains(Saying.Bare(figure), bare, StringComparison.Ordinal)
        );
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
        CommandRun run = CommandRun.Told([.. command, "--format", format, "--knowledge", s_rules]);
        Assert.Equal(ExitCode.Done, run.Code);
        return run.Out;
    }
}
