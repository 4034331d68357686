using System.Text.Json;
using System.Xml.Linq;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class MoneyCommandTests
{
    private static readonly string s_rules = Repository.Rules;
    private static readonly string s_visit = Path.Combine(s_rules, "visits", "demo-spring.yaml");

    [Theory]
    [InlineData("--wage takes 0 to 10000 US dollars an hour, not '-5'", "--wage", "-5")]
    [InlineData("--wage takes 0 to 10000 US dollars an hour, not 'much'", "--wage", "much")]
    [InlineData("--pots takes a whole number from 1 to 100000000, not '0'", "--pots", "0")]
    [InlineData("--pots takes a whole number from 1 to 100000000, not '2.5'", "--pots", "2.5")]
    [InlineData("no way or action 'bark-mulsh' (did you mean 'bark-mulch'?)", "--against", "bark-mulsh")]
    [InlineData(
        "'glyphosate-empty-house' must not be used here",
        "--area",
        "container-yard",
        "--against",
        "glyphosate-empty-house"
    )]
    [InlineData("No pots stand here", "--area", "bark-pile")]
    [InlineData("--format is one of text, md, html, json, not 'htm' (did you mean 'html'?)", "--format", "htm")]
    [InlineData("the visit has no area 'container-yrd' (did you mean 'container-yard'?)", "--area", "container-yrd")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = Run(args);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Theory]
    [InlineData("rice-hull", "70", "found the price 'rice-hull'", "did you mean 'rice-hulls'?")]
    [InlineData("rice-hulls", "-70", "found -70", "expected a number from 0 to 1000000")]
    public void A_wrong_price_ends_with_code_2_and_its_place(string id, string value, string found, string said)
    {
        CommandRun run = WithPrices(
            $"- id: {id}\n  name: Hulls\n  value: {value}\n  unit: usd-per-m3\n  from: {{ all: own-books }}\n"
        );
        Assert.Equal(ExitCode.Usage, run.Code);
        string complaint = Assert.Single(run.Complaints);
        Assert.Contains($"prices.yaml:", complaint, StringComparison.Ordinal);
        Assert.Contains(found, complaint, StringComparison.Ordinal);
        Assert.Contains(said, complaint, StringComparison.Ordinal);
    }

    [Fact]
    public void Own_prices_are_used_and_named()
    {
        CommandRun run = WithPrices(
            "- id: pine-bark-mini-nuggets\n  name: Bark\n  value: 99\n  unit: usd-per-m3\n  from: { all: own-books }\n"
        );
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("Your own prices: pine-bark-mini-nuggets.", run.Out, StringComparison.Ordinal);
        Assert.NotEqual(Run("--area", "container-yard").Out, run.Out);
    }

    [Fact]
    public void A_price_file_that_is_not_there_ends_with_code_4() =>
        Assert.Equal(ExitCode.InputOutput, Run("--prices", "nowhere.yaml").Code);

    [Fact]
    public void Invented_prices_are_said_to_be_invented() =>
        Assert.Contains("Every price is invented.", Run("--area", "container-yard").Out, StringComparison.Ordinal);

    [Fact]
    public void The_text_fits_every_width()
    {
        foreach (int width in (int[])[40, 60, 80, 120])
        {
            foreach (
                string[] more in (string[][])
                    [
                        [],
                        ["--area", "container-yard", "--against", "bark-mulch"],
                    ]
            )
            {
                CommandRun run = Run([.. more, "--width", width.ToString()]);
                Assert.Equal(ExitCode.Done, run.Code);
                Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= width, line));
            }
        }
    }

    [Fact]
    public void A_way_against_todays_shows_the_four_parts_wage_payback_and_bars()
    {
        string text = Run("--area", "container-yard", "--against", "bark-mulch").Out;
        Assert.All(
            [
                "Added returns:",
                "Reduced costs:",
                "Added costs:",
                "Reduced returns:",
                "Net change:",
                "wage",
                "No tool has to be bought",
                "=|",
            ],
            part => Assert.Contains(part, text, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Json_ways_are_the_sums_of_their_items_and_stand_in_order()
    {
        using var json = JsonDocument.Parse(Run("--format", "json").Out);
        JsonElement[] areas = [.. json.RootElement.GetProperty("areas").EnumerateArray()];
        Assert.Equal(5, areas.Length);
        JsonElement[] ways =
        [
            .. areas
                .Single(area => area.GetProperty("area").GetString() == "container-yard")
                .GetProperty("ways")
                .EnumerateArray(),
        ];
        Assert.All(ways, way =>
            Assert.Equal(
                Number(way, "usdPer1000Pots"),
                way.GetProperty("items").EnumerateArray().Sum(item => Number(item, "usdPer1000Pots")),
                0.01
            )
        );
        double[] costs = [.. ways.Select(way => Number(way, "usdPer1000Pots"))];
        Assert.Equal(costs.Order(), costs);
        Assert.Single(ways, way => way.GetProperty("isToday").GetBoolean());
    }

    [Theory]
    [InlineData]
    [InlineData("--area", "container-yard", "--against", "bark-mulch")]
    public void Html_is_well_formed_runs_nothing_and_loads_nothing(params string[] more)
    {
        string html = Run([.. more, "--format", "html"]).Out;
        Assert.StartsWith("<!DOCTYPE html>", html, StringComparison.Ordinal);
        // Void elements aside the page is XML as well.
        string body = html["<!DOCTYPE html>".Length..]
            .Replace("<meta charset=\"utf-8\">", "", StringComparison.Ordinal)
            .Replace(
                "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">",
                "",
                StringComparison.Ordinal
            );
        XElement page = XElement.Parse(body);
        string[] names = [.. page.Descendants().Select(element => element.Name.LocalName).Distinct()];
        Assert.DoesNotContain(names, name =>
            name is "script" or "link" or "img" or "iframe" or "object" or "image" or "use"
        );
        Assert.All(page.Descendants().Attributes(), attribute =>
            Assert.DoesNotContain(attribute.Name.LocalName, new[] { "href", "src", "onclick", "onload" })
        );
        Assert.DoesNotContain("url(", html, StringComparison.Ordinal);
        Assert.NotEmpty(page.Descendants("caption"));
        Assert.All(page.Descendants("thead").Descendants("th"), head =>
            Assert.Equal("col", (string?)head.Attribute("scope"))
        );
        Assert.Equal(more.Length > 0, names.Contains("svg"));
    }

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    [InlineData("html")]
    public void The_same_visit_gives_the_same_bytes(string format) =>
        Assert.Equal(Run("--format", format).Out, Run("--format", format).Out);

    [Fact]
    public void A_dearer_hour_makes_every_way_dearer()
    {
        double[] At(string wage)
        {
            using var json = JsonDocument.Parse(
                Run("--area", "container-yard", "--wage", wage, "--format", "json").Out
            );
            return
            [
                .. json
                    .RootElement.GetProperty("areas")[0]
                    .GetProperty("ways")
                    .EnumerateArray()
                    .Select(way => Number(way, "usdPer1000Pots")),
            ];
        }

        Assert.True(At("30").Min() > At("10").Min());
        Assert.True(At("30").Max() > At("10").Max());
    }

    private static double Number(JsonElement element, string name) => element.GetProperty(name).GetDouble();

    private static CommandRun Run(params string[] args) =>
        CommandRun.Of(["money", s_visit, "--knowledge", s_rules, .. args]);

    private static CommandRun WithPrices(string text)
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            string file = Path.Combine(folder, "prices.yaml");
            AtomicFile.Write(file, text);
            return Run("--area", "container-yard", "--prices", file);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
