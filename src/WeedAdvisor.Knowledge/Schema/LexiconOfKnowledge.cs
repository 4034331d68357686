using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>The words that a visit may use, from knowledge that has been read.</summary>
internal static class LexiconOfKnowledge
{
    /// <summary>The lexicon of the knowledge, as far as visits need it.</summary>
    public static Lexicon Of(KnowledgeBase knowledge)
    {
        var words = new Dictionary<string, ValidWords>(StringComparer.Ordinal)
        {
            ["weeds"] = new("the id of a weed", knowledge.Weeds.Keys)
            {
                Names = knowledge.Weeds.Values.ToDictionary(
                    weed => weed.Id,
                    IEnumerable<string> (weed) => [weed.Name, .. weed.AlsoCalled, weed.Scientific]
                ),
            },
            ["crops"] = new("the id of a crop", knowledge.Crops.Keys),
            ["treatments"] = new("the id of a treatment", knowledge.Treatments.Keys),
            ["past-treatments"] = new("the id of a treatment", [.. knowledge.Treatments.Keys, .. knowledge.GoneIds()]),
            ["actives"] = new("the name of an active", knowledge.Actives())
            {
                Names = knowledge.Ingredients.Values.ToDictionary(
                    active => active.Name,
                    IEnumerable<string> (active) => [active.Name, active.Id, .. active.AlsoCalled]
                ),
            },
            ["groups"] = new("a site-of-action group of an active", knowledge.Groups()),
            ["rate-units"] = new("a unit in which records give a rate", knowledge.RateUnits()),
            ["regions"] = new("the id of a region", knowledge.Regions.Keys),
            ["questions"] = new("the id of a question", knowledge.Questions.Select(question => question.Id)),
        };
        foreach (Question question in knowledge.Questions)
            words[$"answers:{question.Id}"] = new(
                $"an answer to '{question.Id}'",
                question.Choices.Select(choice => choice.Id)
            );
        foreach ((string id, WordList list) in knowledge.Vocabulary)
            words[$"list:{id}"] = new($"a word of list '{id}'", list.Words.Select(word => word.Key));
        return new Lexicon(words);
    }
}
