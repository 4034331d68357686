using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>The words that a visit, a label book or prices may use, from knowledge that has been read.</summary>
internal static class LexiconOfKnowledge
{
    /// <summary>The lexicon of the knowledge.</summary>
    public static Lexicon Of(KnowledgeBase knowledge)
    {
        LexiconBuilder words = new LexiconBuilder()
            .Declare("weeds", knowledge.Weeds.Keys, knowledge.Weeds.Values.ToDictionary(weed => weed.Id, Called))
            .Declare("crops", knowledge.Crops.Keys)
            .Declare("practices", knowledge.Practices.Keys)
            .Declare("treatments", knowledge.Treatments.Keys)
            .Declare("actions", knowledge.Practices.Keys.Concat(knowledge.Treatments.Keys))
            .Declare("past-treatments", [.. knowledge.Treatments.Keys, .. knowledge.GoneIds()])
            .Declare("active-ids", knowledge.Ingredients.Keys)
            .Declare(
                "actives",
                knowledge.Actives(),
                knowledge.Ingredients.Values.ToDictionary(active => active.Name, Called, StringComparer.Ordinal)
            )
            .Declare("groups", knowledge.Groups())
            .Declare("rate-units", knowledge.RateUnits())
            .Declare("regions", knowledge.Regions.Keys)
            .Declare("findings", knowledge.Findings.Keys)
            .Declare("grades", knowledge.Scale.Keys)
            .Declare("judgements", knowledge.Judgements.Select(judgement => judgement.Id))
            .Declare("prices", knowledge.Prices.Keys)
            .Declare("questions", knowledge.Questions.Select(question => question.Id))
            .Declare("sources", SourcesOf(knowledge));
        foreach (Question question in knowledge.Questions)
            words.Declare(LexiconBuilder.AnswersTo + question.Id, question.Choices.Select(choice => choice.Id));
        foreach ((string id, WordList list) in knowledge.Vocabulary)
            words.Declare(LexiconBuilder.Lists + id, list.Words.Select(word => word.Key));
        return words.DeclareTargets(knowledge.Weeds.Values.SelectMany(weed => weed.RatedAs)).Build();
    }

    private static IEnumerable<string> Called(ActiveIngredient active) =>
        [active.Name, active.Id, .. active.AlsoCalled];

    private static IEnumerable<string> Called(Weed weed) =>
        weed.IsUnnamed ? [weed.Name, .. weed.AlsoCalled] : [weed.Name, .. weed.AlsoCalled, weed.Scientific];

    // An advice is drawn up without the list of sources: their keys are then held against nothing.
    private static IEnumerable<string>? SourcesOf(KnowledgeBase knowledge) =>
        knowledge.Sources.Count > SourceReader.Always.Length ? knowledge.Sources.Keys : null;
}
