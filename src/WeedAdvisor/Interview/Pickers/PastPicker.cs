using System.Collections.Immutable;
using WeedAdvisor.Interview.Desks;
using WeedAdvisor.Interview.Earlier;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Pickers;

/// <summary>
/// An earlier application being told: which product, when, how it turned out, and whatever else is known of it.
/// </summary>
public sealed class PastPicker
{
    private readonly InterviewSession _session;
    private readonly int? _index;
    private string _text = "";

    /// <summary>Begins.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="index">The application to change, by its place in the area's list from 0; null to tell a new
    /// one.</param>
    public PastPicker(InterviewSession session, int? index)
    {
        _session = session;
        _index = index;
        PastApplication before = index is { } at ? session.Area.Past!.Value[at] : PastFields.Blank;
        var telling = new Telling(session.Knowledge, session.Visit.Date);
        Treatment = before.Treatment;
        Result = before.Result;
        Day = PastFields.Day.Text(telling, before);
        Escaped = PastFields.Escaped.Text(telling, before);
        More = new PastDesk(session, before, [new PastProductField(TakesTreatments: false), .. PastFields.More]);
        Hits = NameSearch.UsedBefore(session.Knowledge, "");
    }

    /// <summary>What is looked for.</summary>
    public string Text
    {
        get => _text;
        set
        {
            _text = value;
            Hits = NameSearch.UsedBefore(_session.Knowledge, value);
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

    /// <summary>Whatever else is known of it.</summary>
    public PastDesk More { get; }

    /// <summary>The product picked or told, in words.</summary>
    public string Picked =>
        More.IsOutside ? PastProduct.Of(More.Past with { Treatment = null }, _session.Knowledge).Name
        : Treatment is { } id ? PastProduct.NameOf(id, _session.Knowledge)
        : "none yet";

    /// <summary>The results, and last that it is not known.</summary>
    public ImmutableArray<ChoiceEntry> Results =>
        [
            .. PastResults.All.Select(r => new ChoiceEntry(r.Id, r.Text, r.Id == Result)),
            new ChoiceEntry(null, "not known", Result is null),
        ];

    /// <summary>Picks one of the treatments found, counted from 0. A number outside picks none.</summary>
    public void Pick(int hit)
    {
        if (hit < 0 || hit >= Hits.Length)
            return;
        Treatment = Hits[hit].Id;
        More.ForgetProduct();
    }

    /// <summary>Puts the application on the list of the area.</summary>
    /// <returns>What is missing or wrong, in one line, or null when it is done.</returns>
    public string? Accept()
    {
        if (Treatment is null && !More.IsOutside)
            return "Pick a treatment from the list first; one that is not in it is told under More.";
        if (More.Trouble is { } trouble)
            return trouble;
        var telling = new Telling(_session.Knowledge, _session.Visit.Date);
        PastApplication past = More.Past with
        {
            Treatment = More.IsOutside ? null : Treatment,
            Date = null,
            Result = Result,
            Escaped = WordSet.Empty,
        };
        foreach ((PastField field, string typed) in new[] { (PastFields.Day, Day), (PastFields.Escaped, Escaped) })
        {
            if (typed.Trim().Length == 0 || TypedAnswer.IsNotKnown(typed))
                continue;
            Typed<PastApplication> next = field.Read(telling, past, typed.Trim());
            if (next.Value is null)
                return next.Error;
            past = next.Value;
        }

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
