using System.Text;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>A visit as lines of its file, in parts that can be changed one by one.</summary>
/// <param name="Date">The day.</param>
internal sealed record VisitSketch(DateOnly Date)
{
    /// <summary>Answers at the head.</summary>
    public SortedDictionary<string, string> Head { get; } = new(StringComparer.Ordinal);

    /// <summary>The areas.</summary>
    public List<AreaSketch> Areas { get; } = [];

    /// <summary>Takes apart what the program wrote itself: each answer, weed and earlier use on its own line.</summary>
    public static VisitSketch Of(DateOnly date, string written)
    {
        var sketch = new VisitSketch(date);
        List<string>? list = null;
        foreach (string line in written.Split('\n').Where(line => line.Contains(':', StringComparison.Ordinal)))
        {
            string text = line.TrimStart();
            int depth = line.Length - text.Length;
            string key = text.Split(':', 2)[0],
                value = text.Split(':', 2)[1].Trim();
            AreaSketch? area = sketch.Areas.LastOrDefault();
            if (key == "- id")
                sketch.Areas.Add(new AreaSketch(value));
            else if (text.StartsWith("- ", StringComparison.Ordinal))
                list!.Add(text[2..]);
            else if (key is "weeds" or "past" && depth == 4)
                list = key == "weeds" ? area!.Weeds = [] : area!.Past = [];
            else if (depth == 6 || (depth == 2 && area is null))
                (area?.Answers ?? sketch.Head)[key] = value;
        }

        return sketch;
    }

    /// <summary>The file.</summary>
    /// <param name="id">The visit's id.</param>
    public string Text(string id)
    {
        var text = new StringBuilder($"visit: {id}\nformat: 2\ndate: {AnswersDrawn.Day(Date)}\n");
        Answers(text, "", Head);
        text.Append("areas:\n");
        foreach (AreaSketch area in Areas)
        {
            text.Append($"  - id: {area.Id}\n    name: Area {area.Id}\n");
            Answers(text, "    ", area.Answers);
            List(text, "weeds", area.Weeds);
            List(text, "past", area.Past);
        }

        return text.ToString();
    }

    private static void Answers(StringBuilder text, string indent, SortedDictionary<string, string> answers)
    {
        if (answers.Count > 0)
            text.Append($"{indent}answers:\n");
        foreach ((string question, string answer) in answers)
            text.Append($"{indent}  {question}: {answer}\n");
    }

    private static void List(StringBuilder text, string key, List<string>? items)
    {
        if (items is null)
            return;
        text.Append($"    {key}:{(items.Count == 0 ? " []" : "")}\n");
        foreach (string item in items)
            text.Append($"      - {item}\n");
    }
}

/// <summary>An area of a sketch.</summary>
/// <param name="Id">Its id.</param>
internal sealed record AreaSketch(string Id)
{
    private const string Lately = "put-on-lately";

    /// <summary>Its own answers.</summary>
    public SortedDictionary<string, string> Answers { get; } = new(StringComparer.Ordinal);

    /// <summary>The weeds seen; null when not known.</summary>
    public List<string>? Weeds { get; set; }

    /// <summary>The earlier uses; null when not known.</summary>
    public List<string>? Past { get; set; }

    /// <summary>
    /// Tells an earlier use; one of this week answers the question about it, lest the visit contradict itself.
    /// </summary>
    public void Tell((string Use, bool IsOfThisWeek) told)
    {
        (Past ??= []).Add(told.Use);
        if (told.IsOfThisWeek)
            Answers[Lately] = "yes";
    }
}
