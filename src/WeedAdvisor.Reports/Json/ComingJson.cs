using System.Text.Json;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>The weeds to come as JSON: which, and whether somebody told them.</summary>
internal static class ComingJson
{
    public static void Write(Utf8JsonWriter json, ComingWeeds coming, Names names)
    {
        json.WriteStartObject("weedsToCome");
        json.WriteString("from", coming.From == Origin.Answer ? "told" : "usual-here");
        json.WriteList("weeds", coming.Weeds, weed =>
        {
            json.WriteString("weed", weed.Weed);
            json.WriteString("name", names.Weed(weed.Weed));
            if (weed.EmergesNow is { } now)
                json.WriteString("comesUp", now ? "this-month" : "next-month");
            else
                json.WriteNull("comesUp");
            json.WriteBoolean("blowsIn", weed.BlowsIn);
        });
        json.WriteEndObject();
    }
}
