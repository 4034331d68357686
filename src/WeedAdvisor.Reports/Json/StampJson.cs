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
        if (stamp.Local is { } local)
            json.WriteString("local-hash", local);
        WriteLifted(json, stamp);
        json.WriteEndObject();
    }

    /// <summary>The bars that were lifted, under the key <c>lifted</c>; nothing when none was.</summary>
    public static void WriteLifted(Utf8JsonWriter json, KnowledgeStamp stamp)
    {
        if (!stamp.Lifted.IsEmpty)
            json.WriteList("lifted", stamp.Lifted, lifted =>
            {
                json.WriteString("bar", lifted.Judgement);
                json.WriteString("because", lifted.Because);
            });
    }
}
