using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>A weed seen, joined with what its record says.</summary>
internal static class WeedFacts
{
    /// <summary>The facts of the weeds seen; one that was seen in several stages gives a fact for each.</summary>
    public static IEnumerable<WeedFact> Of(
        KnowledgeBase knowledge,
        IReadOnlyCollection<WeedSeen> seen,
        DateOnly date,
        EmergenceZone zone
    )
    {
        HashSet<string> several =
        [
            .. seen.CountBy(one => one.Weed, StringComparer.Ordinal)
                .Where(counted => counted.Value > 1)
                .Select(counted => counted.Key),
        ];
        return seen.Select(
            (one, at) =>
            {
                Weed weed = knowledge.Weeds[one.Weed];
                string key = several.Contains(one.Weed) ? $"{one.Weed}/{at}" : one.Weed;
                return new WeedFact(
                    key,
                    weed.Name,
                    weed.IsUnnamed ? Unnamed(knowledge, weed, one) : Named(knowledge, weed, one, date, zone)
                );
            }
        );
    }

    private static Dictionary<string, Reading> Named(
        KnowledgeBase knowledge,
        Weed weed,
        WeedSeen seen,
        DateOnly date,
        EmergenceZone zone
    ) =>
        new(AsSeen(weed, seen))
        {
            ["life-cycle"] = Reading.Of(weed.LifeCycle),
            ["emerging-now"] = EmergingNow(weed, date, zone),
            ["spreads-by"] = Reading.Of(weed.SpreadsBy),
            ["favoured-by"] = Reading.Of(weed.FavouredBy),
            ["underground"] = Reading.Of(weed.Underground),
            ["lives-by"] = Reading.Of(WaysOfLife.Of(weed, knowledge.Usual)),
            ["needs-light"] = Reading.Of(weed.NeedsLight),
            ["weeks-to-first-seed"] = weed.WeeksToFirstSeed is { } weeks ? Reading.Of(weeks.Low) : Reading.Absent,
            ["rated-as"] = Reading.Of(WordSet.Of(weed.RatedAs)),
            ["places"] = Reading.Of(weed.Places),
        };

    // What its kind alone does not tell waits for its name.
    private static Dictionary<string, Reading> Unnamed(KnowledgeBase knowledge, Weed weed, WeedSeen seen)
    {
        Dictionary<string, Reading> readings = AsSeen(weed, seen);
        foreach (AttributeDefinition attribute in AttributeSchema.Weed)
            readings.TryAdd(attribute.Name, NotSeenClosely());
        if (WaysOfLife.Of(weed, knowledge.Usual) is { Count: > 0 } ways)
        {
            readings["lives-by"] = Reading.Of(ways);
            readings["underground"] = Reading.Of(ways.Contains(WaysOfLife.Below));
        }

        return readings;
    }

    private static Dictionary<string, Reading> AsSeen(Weed weed, WeedSeen seen) =>
        new()
        {
            ["id"] = Reading.Of(weed.Id),
            ["kind"] = Reading.Of(weed.Kind),
            ["unnamed"] = Reading.Of(weed.IsUnnamed),
            ["stage"] = seen.Stage is { } stage ? Reading.Of(stage) : NotSeenClosely(),
            ["up"] = seen.IsUp is { } up ? Reading.Of(up) : NotSeenClosely(),
            ["cover-percent"] = seen.CoverPercent is { } cover ? Reading.Of(cover) : NotSeenClosely(),
            // Where the share of pots was not told apart, the cover is that of the whole surface.
            ["pots-percent"] = seen.PotsPercent is { } pots ? Reading.Of(pots) : Reading.Absent,
            // Where nobody told it apart it is no reason for or against anything.
            ["stands"] = seen.Stands is { } place ? Reading.Of(place) : Reading.Absent,
        };

    /// <summary>
    /// A stand-in for what may be usual here, as long as it is not known what is: one of the common weeds, not up. None
    /// where no weed is said to be common anywhere.
    /// </summary>
    public static IEnumerable<WeedFact> ThatMayCome(ImmutableArray<Need> needs, KnowledgeBase knowledge)
    {
        Weed[] common =
        [
            .. knowledge.Weeds.Values.Where(weed => weed.CommonestIn.Count > 0 || weed.CommonIn.Count > 0),
        ];
        if (common.Length == 0)
            yield break;
        Dictionary<string, Reading> readings = AttributeSchema
            .Of(FactKind.Weed)
            .ToDictionary(
                attribute => attribute.Name,
                Reading (_) => new Reading.Open(needs, null),
                StringComparer.Ordinal
            );
        readings["id"] = OneOf(weed => weed.Id);
        readings["kind"] = OneOf(weed => weed.Kind);
        readings["life-cycle"] = OneOf(weed => weed.LifeCycle);
        readings["needs-light"] = OneOf(weed => weed.NeedsLight);
        readings["underground"] = OneOf(weed => weed.Underground ? "true" : "false");
        readings["stage"] = Reading.Of(WeedSeen.ToCome);
        readings["up"] = Reading.Of(false);
        readings["cover-percent"] = NotSeenClosely();
        yield return new WeedFact("to-come", "a weed that may come here", readings);

        Reading OneOf(Func<Weed, string> word) => new Reading.Open(needs, WordSet.Of(common.Select(word)));
    }

    private static Reading NotSeenClosely() => Reading.NotKnown(Need.Question(QuestionIds.Weeds));

    private static Reading EmergingNow(Weed weed, DateOnly date, EmergenceZone zone)
    {
        Reading inHouse = In(weed, EmergenceZone.Heated, zone.MonthOf(date));
        if (zone.IsHeated == Truth.Yes)
            return inHouse;
        Reading outdoors = zone.Outdoors is { } known
            ? In(weed, known, zone.MonthOf(date))
            : new Reading.Open(zone.RegionNeeds, null);
        if (zone.IsHeated == Truth.No || outdoors == inHouse)
            return outdoors;
        ImmutableArray<Need> needs = [.. zone.HeatedNeeds.Concat(outdoors.Needs).Distinct().Order()];
        return new Reading.Open(needs, WordSet.Of(["true", "false"]));
    }

    private static Reading In(Weed weed, string zone, int month) =>
        Reading.Of(weed.Emergence.TryGetValue(zone, out ImmutableArray<int> months) && months.Contains(month));
}
