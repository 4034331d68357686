using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Screens;

/// <summary>Finds a weed by its features: they are ticked on the left, the weeds that fit stand on the right.</summary>
internal sealed class IdentifySheet : Sheet
{
    private readonly Narrowing _narrowing;
    private readonly Action<string> _picked;
    private readonly TypeField _search;
    private readonly ListingView _features;
    private readonly ListingView _weeds;
    private readonly TextRows _next;
    private readonly TextRows _count;
    private readonly TextRows _about;
    private readonly PressView[] _presses;

    /// <param name="look">The look.</param>
    /// <param name="narrowing">What was ticked so far.</param>
    /// <param name="picked">Takes the id of the weed that was picked, after the sheet is closed.</param>
    public IdentifySheet(Look look, Narrowing narrowing, Action<string> picked)
        : base(look, "Find a weed by its features")
    {
        _narrowing = narrowing;
        _picked = picked;
        const string label = "Feature";
        var name = new TextRows(look)
        {
            Y = 2,
            Width = label.Length + 1,
            Height = 1,
        };
        name.Show((label, LineTone.Quiet));
        _search = new TypeField(look)
        {
            X = label.Length + 2,
            Y = 2,
            Width = Dim.Percent(50) - (label.Length + 4),
        };
        _features = new ListingView(look, FeatureRows)
        {
            Y = 4,
            Width = Dim.Percent(50) - 1,
            Height = Dim.Fill(6),
        };
        _next = new TextRows(look)
        {
            Y = Pos.AnchorEnd(5),
            Width = Dim.Percent(50) - 1,
            Height = 3,
        };
        _count = new TextRows(look)
        {
            X = Pos.Percent(50),
            Y = 2,
            Width = Dim.Fill(),
            Height = 1,
        };
        _weeds = new ListingView(look, WeedRows)
        {
            X = Pos.Percent(50),
            Y = 4,
            Width = Dim.Fill(),
            Height = Dim.Percent(50) - 4,
            KeepsCursor = true,
        };
        _about = new TextRows(look)
        {
            X = Pos.Percent(50),
            Y = Pos.Percent(50) + 1,
            Width = Dim.Fill(),
            Height = Dim.Fill(2),
        };
        _presses =
        [
            new PressView(look, "Next feature", GoToNext),
            new PressView(look, "Clear", Clear),
            new PressView(look, "Close", Close),
        ];
        Add(name, _search, _features, _next, _count, _weeds, _about);
        AddInRow(Pos.AnchorEnd(1), _presses);
        _search.Typed += () => _features.Renew(toTop: true);
        _search.Entered += () => _features.SetFocus();
        _features.Ticked += Tick;
        _features.Picked += Tick;
        _weeds.Picked += Pick;
        _weeds.Moved += Renew;
        Renew();
    }

    public override IReadOnlyList<View> Stops => [_search, _features, _weeds, .. _presses];

    public override string Keys => "Enter ticks: there, not there, open   Tab weeds   Enter picks   Esc close";

    private Identification Found => _narrowing.Found;

    private IReadOnlyList<KeyValuePair<string, string>> Features => _narrowing.Search(_search.Said);

    public override bool Hear(Key key)
    {
        if (key == Key.Z.WithCtrl)
        {
            if (_narrowing.Back())
                RenewLists();
            return true;
        }

        if (key == Key.CursorDown && _search.HasFocus)
        {
            _features.SetFocus();
            return true;
        }

        if (key == Key.CursorUp && _features.HasFocus && _features.At == 0)
        {
            _search.SetFocus();
            return true;
        }

        return false;
    }

    public override void Renew()
    {
        int fitting = Found.Fits.Count(fit => fit.FitsAll);
        _count.Show(
            (
                !_narrowing.HasBegun ? $"{Found.Fits.Length} weeds; tick what you see"
                : fitting == 1 ? "1 weed fits all of it"
                : $"{fitting} weeds fit all of it",
                LineTone.Heading
            )
        );
        _next.Show(
            Found.Next is { } next
                ? ($"Look at next: {_narrowing.Features.TextOf(next.Feature)}", LineTone.Warning)
                : ("No other feature parts those that fit best.", LineTone.Quiet)
        );
        _about.Show(About());
    }

    private (string Text, LineTone Tone)[] About()
    {
        if (Found.Fits.IsEmpty)
            return [];
        WeedFit fit = Found.Fits[Math.Min(_weeds.At, Found.Fits.Length - 1)];
        IEnumerable<(string Text, LineTone Tone)> parts =
        [
            .. IdentifyText.Against(fit, _narrowing.Features).Select(line => (line, LineTone.Warning)),
            (fit.Weed.Identify, LineTone.Quiet),
            .. Found
                .Tells.Where(tell => _narrowing.HasBegun && (tell.Weed == fit.Weed.Id || tell.Other == fit.Weed.Id))
                .Select(tell =>
                    ($"Or {Name(tell.Weed == fit.Weed.Id ? tell.Other : tell.Weed)}? {tell.Text}", LineTone.Plain)
                ),
        ];
        return [.. parts];
    }

    private string Name(string weed) => Found.Fits.First(fit => fit.Weed.Id == weed).Weed.Name;

    private IReadOnlyList<Row> FeatureRows(int width) =>
        Row.Of(Features.Select(feature => (Mark(feature.Key), feature.Value)), width);

    private string Mark(string feature) =>
        _narrowing.Sighting.Seen.Contains(feature) ? "[x] "
        : _narrowing.Sighting.Absent.Contains(feature) ? "[-] "
        : "[ ] ";

    private IReadOnlyList<Row> WeedRows(int width) =>
        Row.Of(
            Found.Fits.Select(fit => (fit.FitsAll ? "* " : "  ", $"{fit.Weed.Name} ({fit.Weed.Scientific})")),
            width
        );

    private void Tick(int at)
    {
        if (at >= Features.Count)
            return;
        _narrowing.Tick(Features[at].Key);
        RenewLists();
    }

    private void Pick(int at)
    {
        string weed = Found.Fits[at].Weed.Id;
        Close();
        _picked(weed);
    }

    /// <summary>Puts the cursor on the feature to look at next.</summary>
    private void GoToNext()
    {
        if (Found.Next is not { } next)
            return;
        _search.Put("");
        _features.PointAt(Features.TakeWhile(feature => feature.Key != next.Feature).Count());
        _features.SetFocus();
    }

    private void Clear()
    {
        _narrowing.Clear();
        RenewLists();
    }

    private void RenewLists()
    {
        _features.Renew();
        _weeds.Renew(toTop: true);
        Renew();
    }
}
