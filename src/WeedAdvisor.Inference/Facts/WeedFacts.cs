using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>A weed seen, joined with what its record says.</summary>
internal static class WeedFacts
{
    /// <summary>The zone of a heated house, whose weeds come up in months of their own.</summary>
    public const string HeatedZone = "heated-house";

    /// <summary>The fact of one weed.</summary>
    public static WeedFact Of(
        Weed weed, WeedSeen seen, DateOnly date, Dictionary<string, Reading> site, KnowledgeBase knowledge) =>
        new(weed.Id, weed.Name, new Dictionary<string, Reading>
        {
            ["id"] = Reading.Of(weed.Id),
            ["kind"] = Reading.Of(weed.Kind),
            ["life-cycle"] = Reading.Of(weed.LifeCycle),
            ["stage"] = seen.Stage is { } stage ? Reading.Of(stage) : NotSeenClosely(),
            ["up"] = seen.Stage is { } up ? Reading.Of(up != "expected") : NotSeenClosely(),
            ["cover-percent"] = seen.CoverPercent is { } cover ? Reading.Of(cover) : NotSeenClosely(),
            ["emerging-now"] = EmergingNow(weed, date, site, knowledge),
            ["spreads-by"] = Reading.Of(weed.SpreadsBy),
            ["favoured-by"] = Reading.Of(weed.FavouredBy),
            ["underground"] = Reading.Of(weed.Underground),
            ["needs-light"] = Reading.Of(weed.NeedsLight),
            ["weeks-to-first-seed"] = weed.WeeksToFirstSeed is { } weeks ? Reading.Of(weeks.Low) : Reading.Absent,
            ["rated-as"] = Reading.Of(WordSet.Of(weed.RatedAs)),
            ["places"] = Reading.Of(weed.Places),
        });

    private static Reading NotSeenClosely() => Reading.NotKnown(Need.Question(QuestionIds.Weeds));

    // A heated house has its own calendar; outdoors the region decides.
    private static Reading EmergingNow(
        Weed weed,
        DateOnly date,
        Dictionary<string, Reading> site,
        KnowledgeBase knowledge
    )
    {
        Reading heated = site.GetValueOrDefault(QuestionIds.Heated, Reading.Absent);
        Truth isHeated = heated.IsAnyOf(WordSet.Of(["yes"]));
        Reading inHouse = In(weed, HeatedZone, date);
        if (isHeated == Truth.Yes)
            return inHouse;
        Reading region = site.GetValueOrDefault(QuestionIds.Region, Reading.Absent);
        Reading outdoors =
            region is Reading.Words words && knowledge.Regions.TryGetValue(words.Value.First(), out Region? known)
            ? In(weed, known.EmergenceZone, date)
            : new Reading.Open(region.Needs.IsEmpty ? [Need.Question(QuestionIds.Region)] : region.Needs, null);
        if (isHeated == Truth.No || outdoors == inHouse)
            return outdoors;
        ImmutableArray<Need> needs = [.. heated.Needs.Concat(outdoors.Needs).Distinct().Order()];
        return new Reading.Open(needs, WordSet.Of(["true", "false"]));
    }

    private static Reading In(Weed weed, string zone, DateOnly date) =>
        Reading.Of(weed.Emergence.TryGetValue(zone, out ImmutableArray<int> months) && months.Contains(date.Month));
}
