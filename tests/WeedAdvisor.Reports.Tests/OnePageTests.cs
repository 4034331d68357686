using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Samples;

namespace WeedAdvisor.Reports.Tests;

public sealed class OnePageTests
{
    [Fact]
    public void One_page_at_80_columns() => ExpectedText.Matches(Text(SampleAdvice.Full));

    [Fact]
    public void One_page_at_60_columns_with_sources() =>
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
    public void Of_what_does_one_job_the_best_is_told_and_the_others_are_named()
    {
        AreaAdvice granules = SampleAdvice.WithGranules(3);
        string text = Text(
            SampleAdvice.Of(granules with { Clear = [.. granules.Clear.Select(one => one with { Rank = 1 })] })
        );
        Assert.Contains("   1. Granule number 01\n", text, StringComparison.Ordinal);
        Assert.Contains("or: Granule number 02\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("   2. ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reason_shared_by_several_is_said_once_and_the_label_of_a_chemical_with_each()
    {
        string text = Text(SampleAdvice.Of(SampleAdvice.WithGranules(3)));
        Assert.Equal(1, Count(text, "why: It helps, says it-helps-0-7."));
        Assert.Equal(3, Count(text, "label first: "));
    }

    [Fact]
    public void What_is_left_out_of_the_cautions_is_counted()
    {
        string text = Text(SampleAdvice.Of(Minding(SampleAdvice.FullArea with { Clear = [SampleAdvice.Pull] }, 9)));
        Assert.Contains("mind: Thing 1.", text, StringComparison.Ordinal);
        Assert.Matches("mind: [0-9] more things", text);
    }

    [Fact]
    public void What_was_used_last_and_is_barred_says_so_with_its_reason()
    {
        AreaAdvice full = SampleAdvice.FullArea;
        string used = full.Barred.First(one => SampleKnowledge.Small.Treatments.ContainsKey(one.Action)).Action;
        var past = new PastApplication(used, SampleAdvice.Day.AddDays(-60), null, WordSet.Empty);
        string text = Text(SampleAdvice.Of(full with { Area = full.Area with { Past = [past] } }));
        Assert.Contains("CHEMICALS YOU HAVE, OR ASK ABOUT\n", text, StringComparison.Ordinal);
        Assert.Contains($"{SampleKnowledge.Small.ActionOf(used)!.Name}: no. ", text, StringComparison.Ordinal);
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
