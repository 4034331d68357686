using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge;

/// <summary>The words that the records of actives and treatments use, each once, in the order of the records.</summary>
public static class CatalogueWords
{
    /// <summary>ISO common names of actives.</summary>
    public static ImmutableArray<string> Actives(this KnowledgeBase knowledge) =>
        [
            .. AllActives(knowledge)
                .Select(active => active.Name)
                .Concat(knowledge.Ingredients.Values.Select(active => active.Name))
                .Distinct(),
        ];

    /// <summary>HRAC/WSSA codes of sites of action.</summary>
    public static ImmutableArray<string> Groups(this KnowledgeBase knowledge) =>
        [
            .. AllActives(knowledge)
                .Select(active => active.Group)
                .Concat(knowledge.Ingredients.Values.Select(active => active.Group))
                .OfType<string>()
                .Distinct(),
        ];

    /// <summary>Units in which rates are given.</summary>
    public static ImmutableArray<string> RateUnits(this KnowledgeBase knowledge) =>
        [
            .. knowledge
                .Treatments.Values.SelectMany(treatment => treatment.Rates)
                .Select(rate => rate.Unit)
                .OfType<string>()
                .Distinct(),
        ];

    private static IEnumerable<Active> AllActives(KnowledgeBase knowledge) =>
        knowledge.Treatments.Values.SelectMany(treatment => treatment.Actives);
}
