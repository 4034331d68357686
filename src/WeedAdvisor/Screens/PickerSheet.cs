using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Pickers;
using WeedAdvisor.Interview.Words;

namespace WeedAdvisor.Screens;

/// <summary>A sheet with a search on the left, and on the right what is told of the thing picked.</summary>
internal abstract class PickerSheet : Sheet
{
    private readonly TextRows _note;
    private readonly TextRows _about;
    private readonly TextRows _picked;

    protected PickerSheet(Look look, string title, string what)
        : base(look, title)
    {
        TextRows label = Label(what, 0, 2);
        Search = new TypeField(look)
        {
            X = what.Length + 2,
            Y = 2,
            Width = Dim.Percent(50) - (what.Length + 4),
        };
        Found = new ListingView(look, Rows)
        {
            Y = 4,
            Width = Dim.Percent(50) - 1,
            Height = Dim.Fill(8),
            KeepsCursor = true,
        };
        _about = new TextRows(look)
        {
            Y = Pos.AnchorEnd(7),
            Width = Dim.Percent(50) - 1,
            Height = 5,
        };
        _picked = new TextRows(look)
        {
            X = Pos.Percent(50),
            Y = 2,
            Width = Dim.Fill(),
            Height = 2,
        };
        _note = new TextRows(look)
        {
            Y = Pos.AnchorEnd(2),
            Width = Dim.Fill(),
            Height = 1,
        };
        Add(label, Search, Found, _about, _picked, _note);
        Search.Typed += () =>
        {
            LookFor(Search.Said);
            Tell(null);
            Found.Renew(toTop: true);
            Renew();
        };
        Search.Entered += PickTyped;
        Found.Picked += PickAt;
        Found.Ticked += PickAt;
        Found.Moved += Renew;
    }

    public override string Keys => "Type to search   Down list   Enter pick   Tab next   Esc close";

    protected TypeField Search { get; }

    protected ListingView Found { get; }

    protected abstract IReadOnlyList<NameHit> Hits { get; }

    protected abstract string Picked { get; }

    public override bool Hear(Key key)
    {
        if (key == Key.CursorDown && Search.HasFocus)
        {
            Found.SetFocus();
            return true;
        }

        if (key == Key.CursorUp && Found.HasFocus && Found.At == 0)
        {
            Search.SetFocus();
            return true;
        }

        return false;
    }

    public override void Renew()
    {
        _picked.Show(("Picked: " + Picked, LineTone.Heading));
        _about.Show((Hits.Count == 0 ? "No name is near that." : About(Found.At), LineTone.Quiet));
    }

    protected abstract void LookFor(string text);

    protected abstract void Pick(int hit);

    /// <summary>The view to go to once something is picked.</summary>
    protected abstract View After { get; }

    protected virtual string About(int hit) => "";

    protected abstract string? Accept();

    protected void Finish()
    {
        if (Accept() is { } trouble)
            Tell(trouble);
        else
            Close();
    }

    protected void Tell(string? trouble) => _note.Show((trouble ?? "", LineTone.Warning));

    /// <summary>A short text that names what stands beside or below it.</summary>
    protected TextRows Label(string text, Pos x, Pos y)
    {
        var label = new TextRows(Look)
        {
            X = x,
            Y = y,
            Width = text.Length + 1,
            Height = 1,
        };
        label.Show((text, LineTone.Quiet));
        return label;
    }

    /// <summary>A list of marks of which one is set.</summary>
    protected ListingView Marks(Func<IReadOnlyList<ChoiceEntry>> entries, Action<string?> set, Func<View> next)
    {
        var list = new ListingView(Look, width =>
            Row.Of(entries().Select(e => (e.IsMarked ? "(x) " : "( ) ", e.Text)), width)
        );
        list.Ticked += at => Set(at);
        list.Picked += at =>
        {
            Set(at);
            next().SetFocus();
        };
        return list;

        void Set(int at)
        {
            set(entries()[at].Id);
            list.Renew();
        }
    }

    private IReadOnlyList<Row> Rows(int width) => Row.Of(Hits.Select(hit => ("", hit.ToString())), width);

    /// <summary>Takes what was typed when only one can be meant; else it is for the grower to say which.</summary>
    private void PickTyped()
    {
        if (NameMeaning.Sole(Hits, Search.Said) is { } sole)
        {
            PickAt(Hits.TakeWhile(hit => hit != sole).Count());
            return;
        }

        if (Hits.Count == 0)
            return;
        Found.PointAt(0);
        Found.SetFocus();
        Renew();
        Tell($"{Hits.Count} fit. Up and Down, then Enter takes the one that is meant.");
    }

    private void PickAt(int hit)
    {
        Pick(hit);
        Tell(null);
        Renew();
        After.SetFocus();
    }
}
