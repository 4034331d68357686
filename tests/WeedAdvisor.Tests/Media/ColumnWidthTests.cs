using System.Text;
using Terminal.Gui.Text;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Tests.Media;

/// <summary>Columns counted for a page are those that a screen counts, whose table is another one.</summary>
public sealed class ColumnWidthTests
{
    [Theory]
    [InlineData("hand weeding")]
    [InlineData("cr\u00e8me br\u00fbl\u00e9e, 10 m\u00b2")]
    [InlineData("cre\u0300me")]
    [InlineData("\u96d1\u8349 \u3072\u3089\u304c\u306a")]
    [InlineData("\uac00\ub098\ub2e4")]
    [InlineData("\u0442\u0440\u0430\u0432\u0430 \u03b1\u03b2\u03b3")]
    [InlineData("\U0001f33f\U0001f331")]
    public void A_text_takes_the_columns_that_a_terminal_gives_it(string text) =>
        Assert.Equal(text.GetColumns(), ColumnWidth.Of(text));

    [Fact]
    public void Every_letter_of_the_scripts_that_trade_words_are_written_in_counts_the_same()
    {
        int[] differ =
        [
            .. Enumerable
                .Range(0x20, 0xD7A4 - 0x20)
                .Where(Rune.IsValid)
                .Where(value => IsLetter(new Rune(value)))
                .Where(value => new Rune(value).GetColumns() != ColumnWidth.Of(new Rune(value))),
        ];
        Assert.True(differ.Length == 0, string.Join(' ', differ.Select(value => value.ToString("X4"))));
    }

    [Fact]
    public void Wide_letters_are_wrapped_by_their_columns()
    {
        var page = new Page(40);
        page.Write(2, "- ", string.Concat(Enumerable.Repeat("\u96d1\u8349", 30)));
        string[] lines = page.ToString().TrimEnd('\n').Split('\n');
        Assert.All(lines, line => Assert.InRange(line.GetColumns(), 1, 40));
        Assert.Equal(60, lines.Sum(line => line.Count(letter => letter > '\u2000')));
    }

    // The table of the screens counts the first Ethiopic letter among the finals of Hangul, which end just before it.
    private static bool IsLetter(Rune rune) =>
        rune.Value != 0x1200
        && Rune.GetUnicodeCategory(rune)
            is System.Globalization.UnicodeCategory.LowercaseLetter
                or System.Globalization.UnicodeCategory.UppercaseLetter
                or System.Globalization.UnicodeCategory.OtherLetter
                or System.Globalization.UnicodeCategory.DecimalDigitNumber;
}
