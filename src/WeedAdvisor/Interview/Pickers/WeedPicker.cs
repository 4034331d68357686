using System.Collections.Immutable;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Pickers;

/// <summary>A weed being named: looked up by any of its names, with its stage, its cover and the share of
/// pots.</summary>
public sealed class WeedPicker
{
    private const int MostToldApart = 4;

    private readonly InterviewSession _session;
    private readonly WeedSeen? _before;
    private string _text = "";

    /// <summary>Begins.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="seen">The weed to change; null to name a new one.</param>
    public WeedPicker(InterviewSession session, WeedSeen? seen)
    {
        _session = session;
        _before = seen;
        Narrowing = new Narrowing(session.Knowledge);
        Weed = seen?.Weed;
        Stage = seen?.Stage;
        Pots =
            seen?.Stands is { } stands ? Answering.PlaceOfWeed(stands)
            : seen?.PotsPercent is { } pots ? Answering.Number(pots)
            : "";
        Cover = seen?.CoverPercent is { } cover ? Answering.Number(cover) : "";
        Look();
    }

    /// <summary>What is looked for.</summary>
    public string Text
    {
        get => _text;
        set
        {
            _text = value;
            Look();
        }
    }

    /// <summary>The weeds found, best first.</summary>
    public ImmutableArray<NameHit> Hits { get; private set; }

    /// <summary>The weed picked; null when none is yet.</summary>
    public string? Weed { get; private set; }

    /// <summary>Its stage; null when not known.</summary>
    public string? Stage { get; set; }

    /// <summary>Its cover as typed; empty when not known.</summary>
    public string Cover { get; set; }

    /// <summary>
    /// The share of pots or trays that have it as typed, or where it stands; empty when neither was told.
    /// </summary>
    public string Pots { get; set; }

    /// <summary>The weed picked, in words.</summary>
    public string Picked => Weed is { } weed ? Answering.WeedName(_session.Knowledge, weed) : "none yet";

    /// <summary>The stages, in order, and last that it is not known.</summary>
    public ImmutableArray<ChoiceEntry> Stages =>
        [
            .. Answering.Stages(_session.Knowledge).Select(s => new ChoiceEntry(s.Id, s.Text, s.Id == Stage)),
            new ChoiceEntry(null, "not known", Stage is null),
        ];

    /// <summary>Finding out which weed it is; what was ticked stays until the picker is closed.</summary>
    public Narrowing Narrowing { get; }

    /// <summary>Picks a weed by its id.</summary>
    public void Take(string weed) => Weed = weed;

    /// <summary>Picks one of the weeds found, counted from 0. A number outside picks none.</summary>
    public void Pick(int hit)
    {
        if (hit >= 0 && hit < Hits.Length)
            Weed = Hits[hit].Id;
    }

    /// <summary>How to know one of the weeds found: first what tells it from the others, when they are few.</summary>
    public string Identify(int hit)
    {
        if (hit < 0 || hit >= Hits.Length || !_session.Knowledge.Weeds.TryGetValue(Hits[hit].Id, out Weed? weed))
            return "";
        IEnumerable<string> tells =
            Hits.Length > MostToldApart
                ? []
                : weed
                    .LookAlikes.Where(like => Hits.Any(other => other.Id == like.Weed))
                    .Select(like => like.Tell)
                    .Distinct();
        return string.Join(' ', [.. tells, weed.Identify]);
    }

    /// <summary>Puts the weed on the list of the area.</summary>
    /// <returns>What is missing or wrong, in one line, or null when it is done.</returns>
    public string? Accept()
    {
        if (Weed is null)
            return "Pick a weed from the list first.";
        (decimal? cover, string? wrong) = Percent(Cover, TypedWeed.ReadCover);
        if (wrong is not null)
            return wrong;
        string? stands = TypedWeed.StandsIn(Pots);
        (decimal? pots, wrong) = stands is null ? Percent(Pots, TypedWeed.ReadPots) : (_before?.PotsPercent, null);
        if (wrong is not null)
            return wrong;
        var seen = new WeedSeen(Weed, Stage, cover) { PotsPercent = pots, Stands = stands };
        VisitArea area = _session.Area;
        _session.Change(_before is null ? area.WithWeed(seen) : area.WithWeedInPlaceOf(_before, seen));
        return null;
    }

    /// <summary>Takes the weed that was to be changed out of the area.</summary>
    public void Remove()
    {
        if (_before is not null)
            _session.Change(_session.Area.WithoutSeen(_before));
    }

    private static (decimal? Percent, string? Wrong) Percent(string typed, Func<string, Typed<decimal>> read)
    {
        if (typed.Trim().Length == 0 || TypedAnswer.IsNotKnown(typed))
            return (null, null);
        Typed<decimal> percent = read(typed);
        return percent.Error is null ? (percent.Value, null) : (null, percent.Error);
    }

    private void Look()
    {
        Hits = NameSearch.Weeds(_session.Knowledge, _text, _session.Area.WordOf(QuestionIds.Place));
    }
}
