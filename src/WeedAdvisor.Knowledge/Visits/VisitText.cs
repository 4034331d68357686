using System.Text;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// Writes a visit as the YAML that <see cref="VisitFile"/> reads: the same visit comes back, and the same visit always
/// gives the same text. Control characters in titles and names become spaces.
/// </summary>
public static class VisitText
{
    /// <summary>The visit as text, with line feeds.</summary>
    public static string Of(Visit visit)
    {
        var text = new StringBuilder();
        Line(text, 0, "visit", visit.Id);
        if (!string.IsNullOrWhiteSpace(visit.Title))
            Line(text, 0, "title", ScalarText.Of(visit.Title));
        Line(text, 0, "date", ScalarGrammar.Write(visit.Date));
        if (!string.IsNullOrWhiteSpace(visit.Nursery))
            Line(text, 0, "nursery", ScalarText.Of(visit.Nursery));
        if (visit.Areas.IsEmpty)
            Line(text, 0, "areas", "[]");
        else
            text.Append("areas:\n");
        foreach (VisitArea area in visit.Areas)
            Area(text, area);
        return text.ToString();
    }

    private static void Area(StringBuilder text, VisitArea area)
    {
        text.Append("  - id: ").Append(area.Id).Append('\n');
        Line(text, 4, "name", string.IsNullOrWhiteSpace(area.Name) ? area.Id : ScalarText.Of(area.Name));
        if (area.Answers.Count > 0)
            text.Append("    answers:\n");
        foreach ((string question, Answer answer) in area.Answers)
            Line(text, 6, question, Value(answer));
        List(text, "weeds", area.Weeds?.Select(Seen));
        List(text, "past", area.Past?.Select(Past));
    }

    private static string Value(Answer answer) => answer switch
    {
        Answer.Words { Value.Count: 1 } one => one.Value.First(),
        Answer.Words words => Set(words.Value),
        Answer.Number number => ScalarGrammar.Write(number.Value),
        Answer.Date date => ScalarGrammar.Write(date.Value),
        _ => VisitReader.NotKnown,
    };

    private static string Seen(WeedSeen seen) => Map(
        ("weed", seen.Weed),
        ("stage", seen.Stage),
        ("cover-percent", seen.CoverPercent is { } cover ? ScalarGrammar.Write(cover) : null));

    private static string Past(PastApplication past) => Map(
        ("treatment", past.Treatment),
        ("date", past.Date is { } date ? ScalarGrammar.Write(date) : null),
        ("result", past.Result),
        ("escaped", past.Escaped.Count > 0 ? Set(past.Escaped) : null));

    private static string Set(WordSet words) => $"[{words}]";

    private static string Map(params ReadOnlySpan<(string Key, string? Value)> entries)
    {
        var text = new StringBuilder("{");
        foreach ((string key, string? value) in entries)
        {
            if (value is not null)
                text.Append(text.Length > 1 ? ", " : "").Append(key).Append(": ").Append(value);
        }

        return text.Append('}').ToString();
    }

    private static void List(StringBuilder text, string key, IEnumerable<string>? items)
    {
        if (items is null)
            return;
        string[] all = [.. items];
        text.Append("    ").Append(key).Append(all.Length == 0 ? ": []\n" : ":\n");
        foreach (string item in all)
            text.Append("      - ").Append(item).Append('\n');
    }

    private static void Line(StringBuilder text, int indent, string key, string value) =>
        text.Append(' ', indent).Append(key).Append(": ").Append(value).Append('\n');
}
