using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Tests.Samples;

namespace WeedAdvisor.Reports.Tests;

public sealed class TextReportTests
{
    private static readonly TextLayout s_full = new(Full: true);

    [Fact]
    public void Full_advice_at_80_columns() => ExpectedText.Matches(Text(s_full));

    [Fact]
    public void Full_advice_at_60_columns_with_sources() =>
        ExpectedText.Matches(Text(new TextLayout(60, true, Full: true)));

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void No_line_is_wider_than_the_page(int width)
    {
        string text = Text(new TextLayout(width, true)) + Text(new TextLayout(width, true, Full: true));
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= width, line));
    }

    [Fact]
    public void Another_culture_gives_the_same_text()
    {
        var layout = new TextLayout(80, true, Full: true);
        string plain = Text(layout);
        using var culture = new CommaCulture();
        Assert.Equal(plain, Text(layout));
    }

    [Fact]
    public void Safety_is_said_for_every_area_that_names_a_chemical_and_only_there()
    {
        string withChemical = Text(SampleAdvice.FullArea);
        string without = Text(SampleAdvice.BlankArea);
        Assert.All(Safety.StandingLines, line => Assert.Contains(line[..20], withChemical, StringComparison.Ordinal));
        Assert.DoesNotContain("BEFORE ANY CHEMICAL", without, StringComparison.Ordinal);
    }

    [Fact]
    public void Safety_is_said_even_when_every_chemical_is_barred()
    {
        AreaAdvice area = SampleAdvice.FullArea with { Clear = [], Waiting = [], Conflicts = [] };
        Assert.Contains("BEFORE ANY CHEMICAL", Text(area), StringComparison.Ordinal);
    }

    [Fact]
    public void One_rule_that_bars_many_reads_as_one_entry()
    {
        string text = Text(SampleAdvice.FullArea);
        Assert.Single(Lines(text), line =>
            line.Contains("This chemical goes over cuttings.", StringComparison.Ordinal)
        );
        Assert.Contains("15 chemicals: Granule number 05; Granule number 06 (+1);", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Prohibited_stands_before_unsuitable() =>
        Assert.True(
            Text(SampleAdvice.FullArea).IndexOf("Never, prohibited:", StringComparison.Ordinal)
                < Text(SampleAdvice.FullArea).IndexOf("Never, unsuitable:", StringComparison.Ordinal)
        );

    [Fact]
    public void Values_older_than_a_year_are_called_out()
    {
        VisitAdvice later = SampleAdvice.Of(SampleAdvice.FullArea);
        later = later with { Visit = later.Visit with { Date = new DateOnly(2027, 11, 26) } };
        Assert.Contains("over a year ago", Flat(Text(later, s_full)), StringComparison.Ordinal);
        later = later with { Visit = later.Visit with { Date = new DateOnly(2027, 11, 25) } };
        Assert.DoesNotContain("over a year ago", Flat(Text(later, s_full)), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_from_a_file_cannot_drive_the_terminal()
    {
        VisitAdvice advice = SampleAdvice.Of(SampleAdvice.BlankArea);
        advice = advice with { Visit = advice.Visit with { Nursery = "Evil\u001b[31m\u202e nursery\r\nhere" } };
        string text = Text(advice, new TextLayout());
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain('\u202e', text);
        Assert.DoesNotContain('\r', text);
    }

    [Fact]
    public void Dates_are_told_with_what_sets_them()
    {
        string text = Text(SampleAdvice.FullArea);
        Assert.DoesNotContain("from 24 April 2026", text, StringComparison.Ordinal);
        Assert.Contains("by 11 October 2026: the house must stay open", text, StringComparison.Ordinal);
        Assert.Contains("look again from 9 June 2026:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_due_at_once_is_due_today()
    {
        string text = Text(SampleAdvice.Seeding(SampleAdvice.FullArea) with { Clear = [SampleAdvice.Pull] });
        Assert.Contains(
            "today: Liverwort is about to shed spores or splash cups, or already does",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_text_below_an_action_does_not_start_with_its_name() =>
        Assert.Contains(
            "mind: Rinse the tank after it. Surface wash stains.",
            Text(SampleAdvice.FullArea),
            StringComparison.Ordinal
        );

    private static string Text(TextLayout layout) => Text(SampleAdvice.Full, layout);

    private static string Text(AreaAdvice area) => Text(SampleAdvice.Of(area), s_full);

    private static string Text(VisitAdvice advice, TextLayout layout) =>
        TextReport.Of(advice, SampleKnowledge.Small, layout);

    private static string[] Lines(string text) => text.Split('\n');

    private static string Flat(string text) =>
        string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
