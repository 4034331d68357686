using System.Text.Json;

namespace WeedAdvisor.Frozen;

/// <summary>Where the actions of an advice stand, read from its JSON, before and after actions had a status.</summary>
internal static class ActionsOf
{
    private const string Clear = "clear";
    private static readonly string[] s_lists = [Clear, "waiting", "barred", "notAdvised"];

    /// <summary>The actions that stand among the clear ones of an advice, with or without doubts, and did not in an earlier one.</summary>
    /// <param name="before">What was printed before.</param>
    /// <param name="now">What is printed now.</param>
    /// <returns>Area, action, where it stood before and the status it has now.</returns>
    public static IEnumerable<(string Area, string Action, string Before, string Now)> NewlyClear(string before, string now)
    {
        var old = Standing(before);
        return Standing(now)
            .Where(one => one.Value.List == Clear && !(old.TryGetValue(one.Key, out var was) && was.List == Clear))
            .Select(one => (one.Key.Area, one.Key.Action, old.TryGetValue(one.Key, out var was) ? was.Status : "not listed", one.Value.Status));
    }

    private static Dictionary<(string Area, string Action), (string List, string Status)> Standing(string printed)
    {
        int start = printed.IndexOf('{', StringComparison.Ordinal), end = printed.LastIndexOf('}');
        if (start < 0)
            return [];
        using JsonDocument document = JsonDocument.Parse(printed[start..(end + 1)]);
        var found = new Dictionary<(string, string), (string, string)>();
        foreach (JsonElement area in document.RootElement.GetProperty("areas").EnumerateArray())
        {
            foreach (string list in s_lists)
            {
                if (!area.TryGetProperty(list, out JsonElement actions))
                    continue;
                foreach (JsonElement action in actions.EnumerateArray())
                    found[(Word(area, "id"), Word(action, "action"))] = (list, Status(action) ?? list);
            }
        }

        return found;
    }

    private static string Word(JsonElement of, string key) => of.GetProperty(key).GetString()!;

    private static string? Status(JsonElement action) =>
        action.TryGetProperty("status", out JsonElement status) ? status.GetString()
        : action.TryGetProperty("severity", out JsonElement severity) ? severity.GetString()
        : null;
}
