using System.Collections.Immutable;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The facts that are the same in every area: what the catalogue of practices and treatments says.</summary>
internal static class CatalogueFacts
{
    /// <summary>One fact for each practice and treatment, in ordinal order of id.</summary>
    public static ImmutableArray<ActionFact> Of(KnowledgeBase knowledge) =>
        [.. InTurn(knowledge).OrderBy(fact => fact.Id, StringComparer.Ordinal)];

    /// <summary>The same in no order, each made when it is asked for.</summary>
    public static IEnumerable<ActionFact> InTurn(KnowledgeBase knowledge) =>
        knowledge
            .Practices.Values.Select(OfPractice)
            .Concat<ActionFact>(knowledge.Treatments.Values.Select(treatment => OfTreatment(treatment, knowledge)));

    /// <summary>The fact of one practice or treatment; null when there is none with this id.</summary>
    public static ActionFact? One(KnowledgeBase knowledge, string id) =>
        knowledge.ActionOf(id) switch
        {
            Practice practice => OfPractice(practice),
            Treatment treatment => OfTreatment(treatment, knowledge),
            _ => null,
        };

    private static PracticeFact OfPractice(Practice practice)
    {
        Dictionary<string, Reading> readings = Common(practice, "practice");
        readings["kind"] = Reading.Of(practice.Kind);
        readings["tags"] = Reading.Of(practice.Tags);
        readings["works-on"] = Reading.Of(practice.WorksOn);
        readings["enclosed-ok"] = Reading.Of(practice.EnclosedOk);
        return new PracticeFact(practice.Id, practice.Name, readings);
    }

    private static TreatmentFact OfTreatment(Treatment treatment, KnowledgeBase knowledge)
    {
        Dictionary<string, Reading> readings = Common(treatment, "treatment");
        foreach (TestableOfTreatment attribute in TreatmentTestables.All)
            readings[attribute.Definition.Name] = attribute.Read(treatment);

        RatedWeeds rated = RatedWeeds.Of(treatment, knowledge);
        readings["controls-well"] = Reading.Of(rated.ControlsWell);
        readings["controls-partly"] = Reading.Of(rated.ControlsPartly);
        readings["misses"] = Reading.Of(rated.Misses);
        readings["unrated"] = Reading.Of(rated.Unrated);
        return new TreatmentFact(treatment.Id, treatment.Name, readings);
    }

    private static Dictionary<string, Reading> Common(CatalogueAction action, string kind) =>
        new(StringComparer.Ordinal)
        {
            ["id"] = Reading.Of(action.Id),
            ["is"] = Reading.Of(kind),
            ["when"] = Reading.Of(action.When),
            ["places"] = Reading.Of(action.Places),
            ["stock-stages"] = Reading.Of(action.StockStages),
            ["needs-equipment"] = Reading.Of(action.NeedsEquipment),
            ["enters"] = Reading.Of(action is not Practice { Entry: not EntryNeed.Worker }),
        };
}
