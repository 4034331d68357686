using System.Text.Json;

namespace WeedAdvisor.Frozen;

/// <summary>Where the actions of an advice stand, read from its JSON, before and after actions had a status.</summary>
internal static class ActionsOf
{
    private const string Clear = "clear";
    private const string Barred = "barred";
    private static readonly string[] s_lists = [Clear, "waiting", Barred, "notAdvised"];

    /// <summary>
    /// The actions that are clear in an advice, with or without doubts, and were not in an earlier one.
    /// </summary>
    /// <param name="before">What was printed before.</param>
    /// <param name="now">What is printed now.</param>
    /// <returns>Area, action, where it stood before and the status it has now.</returns>
    public static IEnumerable<(string Area, string Action, string Before, string Now)> NewlyClear(
        string before,
        string now
    )
    {
        Dictionary<(string, string), Place> old = Standing(before);
        return Standing(now)
            .Where(one => one.Value.List == Clear)
            .Select(one => (one.Key, Before: old.GetValueOrDefault(one.Key), Now: one.Value))
            .Where(one => one.Before?.List != Clear)
            .Select(one => (one.Key.Area, one.Key.Action, one.Before?.Status ?? "not listed", one.Now.Status));
    }

    /// <summary>
    /// The rules that certainly barred an action before and no longer stand against it. An action with several bars
    /// stays barred when it loses one: what became clear does not show that.
    /// </summary>
    /// <param name="before">What was printed before.</param>
    /// <param name="now">What is printed now.</param>
    /// <returns>Area, action and rule.</returns>
    public static IEnumerable<(string Area, string Action, string Rule)> LostBars(string before, string now)
    {
        Dictionary<(string, string), Place> after = Standing(now);
        return after.Count == 0
            ? []
            : Standing(before)
                .Where(one => one.Value.List == Barred)
                .SelectMany(one =>
                    one.Value.Certain.Except(after.TryGetValue(one.Key, out Place? place) ? place.Against : [])
                        .Select(rule => (one.Key.Area, one.Key.Action, rule))
                );
    }

    private static Dictionary<(string Area, string Action), Place> Standing(string printed)
    {
        int start = printed.IndexOf('{', StringComparison.Ordinal),
            end = printed.LastIndexOf('}');
        if (start < 0)
            return [];
        using JsonDocument document = JsonDocument.Parse(printed[start..(end + 1)]);
        var found = new Dictionary<(string, string), Place>();
        foreach (JsonElement area in document.RootElement.GetProperty("areas").EnumerateArray())
        {
            foreach (string list in s_lists)
            {
                if (!area.TryGetProperty(list, out JsonElement actions))
                    continue;
                foreach (JsonElement action in actions.EnumerateArray())
                    found[(Word(area, "id"), Word(action, "action"))] = PlaceOf(action, list);
            }
        }

        return found;
    }

    private static Place PlaceOf(JsonElement action, string list)
    {
        (string Rule, bool IsCertain)[] because =
        [
            .. new[] { "because", "against" }
                .Where(key => action.TryGetProperty(key, out _))
                .SelectMany(key => action.GetProperty(key).EnumerateArray())
                .Select(one => (Rule(one), one.GetProperty("certain").GetBoolean())),
        ];
        return new Place(
            list,
            Status(action) ?? list,
            [.. because.Where(one => one.IsCertain).Select(one => one.Rule).Distinct()],
            [.. because.Select(one => one.Rule)]
        );
    }

    private static string Rule(JsonElement because) =>
        because.GetProperty("judgement").GetString() ?? "(the record itself)";

    private static string Word(JsonElement of, string key) => of.GetProperty(key).GetString()!;

    private static string? Status(JsonElement action) =>
        action.TryGetProperty("status", out JsonElement status) ? status.GetString()
        : action.TryGetProperty("severity", out JsonElement severity) ? severity.GetString()
        : null;

    private sealed record Place(string List, string Status, string[] Certain, string[] Against);
}
