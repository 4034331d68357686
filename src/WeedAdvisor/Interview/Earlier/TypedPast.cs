using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>
/// Reads an earlier application that was typed in one line: <c>pendimethalin, 2026-03-01, 2 pm, escapes,
/// bittercress</c>.
/// </summary>
public static class TypedPast
{
    private static readonly PastField[] s_fields =
    [
        .. PastFields.All.Where(field => field != PastFields.Product && field != PastFields.Escaped),
    ];

    /// <summary>
    /// Reads the line: the product, then in any order the day and whatever else is known. Only the first is needed.
    /// </summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="visit">The day of the visit.</param>
    public static Typed<PastApplication> Read(KnowledgeBase knowledge, string text, DateOnly visit)
    {
        var telling = new Telling(knowledge, visit);
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        if (parts[0].Length == 0)
            return Typed<PastApplication>.Wrong("Give the product's name first.");
        Typed<PastApplication> past = PastFields.Product.Read(telling, PastFields.Blank, parts[0]);
        foreach (string part in parts.Skip(1).Where(part => part.Length > 0 && !TypedAnswer.IsNotKnown(part)))
        {
            if (past.Value is null)
                break;
            past = With(telling, past.Value, part);
        }

        return past;
    }

    /// <summary>
    /// The field that a part of the line is meant for; null when only a weed that came through can be meant.
    /// </summary>
    internal static PastField? Meant(Telling telling, PastApplication past, string part) =>
        s_fields.FirstOrDefault(field => field.Take(telling, past, part) is not null);

    /// <summary>Reads the day of an application, which must not lie after the visit.</summary>
    public static Typed<DateOnly> ReadDay(string text, DateOnly visit) =>
        TypedAnswer.ReadDay(text, visit) switch
        {
            null => Typed<DateOnly>.Wrong($"\"{text.Trim()}\" is not a date. Give it as 2026-04-30."),
            { } day when day > visit => Typed<DateOnly>.Wrong(
                $"{Answering.Date(day)} lies after the visit of {Answering.Date(visit)}."
            ),
            { } day => Typed<DateOnly>.As(day),
        };

    private static Typed<PastApplication> With(Telling telling, PastApplication past, string part)
    {
        if (Meant(telling, past, part) is { } field)
        {
            return field.IsTold(past) && !(field == PastFields.Result && past.Escaped.Count > 0)
                ? Typed<PastApplication>.Wrong($"\"{part}\": {field.Label.ToLowerInvariant()} is told twice.")
                : field.Take(telling, past, part)!.Value;
        }

        Typed<PastApplication> weed = PastFields.Escaped.Read(telling, past, part);
        return weed.Value is not null || NameSearch.Weeds(telling.Knowledge, part, null).Length > 1
            ? weed
            : Typed<PastApplication>.Wrong(
                $"\"{part}\" is neither a day, an hour, a rate, a result (clean, escapes, injury), a way of putting it "
                    + $"on, "
                    + $"nor a weed that came through.{Near(part)}"
            );
    }

    private static string Near(string part) =>
        NearWords.Nearest(part, s_fields.SelectMany(field => field.Choices).Select(choice => choice.Text)) is { } near
            ? $" Did you mean {near}?"
            : "";
}
