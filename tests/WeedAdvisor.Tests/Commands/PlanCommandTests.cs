using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary><c>plan</c> through the command line, on the shipped demo visit.</summary>
public sealed partial class PlanCommandTests
{
    private static readonly Lazy<CommandRun> s_text = new(() => Run("--area", "container-yard"));

    [Fact]
    public void What_to_do_this_week_stands_first_and_what_it_costs_adds_up()
    {
        CommandRun run = s_text.Value;
        Assert.Equal(ExitCode.Done, run.Code);
        string page = run.Out.ReplaceLineEndings("\n");
        string[] headings = ["THIS WEEK", "THROUGH THE YEAR", "MONTH BY MONTH", "WHAT IT COSTS", "WHAT IS LEFT OUT"];
        int[] places = [.. headings.Select(heading => page.IndexOf(heading, StringComparison.Ordinal))];
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
        Assert.Contains("BEFORE ANY CHEMICAL", page, StringComparison.Ordinal);
        Assert.All(page.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void It_says_how_much_of_what_and_how_the_weeks_stand()
    {
        string page = s_text.Value.Out.ReplaceLineEndings("\n");
        Assert.Contains("| weeding round", page, StringComparison.Ordinal);
        Assert.Contains("Product on 256 m²", page, StringComparison.Ordinal);
        Assert.Contains("litres over all beds", page, StringComparison.Ordinal);
        Assert.Contains("h a week, the longest round", page, StringComparison.Ordinal);
        Assert.Contains("WHICH ANSWERS WOULD CHANGE IT MOST", page, StringComparison.Ordinal);
    }

    // RFC 5545: one event for each piece of work, each with a beginning and an end.
    [Fact]
    public void The_calendar_has_the_work_of_the_plan()
    {
        using var json = JsonDocument.Parse(Run("--area", "container-yard", "--answers", "0", "--format", "json").Out);
        int work = json.RootElement.GetProperty("areas")[0].GetProperty("plan").GetProperty("work").GetArrayLength();
        string[] lines = Run("--area", "container-yard", "--answers", "0", "--format", "ics").Out.Split("\r\n");
        Assert.Equal("BEGIN:VCALENDAR", lines[0]);
        Assert.Equal("END:VCALENDAR", lines[^2]);
        Assert.Equal(work, lines.Count(line => line == "BEGIN:VEVENT"));
        Assert.Equal(work, lines.Count(line => line.StartsWith("DTEND;VALUE=DATE:", StringComparison.Ordinal)));
        Assert.Contains(lines, line => line.Contains("weeding round", StringComparison.Ordinal));
    }

    [Fact]
    public void Progress_is_told_on_a_terminal_alone_and_leaves_nothing_on_the_page()
    {
        CommandRun watched = CommandRun.With(
            surroundings => surroundings with { IsErrorTerminal = true },
            [
                "plan",
                Path.Combine(Repository.Rules, "visits", "organic-nursery.yaml"),
                "--area",
                "perennials",
                "--knowledge",
                Repository.Rules,
            ]
        );
        Assert.Contains("Ctrl+C keeps the best", watched.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Ctrl+C", watched.Out, StringComparison.Ordinal);
        Assert.Empty(s_text.Value.Error);
    }

    // The months are rounded to tenths of an hour, the year to whole hours.
    [Fact]
    public void The_hours_of_the_months_are_the_hours_of_the_year()
    {
        string page = s_text.Value.Out.ReplaceLineEndings("\n");
        decimal[] months =
        [
            .. MonthRow()
                .Matches(page)
                .Select(row => decimal.Parse(row.Groups[1].ValueSpan, CultureInfo.InvariantCulture)),
        ];
        decimal year = decimal.Parse(HoursRow().Match(page).Groups[1].ValueSpan, CultureInfo.InvariantCulture);
        Assert.InRange(months.Length, 12, 13);
        Assert.All(months, hours => Assert.True(hours > 0));
        Assert.InRange(months.Sum(), year - 1.2m, year + 1.2m);
    }

    [Fact]
    public void The_json_has_the_plan_its_floor_and_what_was_left_out()
    {
        CommandRun run = Run("--area", "liner-bed", "--answers", "0", "--format", "json", "--pots", "2000");
        using var json = JsonDocument.Parse(run.Out);
        JsonElement area = json.RootElement.GetProperty("areas")[0];
        Assert.Equal(2000, area.GetProperty("pots").GetInt32());
        JsonElement plan = area.GetProperty("plan");
        decimal usd = plan.GetProperty("usdPer1000Pots").GetDecimal();
        Assert.True(plan.GetProperty("leastUsdPer1000Pots").GetDecimal() <= usd);
        Assert.True(usd < area.GetProperty("today").GetProperty("usdPer1000Pots").GetDecimal());
        Assert.Equal(
            usd,
            plan.GetProperty("measuresUsdPer1000Pots").GetDecimal()
                + plan.GetProperty("weedingUsdPer1000Pots").GetDecimal()
                + plan.GetProperty("lostUsdPer1000Pots").GetDecimal()
                + plan.GetProperty("nextYearUsdPer1000Pots").GetDecimal(),
            2
        );
        Assert.NotEqual(0, area.GetProperty("leftOut").GetArrayLength());
    }

    [Theory]
    [InlineData("1 to 100000000", "--pots", "0")]
    [InlineData("0 to", "--hours", "-1")]
    [InlineData("0 to", "--budget", "-1")]
    [InlineData("There is no action 'bark-mulsh'. Did you mean 'bark-mulch'?", "--with", "bark-mulsh")]
    [InlineData("cannot be both in the plan and left out", "--with", "bark-mulch", "--without", "bark-mulch")]
    [InlineData("No pots stand here", "--area", "bark-pile")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = Run(args.Contains("--area") ? args : [.. args, "--area", "container-yard"]);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_that_no_year_keeps_are_said_to_be_too_few()
    {
        // Where nothing is said of earlier uses no preventive is planned, so that few years are looked at.
        CommandRun run = CommandRun.In(
            new StringReader(
                """
                visit: test
                date: 2026-04-14
                areas:
                  - id: yard
                    name: The yard
                    answers: { place: container-yard, stock: established, region: puget-sound, weeding-interval: 4 }
                    weeds: [{ weed: liverwort, stage: expected }]

                """
            ),
            "plan",
            "-",
            "--area",
            "yard",
            "--hours",
            "0",
            "--knowledge",
            Repository.Rules
        );
        Assert.Equal(ExitCode.Negative, run.Code);
        Assert.Contains("No year keeps 0 hours a week. What would do: ", run.Out, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^  [A-Z][a-z]{2} 20[0-9]{2} +[0-9]+ +([0-9.]+)", RegexOptions.Multiline)]
    private static partial Regex MonthRow();

    [GeneratedRegex(@"^  hours of work +([0-9]+) ", RegexOptions.Multiline)]
    private static partial Regex HoursRow();

    private static CommandRun Run(params string[] args) => CommandRun.With(surroundings => surroundings, Args(args));

    private static string[] Args(params string[] args) =>
        [
            "plan",
            Path.Combine(Repository.Folder, "rules", "visits", "demo-spring.yaml"),
            .. args,
            "--knowledge",
            Path.Combine(Repository.Folder, "rules"),
        ];
}
