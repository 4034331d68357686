using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Reads an earlier application that was typed in one line: <c>pendimethalin, 2026-03-01, escapes, bittercress</c>.</summary>
public static class TypedPast
{
    /// <summary>Reads the line: treatment, day, result, and the weeds that came through. Only the first is needed.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="visit">The day of the visit.</param>
    public static Typed<PastApplication> Read(KnowledgeBase knowledge, string text, DateOnly visit)
    {
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts[0].Length == 0)
            return Typed<PastApplication>.Wrong("Give the treatment's name first.");
        Typed<NameHit> hit = TypedWeed.OneOf(NameSearch.Treatments(knowledge, parts[0]), parts[0], "treatment");
        if (hit.Value is null)
            return Typed<PastApplication>.Wrong(hit.Error!);
        var past = new PastApplication(hit.Value.Id, null, null, WordSet.Empty);
        foreach (string part in parts.Skip(1).Where(part => part.Length > 0 && !TypedAnswer.IsNotKnown(part)))
        {
            (PastApplication? next, string? error) = With(knowledge, past, part, visit);
            if (next is null)
                return Typed<PastApplication>.Wrong(error!);
            past = next;
        }

        return Typed<PastApplication>.As(past);
    }

    /// <summary>Reads the day of an application, which must not lie after the visit.</summary>
    public static Typed<DateOnly> ReadDay(string text, DateOnly visit) => TypedAnswer.ReadDay(text, visit) switch
    {
        null => Typed<DateOnly>.Wrong($"\"{text.Trim()}\" is not a date. Give it as 2026-04-30."),
        { } day when day > visit =>
            Typed<DateOnly>.Wrong($"{Answering.Date(day)} lies after the visit of {Answering.Date(visit)}."),
        { } day => Typed<DateOnly>.As(day),
    };

    private static (PastApplication? Past, string? Error) With(
        KnowledgeBase knowledge, PastApplication past, string part, DateOnly visit)
    {
        if (past.Date is null && (char.IsAsciiDigit(part[0]) || TypedAnswer.ReadDay(part, visit) is not null))
        {
            Typed<DateOnly> day = ReadDay(part, visit);
            return day.Error is null ? (past with { Date = day.Value }, null) : (null, day.Error);
        }

        if (past.Result is null && past.Escaped.Count == 0
            && TypedAnswer.Pick(PastResults.All, part).Value is { } result && !char.IsAsciiDigit(part[0]))
        {
            return (past with { Result = result.Id }, null);
        }

        Typed<NameHit> weed = TypedWeed.OneOf(NameSearch.Weeds(knowledge, part, null), part, "weed");
        return weed.Value is { } hit
            ? (past with { Result = past.Result ?? "escapes", Escaped = WordSet.Of([.. past.Escaped, hit.Id]) }, null)
            : (null, $"\"{part}\" is neither a result (clean, escapes, injury) nor a weed that came through.");
    }
}
