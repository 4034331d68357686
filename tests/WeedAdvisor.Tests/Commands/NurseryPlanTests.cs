using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Documents;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>
/// <c>plan</c> without an area through the command line: two mist houses, a floor and a pile of the shipped demo.
/// </summary>
public sealed partial class NurseryPlanTests
{
    private static readonly string s_visit = Small();
    private static readonly Lazy<CommandRun> s_text = new(() => Run());
    private static readonly Lazy<CommandRun> s_json = new(() => Run("--format", "json"));

    [Fact]
    public void Where_the_first_hour_goes_stands_first_and_the_areas_after_it()
    {
        Assert.Equal(ExitCode.Done, s_text.Value.Code);
        string page = s_text.Value.Out;
        string[] headings =
        [
            "WHERE THE FIRST HOUR GOES",
            "WHAT EACH AREA GETS",
            "WHAT MORE HOURS ARE WORTH",
            "NOT IN THE PLAN, AND WHAT IS TO BE DONE THERE",
            "HOW SURE THIS IS",
        ];
        int[] places = [.. headings.Select(heading => page.IndexOf(heading, StringComparison.Ordinal))];
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
        Assert.Contains("--area mist-house", page, StringComparison.Ordinal);
        Assert.Contains("--area bark-pile", page, StringComparison.Ordinal);
        Assert.All(page.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Empty(s_text.Value.Error);
    }

    [Fact]
    public void The_json_adds_up_and_is_what_the_page_says()
    {
        using var json = JsonDocument.Parse(s_json.Value.Out);
        JsonElement nursery = json.RootElement.GetProperty("nursery");
        JsonElement[] areas = [.. json.RootElement.GetProperty("areas").EnumerateArray()];
        Assert.Equal(2, areas.Length);
        foreach (string key in (string[])["hoursPerWeek", "spentUsd", "usd", "todayUsd"])
        {
            Assert.Equal(
                nursery.GetProperty(key).GetDecimal(),
                areas.Sum(area => area.GetProperty(key).GetDecimal()),
                2
            );
        }

        decimal usd = nursery.GetProperty("usd").GetDecimal();
        Assert.True(nursery.GetProperty("leastUsd").GetDecimal() <= usd);
        Assert.Contains(usd.ToString("$#,0", CultureInfo.InvariantCulture), s_text.Value.Out, StringComparison.Ordinal);
        Assert.Equal(
            ["under-bench", "bark-pile"],
            json.RootElement.GetProperty("notPlanned").EnumerateArray().Select(one => one.GetProperty("id").GetString())
        );
    }

    // Nothing limits the nursery: each area has its own best plan, so the same question has the same cents.
    [Fact]
    public void What_an_area_spends_works_and_saves_by_mowing_is_what_its_own_page_says()
    {
        using var nursery = JsonDocument.Parse(s_json.Value.Out);
        using var alone = JsonDocument.Parse(Run("--area", "mist-house", "--answers", "0", "--format", "json").Out);
        JsonElement share = nursery
            .RootElement.GetProperty("areas")
            .EnumerateArray()
            .Single(area => area.GetProperty("id").GetString() == "mist-house");
        JsonElement page = alone.RootElement.GetProperty("areas")[0];
        JsonElement plan = page.GetProperty("plan");
        Assert.Equal(share.GetProperty("spentUsd").GetDecimal(), plan.GetProperty("spentUsd").GetDecimal());
        Assert.Equal(share.GetProperty("hoursPerWeek").GetDecimal(), plan.GetProperty("busiestWeekHours").GetDecimal());
        Assert.Equal(share.GetProperty("nearby").GetRawText(), page.GetProperty("nearby").GetRawText());
    }

    [Fact]
    public void Every_figure_stands_in_every_medium_and_the_picture_is_told_in_words()
    {
        XElement page = XDocument.Parse(Run("--format", "html").Out).Root!;
        string html = Saying.Bare(page.Value),
            markdown = Saying.Bare(Run("--format", "md").Out.Replace("\\", "", StringComparison.Ordinal));
        string[] figures = [.. Figure().Matches(s_text.Value.Out).Select(figure => figure.Value).Distinct()];
        Assert.True(figures.Length > 10);
        Assert.All(figures, figure => Assert.Contains(figure, html, StringComparison.Ordinal));
        Assert.All(figures, figure => Assert.Contains(figure, markdown, StringComparison.Ordinal));
        XElement picture = Assert.Single(page.Descendants(), one => one.Name.LocalName == "svg");
        Assert.Equal("img", picture.Attribute("role")?.Value);
        string told = picture.Attribute("aria-label")!.Value;
        Assert.All(picture.Elements().Where(one => one.Name.LocalName == "text"), text =>
            Assert.Contains(text.Value, told, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void On_a_terminal_it_tells_how_far_it_is_and_takes_the_line_away()
    {
        CommandRun run = CommandRun.With(surroundings => surroundings with { IsErrorTerminal = true }, Line());
        Assert.Contains("4 of 4 areas planned", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("\r", run.Error, StringComparison.Ordinal);
        Assert.All(run.Error.Split('\r'), line => Assert.True(line.Length < 80, line));
    }

    [Theory]
    [InlineData("more than 0", "--hours", "0")]
    [InlineData("more than $0", "--budget", "0")]
    [InlineData("No plan keeps 0.1 hours a week: these areas take at least", "--hours", "0.1")]
    [InlineData("There is no action 'bark-mulsh'. Did you mean 'bark-mulch'?", "--with", "bark-mulsh")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = Run(args);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [GeneratedRegex(@"\$[0-9][0-9,.]*[0-9]")]
    private static partial Regex Figure();

    private static string[] Line(params string[] args) =>
        ["plan", s_visit, .. args, "--knowledge", Path.Combine(Repository.Folder, "rules")];

    private static CommandRun Run(params string[] args) => CommandRun.With(surroundings => surroundings, Line(args));

    // The other areas of the demo take seconds each.
    private static string Small()
    {
        string demo = File.ReadAllText(Path.Combine(Repository.Rules, "visits", "demo-spring.yaml"));
        string[] areas = [.. demo.Split("  - id: ")];
        string path = Path.Combine(Directory.CreateTempSubdirectory("weedadvisor-").FullName, "small.yaml");
        string mist = areas.Single(area => area.StartsWith("mist-house", StringComparison.Ordinal));
        string second = mist.Replace("mist-house", "mist-two", StringComparison.Ordinal)
            .Replace("Mist house", "Second mist house", StringComparison.Ordinal)
            .Replace("cover-percent: 20", "cover-percent: 1", StringComparison.Ordinal);
        string[] kept =
        [
            areas[0],
            mist,
            second,
            .. areas.Where(area => area.StartsWith("under-bench", StringComparison.Ordinal)),
            .. areas.Where(area => area.StartsWith("bark-pile", StringComparison.Ordinal)),
        ];
        AtomicFile.Write(path, string.Join("  - id: ", kept));
        return path;
    }
}
