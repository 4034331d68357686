using System.Text.Json;
using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Tests.Samples;

namespace WeedAdvisor.Reports.Tests;

public sealed class JsonReportTests
{
    [Fact]
    public void Full_advice_as_json() => ExpectedText.Matches(Json());

    [Fact]
    public void Another_culture_gives_the_same_bytes()
    {
        string plain = Json();
        using var culture = new CommaCulture();
        Assert.Equal(plain, Json());
    }

    [Fact]
    public void It_has_every_key_of_the_contract()
    {
        using var json = JsonDocument.Parse(Json());
        JsonElement root = json.RootElement;
        HasKeys(root, "schemaVersion", "knowledge", "visit", "areas", "safety");
        HasKeys(root.GetProperty("knowledge"), "version", "hash");
        HasKeys(root.GetProperty("visit"), "id", "date", "title", "nursery");
        JsonElement area = root.GetProperty("areas")[0];
        HasKeys(
            area,
            "id",
            "name",
            "keepOut",
            "weedsToCome",
            "costsFor",
            "inHand",
            "findings",
            "clear",
            "waiting",
            "barred",
            "notAdvised",
            "becomesPossible",
            "conflicts",
            "cautions",
            "notes",
            "gaps",
            "nextQuestion"
        );
        HasKeys(First(area, "findings"), "id", "text", "certainty", "certain", "because");
        HasKeys(
            First(area, "clear"),
            "action",
            "name",
            "kind",
            "what",
            "status",
            "unless",
            "rank",
            "horizon",
            "oneOf",
            "lacksTool",
            "waitsForCleaning",
            "worth",
            "certainty",
            "effect",
            "when",
            "notToday",
            "conditions",
            "dates",
            "costUsd",
            "hours",
            "costUsdPer1000Pots",
            "hoursPer1000Pots",
            "costGrowsWithPots",
            "tool",
            "smallestPack",
            "smallestPackUsd",
            "materials",
            "work",
            "because",
            "cautions",
            "notWhere",
            "fromMemory",
            "sources"
        );
        HasKeys(First(area, "clear").GetProperty("effect"), "on", "ofStanding", "ofComing", "counted", "parts");
        HasKeys(
            First(area, "clear").GetProperty("dates"),
            "earliest",
            "earliestBecause",
            "latest",
            "latestBecause",
            "lookAgain"
        );
        HasKeys(First(First(area, "clear"), "work"), "line", "name", "low", "high", "working");
        HasKeys(
            area.GetProperty("costsFor"),
            "unit",
            "groundM2",
            "pots",
            "potWidthCm",
            "apartCm",
            "potsAssumed",
            "potWidthAssumed",
            "apartAssumed"
        );
        HasKeys(First(First(area, "clear"), "because"), "judgement", "text", "certainty", "certain", "sources");
        HasKeys(First(area, "waiting"), "action", "status", "horizon", "promise", "needs", "because", "for");
        HasKeys(First(area, "barred"), "action", "status", "severity", "until", "otherWays", "because", "sources");
        HasKeys(First(area, "conflicts"), "action", "for", "against");
        HasKeys(First(area, "cautions"), "text", "certain", "because");
        HasKeys(First(area, "gaps"), "kind", "subject", "text");
        HasKeys(area.GetProperty("nextQuestion"), "id", "text", "why", "mayBring", "outcomes");
        HasKeys(area.GetProperty("weedsToCome"), "from", "weeds");
    }

    [Fact]
    public void What_is_missing_is_null()
    {
        using var json = JsonDocument.Parse(Json());
        JsonElement blank = json.RootElement.GetProperty("areas")[1];
        Assert.Equal(JsonValueKind.Null, blank.GetProperty("nextQuestion").ValueKind);
        JsonElement dry = json.RootElement.GetProperty("areas")[0].GetProperty("clear")[2];
        Assert.Equal(JsonValueKind.Null, dry.GetProperty("costUsdPer1000Pots").ValueKind);
        Assert.Equal(JsonValueKind.Null, dry.GetProperty("effect").GetProperty("ofComing").ValueKind);
        Assert.Equal(0.5, dry.GetProperty("effect").GetProperty("counted").GetDouble());
    }

    [Fact]
    public void Numbers_have_four_decimals_at_most_and_no_idle_zeros()
    {
        using var json = JsonDocument.Parse(Json());
        JsonElement wash = json.RootElement.GetProperty("areas")[0].GetProperty("clear")[0];
        Assert.Equal("0.6123", wash.GetProperty("worth").GetRawText());
        Assert.Equal("45", wash.GetProperty("costUsdPer1000Pots").GetRawText());
        Assert.Equal("85.5", wash.GetProperty("effect").GetProperty("parts")[0].GetProperty("lowPercent").GetRawText());
    }

    [Fact]
    public void Dates_are_days_with_what_sets_them_or_null()
    {
        using var json = JsonDocument.Parse(Json());
        JsonElement clear = json.RootElement.GetProperty("areas")[0].GetProperty("clear");
        JsonElement wash = clear[0].GetProperty("dates");
        Assert.Equal("2026-04-14", wash.GetProperty("earliest").GetString());
        Assert.Equal("2026-10-11", wash.GetProperty("latest").GetString());
        Assert.Equal("2026-06-09", wash.GetProperty("lookAgain").GetString());
        JsonElement mulch = clear[1].GetProperty("dates");
        Assert.Equal("2026-04-14", mulch.GetProperty("earliest").GetString());
        Assert.Equal(JsonValueKind.Null, mulch.GetProperty("earliestBecause").ValueKind);
        Assert.Equal(JsonValueKind.Null, mulch.GetProperty("latest").ValueKind);
    }

    private static string Json() => JsonReport.Of(SampleAdvice.Full, SampleKnowledge.Small);

    private static JsonElement First(JsonElement parent, string list) => parent.GetProperty(list)[0];

    private static void HasKeys(JsonElement element, params string[] keys) =>
        Assert.Equal(keys, element.EnumerateObject().Select(property => property.Name));
}
