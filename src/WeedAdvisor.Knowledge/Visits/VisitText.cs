using System.Collections.Immutable;
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
        Line(text, 0, "format", ScalarGrammar.Write(VisitReader.Format));
        if (!string.IsNullOrWhiteSpace(visit.Title))
            Line(text, 0, "title", ScalarText.Of(visit.Title));
        Line(text, 0, "date", ScalarGrammar.Write(visit.Date));
        if (!string.IsNullOrWhiteSpace(visit.Nursery))
            Line(text, 0, "nursery", ScalarText.Of(visit.Nursery));
        if (visit.Units is { } units)
            Line(text, 0, "units", UnitsWords.Of(units));
        Answers(text, 0, visit.Head);
        if (visit.Areas.IsEmpty)
            Line(text, 0, "areas", "[]");
        else
            text.Append("areas:\n");
        foreach (VisitArea area in visit.Areas)
            Area(text, area, visit.Head);
        return text.ToString();
    }

    /// <summary>An area as the lines of an item of a list, without its dash.</summary>
    internal static string[] AreaLines(VisitArea area, ImmutableSortedDictionary<string, Answer> head)
    {
        var text = new StringBuilder();
        Area(text, area, head);
        return [.. text.ToString().TrimEnd('\n').Split('\n').Select(line => line[4..])];
    }

    /// <summary>Answers, a line each.</summary>
    internal static string[] AnswerLines(IEnumerable<KeyValuePair<string, Answer>> answers) =>
        [.. answers.Select(answer => $"{answer.Key}: {Value(answer.Value)}")];

    private static void Area(StringBuilder text, VisitArea area, ImmutableSortedDictionary<string, Answer> head)
    {
        text.Append("  - id: ").Append(area.Id).Append('\n');
        Line(text, 4, "name", Name(area));
        Answers(text, 4, Own(area, head));
        List(text, "weeds", area.Weeds?.Select(Seen));
        List(text, "past", area.Past?.Select(Past));
    }

    /// <summary>The name of an area; it may not be blank.</summary>
    internal static string Name(VisitArea area) =>
        string.IsNullOrWhiteSpace(area.Name) ? area.Id : ScalarText.Of(area.Name);

    /// <summary>
    /// The answers that an area has to give itself: what the head says is not said again; where the area does not know
    /// it, that has to be said.
    /// </summary>
    internal static IEnumerable<KeyValuePair<string, Answer>> Own(
        VisitArea area,
        ImmutableSortedDictionary<string, Answer> head
    ) =>
        area
            .Answers.Where(own => !head.TryGetValue(own.Key, out Answer? said) || !said.Equals(own.Value))
            .Concat(
                head.Where(said => said.Value is not Answer.NotKnown && !area.Answers.ContainsKey(said.Key))
                    .Select(said => KeyValuePair.Create<string, Answer>(said.Key, new Answer.NotKnown()))
            )
            .OrderBy(own => own.Key, StringComparer.Ordinal);

    private static void Answers(StringBuilder text, int indent, IEnumerable<KeyValuePair<string, Answer>> answers)
    {
        KeyValuePair<string, Answer>[] all = [.. answers];
        if (all.Length > 0)
            text.Append(' ', indent).Append("answers:\n");
        foreach ((string question, Answer answer) in all)
            Line(text, indent + 2, question, Value(answer));
    }

    /// <summary>An answer on one line.</summary>
    internal static string Value(Answer answer) =>
        answer switch
        {
            Answer.Words { Value.Count: 1 } one => one.Value.First(),
            Answer.Words words => Set(words.Value),
            Answer.Number number => ScalarGrammar.Write(number.Value),
            Answer.Date date => ScalarGrammar.Write(date.Value),
            _ => VisitReader.NotKnown,
        };

    /// <summary>A weed seen on one line.</summary>
    internal static string Seen(WeedSeen seen) =>
        Map(
            ("weed", seen.Weed),
            ("stage", seen.Stage),
            ("cover-percent", NumberOrNull(seen.CoverPercent)),
            ("pots-percent", NumberOrNull(seen.PotsPercent)),
            ("stands", seen.Stands)
        );

    /// <summary>An earlier application on one line.</summary>
    internal static string Past(PastApplication past) =>
        Map(
            ("treatment", past.Treatment),
            ("actives", QuotedOrNull(past.Actives)),
            ("groups", QuotedOrNull(past.Groups)),
            ("kind", past.Kind),
            ("date", past.Date is { } date ? ScalarGrammar.Write(date) : null),
            ("hour", past.Hour is { } hour ? $"'{ScalarGrammar.Write(hour)}'" : null),
            ("rate", NumberOrNull(past.Rate)),
            ("rate-unit", past.RateUnit),
            ("method", past.Method),
            ("part-only", YesNo(past.PartOnly)),
            ("watered-in", YesNo(past.WateredIn)),
            ("aired", YesNo(past.Aired)),
            ("drifted", YesNo(past.Drifted)),
            ("result", past.Result),
            ("escaped", SetOrNull(past.Escaped)),
            ("came-through", past.CameThrough),
            ("seasons-running", NumberOrNull(past.SeasonsRunning))
        );

    private static string? SetOrNull(WordSet words) => words.Count > 0 ? Set(words) : null;

    // Names of actives may hold commas, and groups are digits that must not be read as numbers.
    private static string? QuotedOrNull(WordSet words) =>
        words.Count > 0 ? $"[{string.Join(", ", words.Select(word => $"'{word}'"))}]" : null;

    private static string? NumberOrNull(decimal? number) => number is { } value ? ScalarGrammar.Write(value) : null;

    private static string? YesNo(bool? flag) =>
        flag switch
        {
            true => "yes",
            false => "no",
            null => null,
        };

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
