using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview.Pages;

public sealed class AdviceLinesTests
{
    private static readonly AreaAdvice s_advice = Make();
    private static readonly AreaCase s_looked = AreaCase.Alone(new DateOnly(2026, 4, 14), s_advice.Area);

    [Fact]
    public void What_merely_does_not_suit_and_what_only_may_apply_are_counted()
    {
        string[] lines = Lines(full: false);
        Assert.Contains("x Mulch needs pots (never, unsuitable: 1)", lines);
        Assert.DoesNotContain("    Mulch the pots with rice hulls", lines);
        Assert.Contains("  1 more may apply; Space names them.", lines);
        Assert.DoesNotContain(lines, line => line.Contains("Possibly:", StringComparison.Ordinal));
    }

    [Fact]
    public void In_full_everything_is_named()
    {
        string[] lines = Lines(full: true);
        Assert.Contains("x Mulch needs pots (never, unsuitable)", lines);
        Assert.Contains("    Mulch the pots with rice hulls", lines);
        Assert.Contains("! Possibly: Keep people out.", lines);
    }

    [Fact]
    public void What_is_prohibited_is_always_named_and_stands_first()
    {
        string[] lines = Lines(full: false);
        int prohibited = Array.IndexOf(lines, "x No granules here (never, prohibited)");
        Assert.Equal("    Pendimethalin granules", lines[prohibited + 1]);
        Assert.True(prohibited < Array.FindIndex(lines, line => line.Contains("unsuitable", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_a_chemical_is_named_the_label_stands()
    {
        Assert.Contains("Before any chemical", Lines(full: false));
        AreaAdvice without = s_advice with { Barred = [], Clear = [], Waiting = [], Conflicts = [] };
        Assert.DoesNotContain(PageLines.Of(AdvicePage.Of(SmallTrade.Knowledge, without, null, full: false), 70), line =>
            line.Text == "Before any chemical"
        );
    }

    [Fact]
    public void The_pane_begins_with_keep_out_and_what_is_done_then()
    {
        AreaAdvice closed = s_advice with
        {
            KeepOut = new KeepOut(
                new Until(new DateTime(2026, 4, 14, 20, 0, 0), true, []),
                [],
                ["Its interval still runs."],
                ["rice-hull-mulch"]
            ),
        };
        Assert.Equal(
            [
                "Keep out until 20:00 on 14 April 2026",
                "! Its interval still runs.",
                "  From then, best first:",
                "  - Mulch the pots with rice hulls",
                "",
            ],
            PageLines
                .Of(AdvicePage.Of(SmallTrade.Knowledge, closed, null, full: false), 70)
                .Take(5)
                .Select(line => line.Text)
        );
    }

    [Fact]
    public void What_is_not_yet_stands_with_its_day_and_is_only_counted_among_the_bars()
    {
        BarredAction later = Barred("rice-hull-mulch", "mulch-needs-pots", Severity.Prohibited) with
        {
            Status = ActionStatus.NotYet,
            Until = new Until(new DateTime(2026, 7, 14), false, ["when the flush has hardened"]),
            After = ActionStatus.Clear,
        };
        string[] lines = Lines(s_advice with { Barred = [later] });
        int list = Array.IndexOf(lines, "What becomes possible, and when (1)");
        Assert.Equal(
            ["  Mulch the pots with rice hulls", "    from 14 July 2026, and when the flush has hardened"],
            lines[(list + 1)..(list + 3)]
        );
        Assert.Contains(lines, line =>
            line.StartsWith(
                "x Mulch needs pots (not yet, from 14 July 2026, and when the flush",
                StringComparison.Ordinal
            )
        );
        Assert.Contains("  What does not suit, or not yet, is only counted; Space names it.", lines);
    }

    [Fact]
    public void What_is_clear_unless_names_the_doubt_and_the_question_in_pane_and_reasons()
    {
        ClearAction clear = s_advice.Clear[0] with
        {
            Status = ActionStatus.ClearUnless,
            Unless = [Need.Question("cover")],
            Doubts =
            [
                new Reason(
                    "it-runs-off",
                    "topic",
                    "It may run off.",
                    new Consequence.Argument(0.9, true),
                    s_advice.Clear[0].Action,
                    0.9,
                    false,
                    [Need.Question("cover")],
                    [],
                    []
                ),
            ],
        };
        string ask = SmallTrade.Question("cover").Ask;
        AreaAdvice advice = s_advice with { Clear = [clear], Trail = new GivenTrail(clear.Doubts) };
        Assert.Contains($"   clear unless: It may run off. (ask: {ask})", Lines(advice));
        string[] why =
        [
            .. PageLines
                .Of(ReasonPage.Of(SmallTrade.Knowledge, advice, s_looked, clear.Action, full: false), 70)
                .Select(line => line.Text),
        ];
        Assert.Contains("Here: clear unless (ask: cover), number 1 of what is done this week.", why);
        Assert.Contains($"  ? {ask} (cover)", why);
        Assert.Contains("    may speak against it: It may run off.", why);
    }

    [Fact]
    public void No_line_is_wider_than_the_pane()
    {
        foreach (int width in new[] { 20, 33, 54 })
        {
            Assert.All(PageLines.Of(AdvicePage.Of(SmallTrade.Knowledge, s_advice, null, full: true), width), line =>
                Assert.True(line.Text.Length <= width, line.Text)
            );
        }
    }

    private static string[] Lines(bool full) => Lines(s_advice, full);

    private static string[] Lines(AreaAdvice advice, bool full = false) =>
        [.. PageLines.Of(AdvicePage.Of(SmallTrade.Knowledge, advice, null, full), 70).Select(line => line.Text)];

    private static AreaAdvice Make()
    {
        AreaAdvice advice = new FakeAdvice().Of(AreaCase.Alone(new DateOnly(2026, 4, 14), VisitArea.Blank("a", "A")));
        return advice with
        {
            Waiting = [],
            Cautions = [new AreaCaution("Keep people out.", false, Reason("keep-out", Severity.Unsuitable))],
            Barred =
            [
                Barred("pendimethalin-granules", "no-granules-here", Severity.Prohibited),
                Barred("rice-hull-mulch", "mulch-needs-pots", Severity.Unsuitable),
            ],
        };
    }

    private static BarredAction Barred(string action, string rule, Severity severity) =>
        new(action, severity, [Reason(rule, severity)], []);

    private static Reason Reason(string rule, Severity severity) =>
        new(rule, "topic", "Because.", new Consequence.Bar(severity), null, 1, true, [], [], []);
}
