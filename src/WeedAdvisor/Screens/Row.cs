using WeedAdvisor.Interview.Pages;

namespace WeedAdvisor.Screens;

/// <summary>A row of a listing.</summary>
/// <param name="Text">Its text.</param>
/// <param name="Tone">How it is meant.</param>
/// <param name="Item">The item it belongs to; an item may take several rows.</param>
internal sealed record Row(string Text, LineTone Tone, int Item)
{
    /// <summary>Lines as rows, each an item of its own.</summary>
    public static IReadOnlyList<Row> Of(IEnumerable<AdviceLine> lines) =>
        [.. lines.Select((line, at) => new Row(line.Text, line.Tone, at))];

    /// <summary>Texts as items, wrapped, with what stands before each.</summary>
    public static IReadOnlyList<Row> Of(IEnumerable<(string Mark, string Text)> items, int width)
    {
        var rows = new List<Row>();
        int at = 0;
        foreach ((string mark, string text) in items)
        {
            foreach (string line in Wrapping.Lines(text, width, mark, new string(' ', mark.Length)))
                rows.Add(new Row(line, LineTone.Plain, at));
            at++;
        }

        return rows;
    }
}
