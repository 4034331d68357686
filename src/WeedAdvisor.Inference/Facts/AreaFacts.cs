using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// The facts of one area. Where a list is not known (weeds, crops, earlier applications) one stand-in fact of which
/// nothing is known takes its place, so that every rule about such facts stays possible: not known is not none.
/// </summary>
internal static class AreaFacts
{
    private const string StandIn = "?";

    /// <summary>Site, weeds, crops, past and what keeps people out, in ordinal order of key.</summary>
    public static ImmutableArray<Fact> Of(KnowledgeBase knowledge, AreaCase looked)
    {
        DateOnly date = looked.Date;
        VisitArea area = looked.Area;
        Dictionary<string, Reading> site = SiteReadings.Of(knowledge, looked);
        return
        [
            .. Crops(knowledge, site)
                .Concat(Past(knowledge, date, area, site))
                .Append(new SiteFact(site))
                .Concat(ClosureFacts.Of(looked, knowledge))
                .Concat(EscapeFacts.Of(area.Past, knowledge))
                .Concat(LimitFacts.Of(area.Past, date, knowledge))
                .Concat(Weeds(knowledge, date, area, site))
                .OrderBy(fact => fact.Key, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Fact> Weeds(
        KnowledgeBase knowledge,
        DateOnly date,
        VisitArea area,
        Dictionary<string, Reading> site
    )
    {
        if (area.Weeds is not { } seen)
            return Unknown(FactKind.Weed, site, QuestionIds.Weeds, all => new WeedFact(
                StandIn,
                "a weed (not listed yet)",
                all
            ));
        EmergenceZone zone = EmergenceZone.Of(site, knowledge);
        ComingWeeds coming = WeedsToCome.Of(area, site, zone, date, knowledge);
        return WeedFacts
            .Of(knowledge, [.. seen, .. WeedsToCome.Assumed(area, coming)], date, zone)
            .Concat(coming.Needs.IsEmpty ? [] : WeedFacts.ThatMayCome(coming.Needs, knowledge));
    }

    private static IEnumerable<Fact> Crops(KnowledgeBase knowledge, Dictionary<string, Reading> site) =>
        site.GetValueOrDefault(QuestionIds.Crops, Reading.Absent) switch
        {
            Reading.Words words => words.Value.Select(id => CropOf(knowledge.Crops[id])),
            Reading.Open => Unknown(FactKind.Crop, site, QuestionIds.Crops, all => new CropFact(
                StandIn,
                "a crop (not listed yet)",
                all
            )),
            _ => [],
        };

    private static CropFact CropOf(Crop crop) =>
        new(
            crop.Id,
            crop.Name,
            new Dictionary<string, Reading>
            {
                ["id"] = Reading.Of(crop.Id),
                ["is-a"] = Reading.Of(crop.IsA),
                ["traits"] = Reading.Of(crop.Traits),
            }
        );

    private static IEnumerable<Fact> Past(
        KnowledgeBase knowledge,
        DateOnly date,
        VisitArea area,
        Dictionary<string, Reading> site
    )
    {
        if (area.Past is not { } past)
            return Unknown(FactKind.Past, site, QuestionIds.Past, all => new PastFact(
                StandIn,
                "an earlier application (not listed yet)",
                all
            ));
        return PastFacts.Of(past, date, knowledge);
    }

    // The gate comes first: when it is not even known whether the question applies, that is what has to be asked.
    private static IEnumerable<Fact> Unknown(
        FactKind kind,
        Dictionary<string, Reading> site,
        string question,
        Func<Dictionary<string, Reading>, Fact> make
    )
    {
        Reading asked = site.GetValueOrDefault(question, Reading.Absent);
        ImmutableArray<Need> needs = asked.Needs.IsEmpty ? [Need.Question(question)] : asked.Needs;
        yield return make(
            AttributeSchema
                .Of(kind)
                .ToDictionary(
                    attribute => attribute.Name,
                    Reading (_) => new Reading.Open(needs, null),
                    StringComparer.Ordinal
                )
        );
    }
}
