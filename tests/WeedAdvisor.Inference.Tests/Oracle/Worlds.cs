using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>The world of an area in which every question that applies is answered and everything is told.</summary>
internal static class Worlds
{
    /// <summary>The world.</summary>
    public static World Of(VisitArea area, KnowledgeBase knowledge) =>
        new([
            Site(area),
            .. area.Weeds!.Value.Select(seen => Weed(seen, knowledge.Weeds[seen.Weed])),
            .. Words(area, "crops").Select(id => Crop(knowledge.Crops[id])),
            .. area.Past!.Value.Select(use =>
                Use(use, knowledge.Treatments[use.Treatment!], area.Past.Value.Max(one => one.Date))
            ),
            .. knowledge.Practices.Values.Select(Practice),
            .. knowledge.Treatments.Values.Select(Treatment),
        ]);

    private static string[] Words(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words ? [.. words.Value] : [];

    private static Thing Site(VisitArea area)
    {
        string[] plain = ["cover", "light", "heated", "tools", "stock"];
        var attributes = plain.ToDictionary(id => id, id => Value.Of(Words(area, id)));
        attributes["depth"] = Value.Of((area.Answers["depth"] as Answer.Number)?.Value);
        attributes["enclosed"] = Value.Of(Words(area, "cover").Contains("film") ? "yes" : "no");
        return new Thing(FactKind.Site, "site", attributes);
    }

    private static Thing Weed(WeedSeen seen, Weed record) =>
        Of(
            FactKind.Weed,
            $"weed/{seen.Weed}",
            new()
            {
                ["id"] = Value.Of(seen.Weed),
                ["kind"] = Value.Of(record.Kind),
                ["stage"] = Value.Of(seen.Stage!),
                ["up"] = Value.Of(seen.Stage != "expected"),
                ["cover-percent"] = Value.Of(seen.CoverPercent),
                ["weeks-to-first-seed"] = Value.Of(record.WeeksToFirstSeed?.Low),
            }
        );

    private static Thing Crop(Crop record) =>
        Of(
            FactKind.Crop,
            $"crop/{record.Id}",
            new() { ["id"] = Value.Of(record.Id), ["is-a"] = Value.Of(record.Parents.Append(record.Id)) }
        );

    private static Thing Use(PastApplication use, Treatment record, DateOnly? last) =>
        Of(
            FactKind.Past,
            "past",
            new()
            {
                ["treatment"] = Value.Of(record.Id),
                ["groups"] = Value.Of(record.Actives.Select(active => active.Group!)),
                ["days-ago"] = Value.Of(DrawnCase.Day.DayNumber - use.Date!.Value.DayNumber),
                ["latest"] = Value.Of(use.Date == last),
                ["result"] = Value.Of(use.Result!),
            }
        );

    private static Thing Practice(Practice record) =>
        Of(
            FactKind.Practice,
            $"action/{record.Id}",
            new()
            {
                ["id"] = Value.Of(record.Id),
                ["is"] = Value.Of("practice"),
                ["stock-stages"] = Value.Of(record.StockStages),
            }
        );

    private static Thing Treatment(Treatment record) =>
        Of(
            FactKind.Treatment,
            $"action/{record.Id}",
            new()
            {
                ["id"] = Value.Of(record.Id),
                ["is"] = Value.Of("treatment"),
                ["stock-stages"] = Value.Of(record.StockStages),
                ["allowed-under"] = Value.Of(record.AllowedUnder),
                ["crops-tolerant"] = Value.Of(record.CropsTolerant),
                ["groups"] = Value.Of(record.Actives.Select(active => active.Group!)),
                ["reaches-crop"] = Value.Of(record.ReachesCrop),
                ["signal-word"] = record.SignalWord is { } word ? Value.Of(word) : null,
                ["wait-after-potting-days"] = Value.Of(record.WaitAfterPottingDays),
                ["repeat-after-days"] = Value.Of(record.RepeatAfterDays),
            }
        );

    private static Thing Of(FactKind kind, string key, Dictionary<string, Value?> attributes) =>
        new(kind, key, attributes);
}
