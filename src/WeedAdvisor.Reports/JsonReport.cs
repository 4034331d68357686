using System.Buffers;
using System.Globalization;
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
    public const int SchemaVersion = 2;

    private static readonly JsonWriterOptions s_options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The advice as JSON text; the last line ends with a line feed.</summary>
    public static string Of(VisitAdvice advice, KnowledgeBase knowledge)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        Write(text, advice, knowledge);
        return text.ToString();
    }

    /// <summary>
    /// Writes the advice as JSON, area by area: a visit to a thousand areas is never held as one text.
    /// </summary>
    public static void Write(TextWriter output, VisitAdvice advice, KnowledgeBase knowledge)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(buffer, s_options);
        var names = new Names(knowledge);
        WriteHead(json, advice);
        json.WriteList("areas", advice.Areas, area =>
        {
            AreaJson.Write(json, area, names, advice.Visit.Date);
            PassOn(json, buffer, output);
        });
        json.WriteTexts("safety", Safety.StandingLines);
        json.WriteEndObject();
        PassOn(json, buffer, output);
        output.Write('\n');
    }

    private static void PassOn(Utf8JsonWriter json, ArrayBufferWriter<byte> buffer, TextWriter output)
    {
        json.Flush();
        output.Write(Encoding.UTF8.GetString(buffer.WrittenSpan));
        buffer.ResetWrittenCount();
    }

    private static void WriteHead(Utf8JsonWriter json, VisitAdvice advice)
    {
        json.WriteStartObject();
        json.WriteNumber("schemaVersion", SchemaVersion);
        StampJson.Write(json, advice.Knowledge);
        json.WriteStartObject("visit");
        json.WriteString("id", advice.Visit.Id);
        json.WriteString("date", Figures.Day(advice.Visit.Date));
        json.WriteText("title", advice.Visit.Title);
        json.WriteText("nursery", advice.Visit.Nursery);
        json.WriteEndObject();
    }
}
