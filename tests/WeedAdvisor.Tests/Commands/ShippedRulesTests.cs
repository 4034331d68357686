using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Catalogue;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.Reports.Worked;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>The shipped rules, seen through the program.</summary>
public sealed class ShippedRulesTests
{
    private static readonly string s_rules = Repository.Rules;

    private static readonly ConcurrentDictionary<(string Visit, bool IsFull), string> s_written = [];

    [Fact]
    public void They_load_without_a_problem()
    {
        CommandRun run = CommandRun.Of("knowledge", "check", "--knowledge", s_rules);
        Assert.Equal("", run.Error);
        Assert.Equal(ExitCode.Done, run.Code);
    }

    [Fact]
    public void Every_worked_visit_comes_as_expected()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        ExpectationResult result = ExpectationCheck.Run(knowledge, visit =>
            ShippedRules.WorkedAdvice.Single(advice => ReferenceEquals(advice.Visit, visit))
        );
        Assert.Empty(result.Failures.Select(failure => failure.ToString()));
        Assert.True(result.Passed > knowledge.WorkedVisits.Length);
    }

    [Fact]
    public void Every_rule_and_every_action_is_shown_at_work_or_excused_in_writing()
    {
        CommandRun run = CommandRun.Of("knowledge", "coverage", "--knowledge", s_rules);
        Assert.True(run.Code == ExitCode.Done, run.Out);
        Assert.EndsWith("; 0 gaps", run.Out.ReplaceLineEndings(" ").TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_on_the_knowledge_is_up_to_date() =>
        ExpectedText.MatchesFile(
            CommandRun.Of("knowledge", "doc", "--knowledge", s_rules).Out,
            Path.Combine(Repository.Folder, "docs", "knowledge.md")
        );

    [Fact]
    public void Any_record_is_shown_with_all_its_sources_in_words()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        foreach (string kind in KnowledgeCatalogue.Kinds)
        {
            foreach (CatalogueEntry entry in KnowledgeCatalogue.Of(knowledge, kind, new DateOnly(2026, 11, 28)))
            {
                string text = Flat(CatalogueText.Show([entry], 80));
                Assert.StartsWith($"{entry.Id} ({kind})", text, StringComparison.Ordinal);
                Assert.DoesNotContain("not in the list of sources", text, StringComparison.Ordinal);
                if (kind != "sources")
                    Assert.Matches(@" source: \[[a-z0-9-]+\] \S", text);
            }
        }
    }

    [Fact]
    public void Every_worked_visit_reads_well_on_80_columns_and_parses_as_json()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        foreach (VisitAdvice advice in ShippedRules.WorkedAdvice)
        {
            string full = Written(advice, isFull: true);
            string brief = Written(advice, isFull: false);
            Assert.All((full + brief).Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.DoesNotContain("not in the list of sources", full, StringComparison.Ordinal);
            using var json = JsonDocument.Parse(JsonReport.Of(advice, knowledge));
            Assert.Equal(advice.Areas.Length, json.RootElement.GetProperty("areas").GetArrayLength());
        }
    }

    [Fact]
    public void What_is_shown_first_is_half_of_everything_at_most_and_of_the_demo_a_third()
    {
        ImmutableArray<VisitAdvice> all = ShippedRules.WorkedAdvice;
        Assert.True(2 * all.Sum(advice => LinesOf(advice, false)) < all.Sum(advice => LinesOf(advice, true)));
        VisitAdvice demo = all.Single(advice => advice.Visit.Id == "demo-spring");
        Assert.True(3 * LinesOf(demo, false) < LinesOf(demo, true));

        int LinesOf(VisitAdvice advice, bool full) => Written(advice, full).Count(letter => letter == '\n');
    }

    [Fact]
    public void Reasons_that_wait_for_answers_read_without_holes()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        Visit blank = ShippedRules.Visit("nothing-answered");
        string[] texts =
        [
            .. ShippedRules
                .Advisor.Advise(blank)
                .Areas[0]
                .AllConclusions()
                .SelectMany(reason => new[] { reason.Text, reason.CautionText ?? "" }),
        ];
        Assert.Contains(texts, text => text.Contains("some days", StringComparison.Ordinal));
        Assert.All(texts, text => Assert.DoesNotMatch("[{}]|\\) days", text));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_chemical_is_named_without_the_safety_lines(bool full)
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        foreach (VisitAdvice advice in ShippedRules.WorkedAdvice)
        {
            foreach (AreaAdvice area in advice.Areas)
            {
                string text =
                    advice.Areas.Length == 1
                        ? Written(advice, full)
                        : TextReport.Of(advice with { Areas = [area] }, knowledge, new TextLayout(Full: full));
                bool names = knowledge.Treatments.Values.Any(one =>
                    Flat(text).Contains(one.Name, StringComparison.Ordinal)
                );
                Assert.True(!names || text.Contains("BEFORE ANY CHEMICAL", StringComparison.Ordinal), area.Area.Id);
            }
        }
    }

    [Fact]
    public void The_demo_is_the_first_thing_a_newcomer_sees()
    {
        CommandRun run = CommandRun.Of("demo", "--knowledge", s_rules);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("(invented)", run.Out.Split('\n')[0], StringComparison.Ordinal);
        Assert.Contains("TODAY", run.Out, StringComparison.Ordinal);
    }

    // Of the thirty weeds that the spray controls, the one that stands here is told.
    [Fact]
    public void Why_shows_of_a_long_list_what_was_compared()
    {
        CommandRun run = CommandRun.Of(
            "why",
            Path.Combine(s_rules, "visits", "container-yard-with-spurge.yaml"),
            "glufosinate-directed",
            "--full",
            "--knowledge",
            s_rules
        );
        Assert.Contains(
            "weeds that it controls well are spotted spurge.",
            string.Join(' ', run.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("9999-12-31")]
    [InlineData("0001-01-01")]
    [InlineData("soon")]
    public void A_day_that_is_none_or_far_off_is_refused(string day)
    {
        string visit = Path.Combine(s_rules, "visits", "demo-spring.yaml");
        CommandRun run = CommandRun.Of("season", visit, "--from", day, "--knowledge", s_rules);
        Assert.Equal(ExitCode.Usage, run.Code);
        string far = File.ReadAllText(visit).Replace("date: 2026-04-14", $"date: {day}", StringComparison.Ordinal);
        CommandRun read = CommandRun.In(new StringReader(far), "advise", "-", "--knowledge", s_rules);
        Assert.Equal(ExitCode.Usage, read.Code);
        Assert.Contains(
            day == "soon" ? "a date, YYYY-MM-DD" : "a date of the years 1900 to 2199",
            read.Error,
            StringComparison.Ordinal
        );
    }

    // The report on a worked visit, with its sources: written once for all that look at it.
    private static string Written(VisitAdvice advice, bool isFull) =>
        s_written.GetOrAdd((advice.Visit.Id, isFull), one =>
            TextReport.Of(advice, ShippedRules.Knowledge, new TextLayout(WithSources: true, Full: one.IsFull))
        );

    private static string Flat(string text) =>
        string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
