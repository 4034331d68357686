using System.Text.Json;
using Ical.Net;
using Ical.Net.CalendarComponents;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class SeasonCommandTests
{
    private static readonly string s_rules = Repository.Rules;
    private static readonly string s_visit = Path.Combine(s_rules, "visits", "demo-spring.yaml");

    [Theory]
    [InlineData("--from takes a date such as 2026-04-14, not 'spring'", "--from", "spring")]
    [InlineData(
        "--applications takes a whole number from 0 to 52, or two of them as in 2..4, not '-3'",
        "--applications",
        "-3"
    )]
    [InlineData(
        "--applications takes a whole number from 0 to 52, or two of them as in 2..4, not '4..2'",
        "--applications",
        "4..2"
    )]
    [InlineData("--closed cannot read 'someday'", "--closed", "someday")]
    [InlineData(
        "--closed has '2031-01', which lies outside the plan (2026-04-14 to 2027-04-12)",
        "--closed",
        "2031-01"
    )]
    [InlineData("--budget takes a number from 0 to 1000000, not '-1'", "--budget", "-1")]
    [InlineData("--rotate takes a whole number from 1 to 12, not '0'", "--rotate", "0")]
    [InlineData("--share takes a number from 1 to 100, not '0'", "--share", "0")]
    [InlineData("--rounds takes a whole number from 1 to 52, not '0'", "--rounds", "0")]
    [InlineData("--wage takes a number from 0 to 10000, not '-18'", "--wage", "-18")]
    [InlineData(
        "There is no treatment 'oryzalin-sprey'. Did you mean 'oryzalin-spray'?",
        "--without",
        "oryzalin-sprey"
    )]
    [InlineData("No pots stand here", "--area", "bark-pile")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = Run(args);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    // The head of one row of the strip, as wide as the page leaves room for.
    private const string Wide = "spotted spurge        ",
        Narrow = "spotted spur ";

    [Fact]
    public void The_strip_shows_the_year_and_how_sure_the_plan_is()
    {
        CommandRun run = Run();
        Assert.Equal(ExitCode.Done, run.Code);
        string[] lines = run.Out.ReplaceLineEndings("\n").Split('\n');
        Assert.Contains(lines, line =>
            line.StartsWith("spotted spurge        ", StringComparison.Ordinal) && line.Length == 22 + 52
        );
        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        Assert.Contains("The best found. It is proven only that none", run.Out, StringComparison.Ordinal);
        Assert.Contains("Proven: at these rounds no plan ", Run("--rounds", "2").Out, StringComparison.Ordinal);
        Assert.Contains("The label is the law", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_narrow_page_the_strip_stands_in_pieces_and_no_week_is_lost()
    {
        string[] lines = Run("--width", "40").Out.ReplaceLineEndings("\n").Split('\n');
        Assert.Contains("WHAT GOES ON", lines);
        Assert.All(lines, line => Assert.True(line.Length <= 40, line));
        string[] pieces = [.. lines.Where(line => line.StartsWith(Narrow, StringComparison.Ordinal))];
        Assert.True(pieces.Length > 1);
        string whole = Run()
            .Out.ReplaceLineEndings("\n")
            .Split('\n')
            .Single(line => line.StartsWith(Wide, StringComparison.Ordinal));
        Assert.Equal(whole[Wide.Length..], string.Concat(pieces.Select(piece => piece[Narrow.Length..])));
    }

    [Fact]
    public void A_year_asked_twice_is_the_same_to_the_byte() =>
        Assert.Equal(
            Run("--full", "--area", "liner-bed").Out,
            CommandRun.Alone(Line(["--full", "--area", "liner-bed"])).Out
        );

    [Fact]
    public void Closed_weeks_and_fewer_applications_are_kept_and_cost_more()
    {
        JsonElement free = Area(Run("--format", "json"));
        JsonElement bound = Area(Run("--format", "json", "--applications", "2", "--closed", "2026-04,june"));
        Assert.True(Total(bound) > Total(free));
        JsonElement[] uses = [.. bound.GetProperty("plan").GetProperty("applications").EnumerateArray()];
        Assert.True(uses.Length <= 2);
        Assert.All(uses, use =>
            Assert.DoesNotContain(use.GetProperty("day").GetString()![..7], new[] { "2026-04", "2026-06" })
        );

        static decimal Total(JsonElement area) => area.GetProperty("plan").GetProperty("totalUsd").GetDecimal();
    }

    [Fact]
    public void Wishes_that_clash_are_named_and_the_answer_is_no()
    {
        CommandRun run = Run("--applications", "5..6", "--budget", "20");
        Assert.Equal(ExitCode.Negative, run.Code);
        Assert.Contains("at least 5 applications", run.Out, StringComparison.Ordinal);
        Assert.Contains("a budget of 20", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_ordinary_calendar_takes_in_every_piece_of_work()
    {
        // RFC 5545, read back by a general-purpose library.
        string text = Run("--format", "ics").Out;
        Assert.All(text.Split("\r\n"), line => Assert.True(System.Text.Encoding.UTF8.GetByteCount(line) <= 75, line));
        Assert.DoesNotContain("\n", text.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Calendar calendar = Calendar.Load(text)!;
        JsonElement[] work = [.. Area(Run("--format", "json")).GetProperty("work").EnumerateArray()];
        CalendarEvent[] events = [.. calendar.Events];
        Assert.Equal("2.0", calendar.Version);
        Assert.Equal(work.Length, events.Length);
        Assert.Distinct(events.Select(one => one.Uid));
        foreach ((JsonElement piece, CalendarEvent one) in work.Zip(events))
        {
            DateOnly first = DateOnly.ParseExact(piece.GetProperty("day").GetString()!, "yyyy-MM-dd");
            DateOnly last = DateOnly.ParseExact(piece.GetProperty("lastDay").GetString()!, "yyyy-MM-dd");
            Assert.True(one.IsAllDay);
            Assert.Equal(first, one.Start!.Date);
            Assert.Equal(last.AddDays(1), one.End!.Date);
            Assert.StartsWith(piece.GetProperty("text").GetString()!, one.Description, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_page_is_one_file_with_a_picture_and_nothing_from_elsewhere()
    {
        string html = Run("--format", "html").Out;
        Assert.StartsWith("<!DOCTYPE html>", html, StringComparison.Ordinal);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotContain("src=", html, StringComparison.Ordinal);
        Assert.DoesNotContain("href=", html, StringComparison.Ordinal);
        int from = html.IndexOf("<svg", StringComparison.Ordinal),
            to = html.IndexOf("</svg>", StringComparison.Ordinal) + "</svg>".Length;
        Assert.Equal(
            12 * 52,
            System
                .Xml.Linq.XElement.Parse(html[from..to])
                .Elements()
                .Count(one => one.Name.LocalName == "rect" && one.Attribute("height")!.Value == "16")
        );
    }

    [Fact]
    public void The_year_after_follows_on()
    {
        JsonElement area = Area(Run("--format", "json", "--year-after", "--rounds", "2"));
        JsonElement after = area.GetProperty("yearAfter");
        Assert.Equal("2027-04-13", after.GetProperty("from").GetString());
        JsonElement plan = after.GetProperty("plan");
        Assert.True(plan.GetProperty("leastUsd").GetDecimal() <= plan.GetProperty("totalUsd").GetDecimal());
    }

    [Fact]
    public void Own_prices_change_the_plan()
    {
        string file = Path.Combine(Path.GetTempPath(), Guid.NewGuid().ToString("N") + ".yaml");
        AtomicFile.Write(
            file,
            string.Concat(
                ShippedRules
                    .Knowledge.Prices.Values.Where(price => price.Id.EndsWith("-in-granules", StringComparison.Ordinal))
                    .Select(price =>
                        $"- id: {price.Id}\n  name: {price.Name}\n  value: 900000\n  unit: {price.Unit}\n"
                        + "  from: { all: own-books }\n"
                    )
            )
        );
        try
        {
            JsonElement dear = Area(Run("--format", "json", "--prices", file));
            Assert.DoesNotContain(dear.GetProperty("plan").GetProperty("applications").EnumerateArray().Skip(1), use =>
                use.GetProperty("treatment").GetString()!.EndsWith("granule", StringComparison.Ordinal)
            );
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static JsonElement Area(CommandRun run) => JsonDocument.Parse(run.Out).RootElement.GetProperty("areas")[0];

    private static CommandRun Run(params string[] args) => CommandRun.Told(Line(args));

    private static string[] Line(string[] args) =>
        [
            "season",
            s_visit,
            .. args.Contains("--area") ? [] : (string[])["--area", "container-yard"],
            .. args,
            "--knowledge",
            s_rules,
        ];
}
