using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Catalogue;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>What every record, and every rule, says of where it comes from.</summary>
/// <param name="Kind">The catalogue it stands in.</param>
/// <param name="Id">Its id.</param>
/// <param name="Sources">Keys of every source it cites, each once.</param>
/// <param name="Memory">Fields written from memory; those of its actives stand there.</param>
internal sealed record CitedRecord(
    string Kind,
    string Id,
    ImmutableArray<string> Sources,
    ImmutableArray<string> Memory
)
{
    /// <summary>All of them, catalogue by catalogue in ordinal order of id.</summary>
    public static ImmutableArray<CitedRecord> All(KnowledgeBase knowledge) =>
        [
            .. Of("weeds", knowledge.Weeds.Values),
            .. Of("crops", knowledge.Crops.Values),
            .. Of("practices", knowledge.Practices.Values),
            .. Of("treatments", knowledge.Treatments.Values),
            .. Of("actives", knowledge.Ingredients.Values),
            .. Of("withdrawn actives", knowledge.Withdrawn.Values),
            .. knowledge.Judgements.Select(rule => new CitedRecord("judgements", rule.Id, rule.Sources, rule.Memory)),
            .. Of("questions", knowledge.Questions),
            .. Of("findings", knowledge.Findings.Values),
            .. Of("regions", knowledge.Regions.Values),
            .. Of("steps of the scale", knowledge.Scale.Values),
            .. Of("prices", knowledge.Prices.Values),
            .. Of("limits of actives", knowledge.ActiveLimits.Values),
            .. Of("assumptions of the season plan", knowledge.Usual.Records.Values),
            .. Of("weeding parameters", knowledge.Weeding.Values),
        ];

    private static IEnumerable<CitedRecord> Of(string kind, IEnumerable<Record> records) =>
        records
            .OrderBy(record => record.Id, StringComparer.Ordinal)
            .Select(record => new CitedRecord(
                kind,
                record.Id,
                [.. RecordSources.Of(record)],
                [.. record.Memory.Except(record.From.Inherited)]
            ));
}
