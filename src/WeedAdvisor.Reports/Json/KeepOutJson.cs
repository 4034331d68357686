using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>What keeps people out of an area, as JSON.</summary>
internal static class KeepOutJson
{
    public static void Write(Utf8JsonWriter json, KeepOut? keepOut, Names names)
    {
        if (keepOut is null)
        {
            json.WriteNull("keepOut");
            return;
        }

        json.WriteStartObject("keepOut");
        json.WriteBoolean("certain", keepOut.IsSure);
        UntilJson.Write(json, keepOut.Until);
        json.WriteNeeds(keepOut.Needs, names);
        json.WriteTexts("because", keepOut.Because);
        json.WriteTexts("then", keepOut.Then);
        json.WriteEndObject();
    }
}
