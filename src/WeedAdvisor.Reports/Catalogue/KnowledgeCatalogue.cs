using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>The records of the knowledge by catalogue, for lists and for looking one up.</summary>
public static class KnowledgeCatalogue
{
    /// <summary>The names of the catalogues.</summary>
    public static ImmutableArray<string> Kinds { get; } =
    [
        "weeds",
        "practices",
        "treatments",
        "crops",
        "judgements",
        "questions",
        "findings",
        "sources",
        "regions",
        "limits",
        "resistance",
    ];

    /// <summary>The records of a catalogue, in the order of the knowledge.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="kind">The name of the catalogue.</param>
    /// <param name="today">The day from which the age of a check is counted.</param>
    public static ImmutableArray<CatalogueEntry> Of(KnowledgeBase knowledge, string kind, DateOnly today)
    {
        var actions = new ActionFields(knowledge, today);
        IEnumerable<CatalogueEntry> entries = kind switch
        {
            "weeds" => knowledge.Weeds.Values.Select(weed => new CatalogueEntry(kind, weed.Id, weed.Name, () =>
                RecordFields.Of(knowledge, weed)
            )),
            "practices" => knowledge.Practices.Values.Select(practice => new CatalogueEntry(
                kind,
                practice.Id,
                practice.Name,
                () => actions.Of(practice)
            )),
            "treatments" => knowledge.Treatments.Values.Select(treatment => new CatalogueEntry(
                kind,
                treatment.Id,
                treatment.Name,
                () => actions.Of(treatment)
            )),
            "crops" => knowledge.Crops.Values.Select(crop => new CatalogueEntry(kind, crop.Id, crop.Name, () =>
                RecordFields.Of(knowledge, crop)
            )),
            "judgements" => knowledge.Judgements.Select(judgement => new CatalogueEntry(
                kind,
                judgement.Id,
                judgement.Topic,
                () => JudgementFields.Of(knowledge, judgement)
            )),
            "questions" => knowledge.Questions.Select(question => new CatalogueEntry(
                kind,
                question.Id,
                question.Ask,
                () => RecordFields.Of(knowledge, question)
            )),
            "findings" => knowledge.Findings.Values.Select(finding => new CatalogueEntry(
                kind,
                finding.Id,
                finding.Text,
                () => RecordFields.Of(knowledge, finding)
            )),
            "sources" => knowledge.Sources.Values.Select(source => new CatalogueEntry(
                kind,
                source.Key,
                source.Title,
                () => RecordFields.Of(source)
            )),
            "regions" => knowledge.Regions.Values.Select(region => new CatalogueEntry(
                kind,
                region.Id,
                region.Name,
                () => RecordFields.Of(knowledge, region)
            )),
            "limits" => knowledge.ActiveLimits.Values.Select(limit => new CatalogueEntry(
                kind,
                limit.Id,
                limit.Active,
                () => LimitFields.Of(knowledge, limit, today)
            )),
            "resistance" => knowledge.Resistance.Values.Select(one => new CatalogueEntry(
                kind,
                one.Id,
                new Names(knowledge).Weed(one.Weed),
                () => LimitFields.Of(knowledge, one, today)
            )),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a catalogue"),
        };
        return [.. entries];
    }

    /// <summary>Every record with this id; different catalogues may use the same one.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="id">The id.</param>
    /// <param name="today">The day from which the age of a check is counted.</param>
    public static ImmutableArray<CatalogueEntry> Find(KnowledgeBase knowledge, string id, DateOnly today) =>
        [.. Kinds.SelectMany(kind => Of(knowledge, kind, today)).Where(entry => entry.Id == id)];

    /// <summary>Every id of every catalogue.</summary>
    public static IEnumerable<string> Ids(KnowledgeBase knowledge) =>
        Kinds.SelectMany(kind => Of(knowledge, kind, default)).Select(entry => entry.Id);
}
