using System.Globalization;
using System.Text.Json;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Json;

namespace WeedAdvisor.Reports.Rates;

/// <summary>A rate sum as JSON; <c>docs/json.md</c> describes it. Figures are not rounded.</summary>
public static class RateJson
{
    /// <summary>The sum as JSON text; the last line ends with a line feed.</summary>
    public static string Of(RateReport report) =>
        JsonText.Of(json =>
        {
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            json.WriteStartObject("form");
            json.WriteString("group", report.Form.Group);
            json.WriteString("id", report.Form.Id);
            json.WriteString("title", report.Form.Title);
            json.WriteEndObject();
            json.WriteList("entered", report.Entries, entry => Entry(json, entry));
            json.WriteList("results", report.Answer.Results, result => Result(json, result));
            json.WriteTexts("notes", report.Answer.Notes);
            json.WriteList("working", report.Answer.Working, line =>
            {
                json.WriteString("label", line.Label);
                json.WriteString("arithmetic", line.Arithmetic);
                json.WriteString("result", line.Result);
            });
            json.WriteTexts("assumed", report.Assumed);
            json.WriteTexts("cautions", report.Answer.Cautions);
            json.WriteList("sources", report.Answer.Sources, key =>
            {
                json.WriteString("key", key);
                json.WriteText("citation", report.CitationOf(key));
            });
        });

    private static void Entry(Utf8JsonWriter json, RateEntry entry)
    {
        json.WriteString("field", entry.Field.Id);
        json.WriteString("typed", entry.Typed);
        json.WriteBoolean("usual", entry.IsUsual);
        json.WriteList("read", entry.Quantities, quantity => Figure(json, quantity));
        json.WriteText("word", entry.Word);
    }

    private static void Result(Utf8JsonWriter json, RateResult result)
    {
        json.WriteString("id", result.Id);
        json.WriteString("label", result.Label);
        Figure(json, result.Value);
        json.WriteList("also", result.Shown.Skip(1), quantity => Figure(json, quantity));
        json.WriteList("measureOut", result.IsMeasuredOut ? MeasuringOut.Of(result.Value) : [], amount =>
            Figure(json, amount)
        );
    }

    private static void Figure(Utf8JsonWriter json, Quantity quantity)
    {
        string value = quantity.Value.ToString("0.############################", CultureInfo.InvariantCulture);
        json.WriteString("value", value);

        // Read from the text: the conversion of a decimal may be off in the last place.
        json.WriteNumber("number", double.Parse(value, CultureInfo.InvariantCulture));
        json.WriteString("unit", quantity.Unit.Symbol);
    }
}
