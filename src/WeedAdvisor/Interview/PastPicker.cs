using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>An earlier application being told: which treatment, when, how it turned out.</summary>
public sealed class PastPicker
{
    private readonly InterviewSession _session;
    private readonly int? _index;
    private string _text = "";

    /// <summary>Begins.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="index">The application to change, by its place in the area's list from 0; null to tell a new one.</param>
    public PastPicker(InterviewSession session, int? index)
    {
        _session = session;
        _index = index;
        PastApplication? before = index is { } at ? session.Area.Past?[at] : null;
        Treatment = before?.Treatment;
        Result = before?.Result;
        Day = before?.Date is { } date ? Answering.Date(date) : "";
        Escaped = string.Join(", ", (before?.Escaped ?? WordSet.Empty)
            .Select(weed => Answering.WeedName(session.Knowledge, weed)));
        Hits = NameSearch.Treatments(session.Knowledge, "");
    }

    /// <summary>What is looked for.</summary>
    public string Text
    {
        get => _text;
        set
        {
            _text = value;
            Hits = NameSearch.Treatments(_session.Knowledge, value);
        }
    }

    /// <summary>The treatments found, best first.</summary>
    public ImmutableArray<NameHit> Hits { get; private set; }

    /// <summary>The treatment picked; null when none is yet.</summary>
    public string? Treatment { get; private set; }

    /// <summary>The day as typed; empty when not known.</summary>
    public string Day { get; set; }

    /// <summary>How it turned out; null when not known.</summary>
    public string? Result { get; set; }

    /// <summary>Names of the weeds that came through, as typed, with commas between.</summary>
    public string Escaped { get; set; }

    /// <summary>The treatment picked, in words.</summary>
    public string Picked => Treatment is { } id ? _session.Knowledge.ActionOf(id)?.Name ?? id : "none yet";

    /// <summary>The results, and last that it is not known.</summary>
    public ImmutableArray<ChoiceEntry> Results =>
    [
        .. PastResults.All.Select(r => new ChoiceEntry(r.Id, r.Text, r.Id == Result)),
        new ChoiceEntry(null, "not known", Result is null),
    ];

    /// <summary>Picks one of the treatments found, counted from 0. A number outside picks none.</summary>
    public void Pick(int hit)
    {
        if (hit >= 0 && hit < Hits.Length)
            Treatment = Hits[hit].Id;
    }

    /// <summary>Puts the application on the list of the area.</summary>
    /// <returns>What is missing or wrong, in one line, or null when it is done.</returns>
    public string? Accept()
    {
        if (Treatment is null)
            return "Pick a treatment from the list first.";
        DateOnly? day = null;
        if (Day.Trim().Length > 0 && !TypedAnswer.IsNotKnown(Day))
        {
            Typed<DateOnly> typed = TypedPast.ReadDay(Day, _session.Visit.Date);
            if (typed.Error is not null)
                return typed.Error;
            day = typed.Value;
        }

        var escaped = new List<string>();
        foreach (string name in Escaped.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            Typed<NameHit> weed = TypedWeed.OneOf(NameSearch.Weeds(_session.Knowledge, name, null), name, "weed");
            if (weed.Value is null)
                return weed.Error;
            escaped.Add(weed.Value.Id);
        }

        var past = new PastApplication(
            Treatment, day, escaped.Count > 0 ? Result ?? "escapes" : Result, WordSet.Of(escaped));
        _session.Change(_index is { } at ? _session.Area.WithPastAt(at, past) : _session.Area.WithPast(past));
        return null;
    }

    /// <summary>Takes the application that was to be changed out of the area.</summary>
    public void Remove()
    {
        if (_index is { } at)
            _session.Change(_session.Area.WithoutPastAt(at));
    }
}
