using System.Text.Json;
using System.Xml.Linq;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary><c>plan --robust</c> through the command line, on a shipped visit that is planned in no time.</summary>
public sealed class RobustCommandTests
{
    private static readonly Lazy<CommandRun> s_text = new(() => Run("--robust", "--draws", "20", "--format", "text"));

    [Fact]
    public void What_to_do_with_it_stands_first_and_the_seed_and_what_was_assumed_are_told()
    {
        string page = s_text.Value.Out.ReplaceLineEndings("\n");
        string[] headings =
        [
            "WHAT TO MAKE OF IT",
            "HELD AGAINST",
            "WHAT TURNS IT",
            "WHAT MOVES MOST",
            "WHAT WAS MOVED",
        ];
        int[] places = [.. headings.Select(heading => page.IndexOf(heading, StringComparison.Ordinal))];
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
        string flat = string.Join(' ', page.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("of 20 draws the plan stays the cheapest", flat, StringComparison.Ordinal);
        Assert.Contains("Seed 1, 20 draws", flat, StringComparison.Ordinal);
        Assert.Matches("[0-9]+ are published, those of [0-9]+ are assumed", flat);
    }

    [Fact]
    public void The_same_seed_gives_the_same_bytes_and_another_does_not()
    {
        Assert.Equal(s_text.Value.Out, Run("--robust", "--draws", "20", "--seed", "1").Out);
        Assert.NotEqual(s_text.Value.Out, Run("--robust", "--draws", "20", "--seed", "2").Out);
    }

    [Fact]
    public void The_json_has_every_swing_longest_first_with_its_range_and_its_source()
    {
        using var json = JsonDocument.Parse(Run("--robust", "--draws", "20", "--format", "json").Out);
        JsonElement area = json.RootElement.GetProperty("areas")[0];
        Assert.Equal(20, area.GetProperty("draws").GetInt32());
        Assert.Equal(20, area.GetProperty("ways").EnumerateArray().Sum(way => way.GetProperty("cheapest").GetInt32()));
        Assert.Equal(
            area.GetProperty("staysCheapest").GetInt32(),
            area.GetProperty("ways")[0].GetProperty("cheapest").GetInt32()
        );
        JsonElement[] swings = [.. area.GetProperty("swings").EnumerateArray()];
        decimal[] sizes =
        [
            .. swings.Select(swing =>
                Math.Abs(
                    swing.GetProperty("savesAtHighUsdPer1000Pots").GetDecimal()
                        - swing.GetProperty("savesAtLowUsdPer1000Pots").GetDecimal()
                )
            ),
        ];
        Assert.All(sizes.Zip(sizes.Skip(1)), pair => Assert.True(pair.First >= pair.Second - 0.02m));
        Assert.All(swings, swing =>
        {
            Assert.True(swing.GetProperty("low").GetDecimal() < swing.GetProperty("high").GetDecimal());
            Assert.NotEqual(0, swing.GetProperty("sources").GetArrayLength());
        });
    }

    // Shape and words carry it, not colour: one grey, and a table of the same figures beside it.
    [Fact]
    public void The_bars_of_the_page_need_no_colour_and_say_what_they_show()
    {
        XElement page = XDocument.Parse(Run("--robust", "--draws", "20", "--format", "html").Out).Root!;
        XNamespace svg = "http://www.w3.org/2000/svg";
        XElement picture = Assert.Single(page.Descendants(svg + "svg"));
        Assert.Equal("img", picture.Attribute("role")?.Value);
        Assert.Contains("saves against today's way", picture.Element(svg + "title")!.Value, StringComparison.Ordinal);
        Assert.Single(picture.Elements(svg + "rect").Attributes("fill").Select(fill => fill.Value).Distinct());
        int bars = picture.Elements(svg + "rect").Count();
        Assert.InRange(bars, 3, 12);
        Assert.Contains(page.Descendants("table"), table =>
            table.Element("tbody")!.Elements("tr").Count() == bars
            && table.Value.Contains("saves from", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("1 to 10000", "--draws", "0")]
    [InlineData("1 to 10000", "--draws", "10001")]
    [InlineData("0 to", "--seed", "-1")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = Run(["--robust", .. args]);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_there_is_no_plan_nothing_is_moved()
    {
        CommandRun run = Run("--robust", "--hours", "0");
        Assert.Equal(ExitCode.Negative, run.Code);
        Assert.Contains("there is nothing to move", run.Out, StringComparison.Ordinal);
    }

    private static CommandRun Run(params string[] args) =>
        CommandRun.Told([
            "plan",
            Path.Combine(Repository.Rules, "visits", "organic-nursery.yaml"),
            .. args,
            "--knowledge",
            Repository.Rules,
        ]);
}
