using System.Text.Json;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>What the JSON about a visit begins with.</summary>
internal static class VisitHeadJson
{
    /// <summary>The version of the form, the knowledge, the visit and its day.</summary>
    public static void Write(Utf8JsonWriter json, KnowledgeStamp stamp, Visit visit)
    {
        json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
        StampJson.Write(json, stamp);
        json.WriteString("visit", visit.Id);
        json.WriteString("date", Figures.Day(visit.Date));
    }
}
