using System.Text.Json;

namespace WeedAdvisor.Frozen;

/// <summary>Two states of the program side by side.</summary>
internal static class Comparison
{
    private const int MostNamed = 8;

    /// <summary>
    /// Prints how many outputs of each command are equal, and which treatments are clear now that were not before.
    /// </summary>
    /// <returns>0 when all are equal, else 1.</returns>
    public static int Print(string before, string after, TextWriter page)
    {
        Dictionary<string, string> old = Hashes(before), now = Hashes(after);
        string[] names = [.. old.Keys.Intersect(now.Keys).Order(StringComparer.Ordinal)];
        page.WriteLine($"{names.Length} outputs in both, {old.Count - names.Length} only before, {now.Count - names.Length} only after");
        foreach (var command in names.GroupBy(Path.GetFileName).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            string[] differ = [.. command.Where(name => old[name] != now[name])];
            string some = differ.Length == 0 ? "" : ": " + string.Join(", ", differ.Take(MostNamed).Select(Path.GetDirectoryName))
                + (differ.Length > MostNamed ? ", ..." : "");
            page.WriteLine($"{command.Key,-16} {command.Count() - differ.Length,5} equal {differ.Length,5} differ{some}");
        }

        (string Name, int Times)[] cleared =
        [
            .. names.Where(name => Path.GetFileName(name) == "advise.json" && old[name] != now[name])
                .SelectMany(name => NewlyClear(Path.Combine(before, name), Path.Combine(after, name)).Select(one => (Visit: Path.GetDirectoryName(name), one.Area, one.Action)))
                .Select(one => $"{one.Visit}/{one.Area} {one.Action}")
                .Order(StringComparer.Ordinal)
                .Select(line => (line, 1)),
        ];
        page.WriteLine($"clear now and not before: {cleared.Length}");
        foreach ((string line, _) in cleared)
            page.WriteLine($"  {line}");
        return names.Any(name => old[name] != now[name]) ? 1 : 0;
    }

    private static Dictionary<string, string> Hashes(string folder) => File.ReadAllLines(Path.Combine(folder, "hashes.txt"))
        .Select(line => line.Split(' ', 2))
        .ToDictionary(parts => parts[1], parts => parts[0], StringComparer.Ordinal);

    private static IEnumerable<(string Area, string Action)> NewlyClear(string before, string after) => Clear(after).Except(Clear(before));

    private static IEnumerable<(string Area, string Action)> Clear(string path)
    {
        string text = File.ReadAllText(path);
        int start = text.IndexOf('{', StringComparison.Ordinal);
        if (start < 0)
            return [];
        int end = text.LastIndexOf('}');
        using JsonDocument document = JsonDocument.Parse(text[start..(end + 1)]);
        return
        [
            .. document.RootElement.GetProperty("areas").EnumerateArray().SelectMany(area => area.GetProperty("clear").EnumerateArray()
                .Where(clear => !clear.TryGetProperty("status", out JsonElement status) || status.GetString() == "clear")
                .Select(clear => (area.GetProperty("id").GetString()!, clear.GetProperty("action").GetString()!))),
        ];
    }
}
