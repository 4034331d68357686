using System.Collections.Immutable;
using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Json;

/// <summary>The small parts that the JSON of an advice is made of.</summary>
internal static class JsonParts
{
    private const int Decimals = 4;

    public static void WriteList<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    public static void WriteText(this Utf8JsonWriter json, string name, string? text)
    {
        if (text is null)
            json.WriteNull(name);
        else
            json.WriteString(name, text);
    }

    public static void WriteFigure(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
            json.WriteNumber(name, Math.Round(number, Decimals));
        else
            json.WriteNull(name);
    }

    public static void WriteFigure(this Utf8JsonWriter json, string name, decimal? value)
    {
        // Dividing by one with many decimals drops trailing zeros: 45.00 and 45 are the same figure.
        if (value is { } number)
            json.WriteNumber(name, decimal.Round(number, Decimals) / 1.0000000000000000000000000000m);
        else
            json.WriteNull(name);
    }

    public static void WriteBecause(
        this Utf8JsonWriter json,
        ImmutableArray<Reason> reasons,
        string name = "because"
    ) => json.WriteList(name, reasons, reason =>
        {
            json.WriteString("judgement", reason.Judgement);
            json.WriteString("text", reason.Text);
            json.WriteFigure("certainty", reason.Certainty);
            json.WriteBoolean("certain", reason.IsCertain);
            json.WriteTexts("sources", reason.Sources);
        });

    public static void WriteNeeds(
        this Utf8JsonWriter json,
        ImmutableArray<Need> needs,
        Names names,
        string name = "needs"
    ) => json.WriteList(name, needs, need =>
        {
            json.WriteString("kind", need.Kind == NeedKind.Question ? "question" : "record");
            json.WriteString("id", need.Id);
            json.WriteString("text", names.Need(need));
        });
}
