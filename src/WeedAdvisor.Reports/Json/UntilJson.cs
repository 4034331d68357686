using System.Globalization;
using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>What ends the bars of an action, as JSON.</summary>
internal static class UntilJson
{
    public static void Write(Utf8JsonWriter json, Until? until)
    {
        if (until is null)
        {
            json.WriteNull("until");
            return;
        }

        json.WriteStartObject("until");
        json.WriteText("from", until.From?.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture));
        json.WriteText("day", until.Day is { } day ? Figures.Day(day) : null);
        json.WriteText("hour", until.HasHour ? until.From?.ToString("HH:mm", CultureInfo.InvariantCulture) : null);
        json.WriteTexts("states", until.States);
        json.WriteEndObject();
    }
}
