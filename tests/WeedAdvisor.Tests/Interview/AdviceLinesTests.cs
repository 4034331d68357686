using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Interview;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview;

public sealed class AdviceLinesTests
{
    private static readonly AreaAdvice s_advice = Make();

    [Fact]
    public void What_merely_does_not_suit_and_what_only_may_apply_are_counted()
    {
        string[] lines = Lines(full: false);
        Assert.Contains("x Mulch needs pots (unsuitable: 1)", lines);
        Assert.DoesNotContain("    Mulch the pots with rice hulls", lines);
        Assert.Contains("  1 more may apply; Space names them.", lines);
        Assert.DoesNotContain(lines, line => line.Contains("Possibly:", StringComparison.Ordinal));
    }

    [Fact]
    public void In_full_everything_is_named()
    {
        string[] lines = Lines(full: true);
        Assert.Contains("x Mulch needs pots (unsuitable)", lines);
        Assert.Contains("    Mulch the pots with rice hulls", lines);
        Assert.Contains("! Possibly: Keep people out.", lines);
    }

    [Fact]
    public void What_is_prohibited_is_always_named_and_stands_first()
    {
        string[] lines = Lines(full: false);
        int prohibited = Array.IndexOf(lines, "x No granules here (prohibited)");
        Assert.Equal("    Pendimethalin granules", lines[prohibited + 1]);
        Assert.True(prohibited < Array.FindIndex(lines, line => line.Contains("unsuitable", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_a_chemical_is_named_the_label_stands()
    {
        Assert.Contains("Before any chemical", Lines(full: false));
        AreaAdvice without = s_advice with { Barred = [], Clear = [], Waiting = [], Conflicts = [] };
        Assert.DoesNotContain(
            AdviceLines.Of(SmallTrade.Knowledge, without, null, 70, full: false),
            line => line.Text == "Before any chemical");
    }

    [Fact]
    public void No_line_is_wider_than_the_pane()
    {
        foreach (int width in new[] { 20, 33, 54 })
        {
            Assert.All(
                AdviceLines.Of(SmallTrade.Knowledge, s_advice, null, width, full: true),
                line => Assert.True(line.Text.Length <= width, line.Text));
        }
    }

    private static string[] Lines(bool full) =>
        [.. AdviceLines.Of(SmallTrade.Knowledge, s_advice, null, 70, full).Select(line => line.Text)];

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

    private static Reason Reason(string rule, Severity severity) => new(
        rule, "topic", "Because.", new Consequence.Bar(severity), null, 1, true, [], [], []);
}
