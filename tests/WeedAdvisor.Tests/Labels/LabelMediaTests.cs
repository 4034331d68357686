using Terminal.Gui.Input;
using WeedAdvisor.Asking;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.Tests.Screens;

namespace WeedAdvisor.Tests.Labels;

/// <summary>The same label copied on screen and line by line.</summary>
public sealed class LabelMediaTests
{
    [Fact]
    public void The_screen_and_the_lines_write_the_same_book()
    {
        using var onScreen = new Shelf();
        using (var bench = new Bench(session: onScreen.Session, labels: onScreen.Labels))
        {
            bench.Press(Key.L.WithCtrl);
            Assert.Contains("Your labels", bench.Picture, StringComparison.Ordinal);
            string first = LabelEntry.Of(onScreen.Labels)[0].Treatment;
            bench.Press(Key.Enter).Type("My granules").Press(Key.Enter, Key.Enter, Key.Enter).Type("24");
            Assert.Contains("By your label of My granules", bench.Picture, StringComparison.Ordinal);
            Assert.Contains("Written to", bench.Press(Key.S.WithCtrl).Picture, StringComparison.Ordinal);
            using var byLine = new Shelf();
            Ask(byLine, $"label {first}\nMy granules\n\n\n24\ndone\nquit\n");
            Assert.Equal(byLine.Text, onScreen.Text);
        }
    }

    [Fact]
    public void What_was_typed_and_not_kept_is_still_there_when_the_label_is_opened_again()
    {
        using var shelf = new Shelf();
        using var bench = new Bench(session: shelf.Session, labels: shelf.Labels);
        bench.Press(Key.L.WithCtrl, Key.Enter).Type("My gran").Press(Key.Esc);
        Assert.Contains("begun, not kept", bench.Picture, StringComparison.Ordinal);
        Assert.Contains("My gran", bench.Press(Key.Enter).Picture, StringComparison.Ordinal);
        Assert.False(File.Exists(shelf.Book));
    }

    [Fact]
    public void Leaving_a_form_asks_before_it_drops_more_than_one_entry()
    {
        using var shelf = new Shelf();
        string heard = Ask(shelf, "label oxadiazon-granule\nMine\n2026-03-01\nquit\nno\ndone\nquit\n");
        Assert.Contains("\"quit\" drops what was typed in 2 fields. Drop it?", heard, StringComparison.Ordinal);
        Assert.Contains("name: Mine", shelf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_copies_a_label()
    {
        using var shelf = new Shelf();
        ExpectedText.Matches(
            Ask(
                shelf,
                "label\nlabel oxadiazon\nlabel "
                    + "oxadiazon-granule\nMine\n2026-03-01\n12-34\nfour\n24\n?\nback\n-\n\nboxwod\nboxwood\n7\ndone\n"
                    + "label prodiamine-granule\nOther\nquit\nlabel nonsense\nlabel oxadiazon granules\nquit\nquit\n"
            )
        );
    }

    private static string Ask(Shelf shelf, string typed)
    {
        using var output = new StringWriter { NewLine = "\n" };
        new AskDialogue(
            shelf.Session,
            new FakeStore(),
            new Lines(new StringReader(typed), output, echo: true),
            labels: shelf.Labels
        ).Run();
        return output.ToString();
    }
}
