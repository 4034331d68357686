using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Tests.Samples;

namespace WeedAdvisor.Reports.Tests;

public sealed class BriefTextTests
{
    [Fact]
    public void Brief_advice_at_80_columns() => ExpectedText.Matches(Text(SampleAdvice.Full));

    [Fact]
    public void Brief_advice_at_60_columns_with_sources() =>
        ExpectedText.Matches(
            TextReport.Of(SampleAdvice.Full, SampleKnowledge.Small, new TextLayout(60, WithSources: true))
        );

    [Fact]
    public void Another_culture_gives_the_same_text()
    {
        string plain = Text(SampleAdvice.Full);
        using var culture = new CommaCulture();
        Assert.Equal(plain, Text(SampleAdvice.Full));
    }

    [Fact]
    public void The_best_are_told_in_full_and_the_rest_on_one_line_each()
    {
        string[] lines = Text(SampleAdvice.Of(SampleAdvice.WithGranules(7))).Split('\n');
        Assert.Equal(4, lines.Count(line => line.Contains("Use it as its label says.", StringComparison.Ordinal)));
        int fifth = Array.IndexOf(lines, "   5. Granule number 05 (0.35): $1,235");
        Assert.Equal(
            ["   6. Granule number 06 (0.35): $1,235", "   7. Granule number 07 (0.35): $1,235", ""],
            lines[(fifth + 1)..(fifth + 4)]
        );
    }

    [Fact]
    public void What_several_actions_share_is_said_once()
    {
        string text = Text(SampleAdvice.Of(SampleAdvice.WithGranules(3)));
        Assert.Contains("  a. for: It helps, says it-helps-0-7.", text, StringComparison.Ordinal);
        Assert.Contains("  b. mind: Water this chemical in.", text, StringComparison.Ordinal);
        Assert.Equal(3, Count(text, "notes: a, b\n"));
        Assert.Equal(1, Count(text, "Water this chemical in."));
        Assert.Equal(0, Count(text, "Granule number 01 in."));
    }

    [Fact]
    public void What_to_mind_with_a_chemical_is_never_cut_short()
    {
        string text = Text(SampleAdvice.Of(Minding(SampleAdvice.WithGranules(1), 9)));
        Assert.All(Enumerable.Range(1, 9), n => Assert.Contains($"mind: Thing {n}.", text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_left_out_of_a_practice_is_counted()
    {
        string text = Text(SampleAdvice.Of(Minding(SampleAdvice.FullArea with { Clear = [SampleAdvice.Pull] }, 9)));
        Assert.Contains("mind: Thing 2.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Thing 3.", text, StringComparison.Ordinal);
        Assert.Contains("mind: 7 more cautions ('why' shows them)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_practice_is_explained_once_in_a_report()
    {
        AreaAdvice first = SampleAdvice.Seeding(SampleAdvice.FullArea) with { Clear = [SampleAdvice.Pull] };
        AreaAdvice second = first with { Area = first.Area with { Id = "yard", Name = "Yard" } };
        string text = Text(SampleAdvice.Of(first, second));
        Assert.Equal(1, Count(text, "Do it with care"));
        Assert.Equal(1, Count(text, "Pull the weeds by hand (0.35): see Mist house\n"));
        Assert.Equal(2, Count(text, "today: Liverwort is about to shed spores"));
    }

    [Fact]
    public void A_chemical_is_explained_in_every_area()
    {
        AreaAdvice first = SampleAdvice.WithGranules(1);
        AreaAdvice second = first with { Area = first.Area with { Id = "yard", Name = "Yard" } };
        string text = Text(SampleAdvice.Of(first, second));
        Assert.Equal(2, Count(text, "mind: Water Granule number 01 in."));
        Assert.Equal(2, Count(text, "label first: "));
    }

    [Fact]
    public void Safety_is_said_once_in_a_report_and_before_all_else()
    {
        string text = Text(SampleAdvice.Of(SampleAdvice.FullArea, SampleAdvice.FullArea));
        Assert.Equal(1, Count(text, "BEFORE ANY CHEMICAL"));
        int safety = text.IndexOf("BEFORE ANY CHEMICAL", StringComparison.Ordinal);
        Assert.True(safety < text.IndexOf("=====", StringComparison.Ordinal));
        Assert.All(Safety.StandingLines, line => Assert.Contains(line[..20], text, StringComparison.Ordinal));
        Assert.DoesNotContain("BEFORE ANY", Text(SampleAdvice.Of(SampleAdvice.BlankArea)), StringComparison.Ordinal);
    }

    [Fact]
    public void Safety_is_said_even_when_every_chemical_is_barred()
    {
        AreaAdvice area = SampleAdvice.FullArea with { Clear = [], Waiting = [], Conflicts = [] };
        Assert.Contains("BEFORE ANY CHEMICAL", Text(SampleAdvice.Of(area)), StringComparison.Ordinal);
    }

    [Fact]
    public void Many_barred_are_counted_and_few_are_named()
    {
        string text = Text(SampleAdvice.Full);
        Assert.Contains(
            "  - 15 chemicals, prohibited: This chemical goes over cuttings.",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "  - 1 practice, unsuitable: This practice takes longer than it helps.\n      Pull the weeds by hand\n",
            text,
            StringComparison.Ordinal
        );
    }

    private static AreaAdvice Minding(AreaAdvice area, int cautions) =>
        area with
        {
            Clear =
            [
                area.Clear[0] with
                {
                    Cautions =
                    [
                        .. Enumerable.Range(1, cautions).Select(n => new ActionCaution($"Thing {n}.", null, true)),
                    ],
                },
            ],
        };

    private static string Text(VisitAdvice advice) => TextReport.Of(advice, SampleKnowledge.Small, new TextLayout());

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
