using CsCheck;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Tests;

public sealed class PageTests
{
    [Fact]
    public void Any_text_stays_inside_the_page_and_loses_nothing_but_blanks()
    {
        Gen<string> words = Gen.String[Gen.Char["abc-/,. \u001b\t\u202e"], 0, 300];
        Gen<string> marks = Gen.String[Gen.Char["ab: "], 0, 120];
        Gen.Select(words, marks, Gen.Int[Page.Narrowest, 100], Gen.Int[0, 300])
            .Sample(
                (text, mark, width, indent) =>
                {
                    var page = new Page(width);
                    page.Write(indent, mark, text);
                    string written = page.ToString();
                    string kept = string.Concat(text.Where(c => c is not ('\u001b' or '\t' or '\u202e' or ' ')));
                    Assert.All(written.Split('\n'), line => Assert.True(line.Length <= width, line));
                    string shown = string.Concat(written.Where(c => c is not (' ' or '\n')));
                    Assert.Equal(mark.Replace(" ", "", StringComparison.Ordinal) + kept, shown);
                }
            );
    }

    [Theory]
    [InlineData(39)]
    [InlineData(241)]
    public void A_width_nobody_can_read_is_refused(int width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Page(width));

    [Fact]
    public void Lines_after_the_first_stand_below_the_text()
    {
        var page = new Page(40);
        page.Write(2, "- ", "one two three four five six seven eight nine ten");
        Assert.Equal("  - one two three four five six seven\n    eight nine ten\n", page.ToString());
    }
}
