using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Interview.Desks;
using WeedAdvisor.Interview.Earlier;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Asking;

/// <summary>
/// Hears the answers that are lists: weeds seen and earlier applications. Each call returns an error in one line, or
/// null.
/// </summary>
internal sealed class AskList(InterviewSession session, Lines lines, Question question)
{
    private const int MostShown = 15;

    private AskWhich Which => new(session.Knowledge, lines);

    /// <summary>Hears a line about the weeds.</summary>
    public string? Weed(string typed)
    {
        string? place = session.Area.WordOf(QuestionIds.Place);
        (string word, string rest) = Split(typed);
        switch (word)
        {
            case "none":
                return None(session.Area with { Weeds = [] });
            case "done":
                return Done(session.Area.Weeds is not null);
            case "list":
                return List(NameSearch.Weeds(session.Knowledge, rest, place));
            case "identify" when rest.Length == 0:
                return Identify();
            case "remove":
                return Remove(rest);
            default:
                string name = typed.Split(',')[0];
                if (Which.Settle(NameSearch.Weeds(session.Knowledge, name, place), typed, "weed") is not { } line)
                    return null;
                Typed<WeedSeen> seen = TypedWeed.Read(session.Knowledge, line, place);
                if (seen.Value is null)
                    return seen.Error;

                // The bare name of a weed that stands on the list already takes nothing away that was said of it.
                if (line.Contains(',') || session.Area.Weeds?.Any(weed => weed.Weed == seen.Value.Weed) != true)
                    session.Change(session.Area.WithWeed(seen.Value));
                return Tell();
        }
    }

    /// <summary>Hears a line about earlier applications.</summary>
    public string? Past(string typed)
    {
        (string word, string rest) = Split(typed);
        switch (word)
        {
            case "none":
                return None(session.Area with { Past = [] });
            case "done":
                return Done(session.Area.Past is not null);
            case "list":
                return List(NameSearch.UsedBefore(session.Knowledge, rest));
            case "remove":
                if (Numbered(rest, "take out") is { } gone)
                {
                    session.Change(session.Area.WithoutPastAt(gone));
                    Tell();
                }

                return null;
            case "tell" when rest.Length == 0:
                return TellPast(null);
            case "change":
                return Numbered(rest, "change") is { } changed ? TellPast(changed) : null;
            default:
                string name = typed.Split(',')[0];
                if (Settled(name, typed) is not { } line)
                    return null;
                Typed<PastApplication> past = TypedPast.Read(session.Knowledge, line, session.Visit.Date);
                if (past.Value is null)
                    return past.Error;
                session.Change(session.Area.WithPast(past.Value));
                return Tell();
        }
    }

    // The line with ids in place of names that may mean one of several, the product's and those of weeds.
    private string? Settled(string name, string typed)
    {
        var telling = new Telling(session.Knowledge, session.Visit.Date);
        bool isOutside =
            new PastProductField(TakesTreatments: false).Take(telling, PastFields.Blank, name.Trim()) is not null;
        string? line =
            isOutside || name.Trim().Length == 0
                ? typed
                : Which.Settle(NameSearch.UsedBefore(session.Knowledge, name), typed, "treatment");
        if (line is null)
            return null;
        string[] parts = line.Split(',', StringSplitOptions.TrimEntries);
        for (int at = 1; at < parts.Length; at++)
        {
            if (
                parts[at].Length == 0
                || TypedAnswer.IsNotKnown(parts[at])
                || TypedPast.Meant(telling, PastFields.Blank, parts[at]) is not null
            )
                continue;
            if (Which.Settle(NameSearch.Weeds(session.Knowledge, parts[at], null), parts[at], "weed") is not { } weed)
                return null;
            parts[at] = weed;
        }

        return string.Join(", ", parts);
    }

    private string? TellPast(int? index)
    {
        PastApplication before = index is { } at ? session.Area.Past!.Value[at] : PastFields.Blank;
        var desk = new PastDesk(session, before, PastFields.All);
        if (!new FormDialogue(desk, lines).Run())
            return null;
        if (desk.Past is { Treatment: null } told && !PastProductField.IsOutside(told))
            return "Not kept: without a product there is no application. A product may be told as other weed killer.";
        session.Change(
            index is { } place ? session.Area.WithPastAt(place, desk.Past) : session.Area.WithPast(desk.Past)
        );
        return Tell();
    }

    private int? Numbered(string typed, string toDo)
    {
        int count = session.Area.Past?.Length ?? 0;
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int at) && at >= 1 && at <= count)
            return at - 1;
        lines.Say($"Give the number of the application to {toDo}, from 1 to {count}.", "  ");
        return null;
    }

    private string? Identify()
    {
        string? weed = new IdentifyDialogue(new Narrowing(session.Knowledge), lines, picks: true).Run();
        if (weed is null)
        {
            lines.Say("No weed was picked." + TypedWeed.OfBroadKinds(session.Knowledge), "  ");
            return null;
        }

        if (session.Area.Weeds?.Any(seen => seen.Weed == weed) != true)
            session.Change(session.Area.WithWeed(new WeedSeen(weed, null, null)));
        Tell();
        lines.Say(
            $"Stage and cover are told by naming it again: {Answering.WeedName(session.Knowledge, weed)}, young, 10",
            "  "
        );
        return null;
    }

    private string? Done(bool any)
    {
        if (!any)
            return "Nothing is named yet. Type none, - when you do not know, or skip.";
        session.Next();
        return null;
    }

    private string? Remove(string name)
    {
        ImmutableArray<NameHit> named =
        [
            .. NameSearch
                .Weeds(session.Knowledge, name, null)
                .Where(hit => session.Area.Weeds?.Any(seen => seen.Weed == hit.Id) == true),
        ];
        if (named.IsEmpty || name.Length == 0)
            return $"No weed on the list is called \"{name}\".";
        if (Which.Settle(named, name, "weed") is not { } gone)
            return null;
        session.Change(session.Area.WithoutWeed(gone));
        return Tell();
    }

    private string? None(VisitArea area)
    {
        ImmutableArray<string> gone = Losses.Entries(session.Knowledge, question, session.Area);
        if (!gone.IsEmpty && !lines.Agrees($"\"none\" takes out what was named: {Losses.Named(gone)}. Take it out?"))
            return null;
        session.Change(area);
        session.Next();
        return null;
    }

    private string? List(ImmutableArray<NameHit> hits)
    {
        if (hits.IsEmpty)
            return "No name is near that.";
        foreach (NameHit hit in hits.Take(MostShown))
            lines.Say(hit.ToString(), "    ");
        if (hits.Length > MostShown)
            lines.Say($"and {hits.Length - MostShown} more; type list and the beginning of a name", "    ");
        return null;
    }

    private string? Tell()
    {
        string said = WhatWasSaid.To(session.Knowledge, question, session.Area) ?? "nothing named";
        lines.Say($"so far: {said}", "  ");
        return null;
    }

    private static (string Word, string Tail) Split(string typed)
    {
        int space = typed.IndexOf(' ', StringComparison.Ordinal);
        return space < 0
            ? (typed.ToLowerInvariant(), "")
            : (typed[..space].ToLowerInvariant(), typed[(space + 1)..].Trim());
    }
}
