using System.Text.Json;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Reports.Json;

/// <summary>Writes which knowledge, and which label book over it, an output came from.</summary>
internal static class StampJson
{
    /// <summary>The stamp under the key <c>knowledge</c>.</summary>
    public static void Write(Utf8JsonWriter json, KnowledgeStamp stamp)
    {
        json.WriteStartObject("knowledge");
        json.WriteString("version", stamp.Version);
        json.WriteString("hash", stamp.Hash);
        if (stamp.Labels is { } labels)
            json.WriteString("labels-hash", labels);
        json.WriteEndObject();
    }
}
