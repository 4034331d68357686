using Terminal.Gui.Input;

namespace WeedAdvisor.Tests.Screens;

/// <summary>Any page to read can be searched, and the advice can take the whole width.</summary>
public sealed class DocumentViewTests
{
    [Fact]
    public void Words_are_looked_for_from_the_cursor_on_and_round()
    {
        using var bench = new Bench();
        bench.Press(Key.F6, new Key('/')).Type("before ANY");
        Assert.Contains("Look for words", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Enter);
        Assert.DoesNotContain("Look for words", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("Before any chemical", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("Esc back", bench.Picture, StringComparison.Ordinal);
        bench.Press(new Key('n'));
        Assert.Contains("Before any chemical", bench.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_nowhere_is_told_and_the_words_can_be_changed()
    {
        using var bench = new Bench();
        bench.Press(Key.F6, new Key('/')).Type("zz").Press(Key.Enter);
        Assert.Contains("'zz' stands nowhere on this page.", bench.Picture, StringComparison.Ordinal);
        bench.Press(Key.Esc);
        Assert.DoesNotContain("Look for words", bench.Picture, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Esc_on_the_advice_leads_back_to_the_question_and_asks_nothing(int width, int height)
    {
        using var bench = new Bench(width, height);
        string question = bench.Press(Key.Space).Picture;
        bench.Press(Key.F6);
        Assert.NotEqual(question, bench.Picture);
        Assert.Equal(question, bench.Press(Key.Esc).Picture);
        Assert.Contains("Leave without saving", bench.Press(Key.Esc).Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void One_key_gives_the_advice_the_whole_width_and_takes_it_back()
    {
        using var bench = new Bench(120, 30);
        string both = bench.Press(Key.F6).Picture;
        Assert.Contains('│', both);
        string wide = bench.Press(new Key('w')).Picture;
        Assert.DoesNotContain('│', wide);
        Assert.Contains("Next question", wide, StringComparison.Ordinal);
        Assert.Equal(both, bench.Press(new Key('w')).Picture);
    }

    [Fact]
    public void A_letter_typed_into_an_answer_is_no_command()
    {
        using var bench = new Bench();
        bench.Press(new Key('w'), new Key('/'));
        Assert.DoesNotContain("Look for words", bench.Picture, StringComparison.Ordinal);
        Assert.Contains('│', bench.Picture);
    }
}
