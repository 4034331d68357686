using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Json;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>
/// Advice as JSON for other programs; <c>docs/json.md</c> describes it. The order is fixed, numbers are rounded to four
/// decimals, no time of writing is stamped: the same advice gives the same bytes.
/// </summary>
public static class JsonReport
{
    /// <summary>Version of the layout. It grows when a key changes its meaning or goes.</summary>
    public const int SchemaVersion = 1;

    private static readonly JsonWriterOptions s_options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The advice as JSON text; the last line ends with a line feed.</summary>
    public static string Of(VisitAdvice advice, KnowledgeBase knowledge)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, s_options))
            Write(json, advice, knowledge);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Write(Utf8JsonWriter json, VisitAdvice advice, KnowledgeBase knowledge)
    {
        json.WriteStartObject();
        json.WriteNumber("schemaVersion", SchemaVersion);
        json.WriteStartObject("knowledge");
        json.WriteString("version", advice.Knowledge.Version);
        json.WriteString("hash", advice.Knowledge.Hash);
        json.WriteEndObject();
        json.WriteStartObject("visit");
        json.WriteString("id", advice.Visit.Id);
        json.WriteString("date", Figures.Day(advice.Visit.Date));
        json.WriteText("title", advice.Visit.Title);
        json.WriteText("nursery", advice.Visit.Nursery);
        json.WriteEndObject();
        json.WriteList("areas", advice.Areas, area => AreaJson.Write(json, area, new Names(knowledge)));
        json.WriteTexts("safety", Safety.StandingLines);
        json.WriteEndObject();
    }
}
