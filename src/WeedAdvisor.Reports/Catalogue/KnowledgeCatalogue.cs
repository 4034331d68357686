using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>The records of the knowledge by catalogue, for lists and for looking one up.</summary>
public static class KnowledgeCatalogue
{
    private const string Actives = "actives",
        Withdrawn = "withdrawn";

    /// <summary>The names of the catalogues.</summary>
    public static ImmutableArray<string> Kinds { get; } =
    [
        "weeds",
        "practices",
        "treatments",
        Actives,
        Withdrawn,
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
            "weeds" => Each(knowledge.Weeds.Values, one => one.Name, one => RecordFields.Of(knowledge, one)),
            "practices" => Each(knowledge.Practices.Values, one => one.Name, actions.Of),
            "treatments" => Each(knowledge.Treatments.Values, one => one.Name, actions.Of),
            Actives => Each(
                knowledge.Ingredients.Values,
                one => one.Name,
                one => ActiveFields.Of(knowledge, one, today)
            ),
            Withdrawn => Each(
                knowledge.Withdrawn.Values,
                one => knowledge.Ingredients[one.Active].Name,
                one => ActiveFields.Of(knowledge, one, today)
            ),
            "crops" => Each(knowledge.Crops.Values, one => one.Name, one => RecordFields.Of(knowledge, one)),
            "judgements" => knowledge.Judgements.Select(one => new CatalogueEntry(kind, one.Id, one.Topic, () =>
                JudgementFields.Of(knowledge, one, today)
            )),
            "questions" => Each(knowledge.Questions, one => one.Ask, one => RecordFields.Of(knowledge, one)),
            "findings" => Each(knowledge.Findings.Values, one => one.Text, one => RecordFields.Of(knowledge, one)),
            "sources" => knowledge.Sources.Values.Select(one => new CatalogueEntry(kind, one.Key, one.Title, () =>
                RecordFields.Of(one)
            )),
            "regions" => Each(knowledge.Regions.Values, one => one.Name, one => RecordFields.Of(knowledge, one)),
            "limits" => Each(
                knowledge.ActiveLimits.Values,
                one => one.Active,
                one => LimitFields.Of(knowledge, one, today)
            ),
            "resistance" => Each(
                knowledge.Resistance.Values,
                one => new Names(knowledge).Weed(one.Weed),
                one => LimitFields.Of(knowledge, one, today)
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a catalogue"),
        };
        return [.. entries];

        IEnumerable<CatalogueEntry> Each<T>(
            IEnumerable<T> records,
            Func<T, string> name,
            Func<T, ImmutableArray<Field>> fields
        )
            where T : Record => records.Select(one => new CatalogueEntry(kind, one.Id, name(one), () => fields(one)));
    }

    /// <summary>
    /// Every record with this id; different catalogues may use the same one. An active also goes by its other names,
    /// and by the id of a treatment that it was.
    /// </summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="id">The id.</param>
    /// <param name="today">The day from which the age of a check is counted.</param>
    public static ImmutableArray<CatalogueEntry> Find(KnowledgeBase knowledge, string id, DateOnly today)
    {
        CatalogueEntry[] all = [.. Kinds.SelectMany(kind => Of(knowledge, kind, today))];
        ImmutableArray<CatalogueEntry> found = [.. all.Where(entry => entry.Id == id)];
        string? active = found.IsEmpty
            ? (knowledge.GoneAs(id) ?? ActiveFields.Called(knowledge, id))?.Id
            : found.FirstOrDefault(entry => entry.Kind == Actives)?.Id;
        return active is null
            ? found
            :
            [
                .. all.Where(entry => entry.Id == active || entry.Id == id),
                .. all.Where(entry => entry.Kind == Withdrawn && knowledge.Withdrawn[entry.Id].Active == active),
            ];
    }

    /// <summary>Every id of every catalogue.</summary>
    public static IEnumerable<string> Ids(KnowledgeBase knowledge) =>
        Kinds.SelectMany(kind => Of(knowledge, kind, default)).Select(entry => entry.Id);
}
