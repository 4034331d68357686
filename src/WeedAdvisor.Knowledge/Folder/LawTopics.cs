using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.RuleReaders;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>Sees to it that every country's file answers every topic, by rules or by whom to ask.</summary>
internal static class LawTopics
{
    private const string TopicList = "law-topic";
    private const string CountryList = "country";

    /// <summary>What is told where a topic is not held: one caution for each.</summary>
    public static IEnumerable<Judgement> NotHeld(IEnumerable<LawNotHeld> unheld, IReadOnlyCollection<WordList> lists) =>
        unheld
            .Where(one => one.Topic.Length > 0)
            .Select(one => new Judgement(
                LawReader.IdOfNotHeld(one.Country, one.Topic),
                $"law/{one.Country}",
                one.When,
                new Consequence.Caution(
                    $"{Sentence(TextOf(lists, TopicList, one.Topic))} is not held here for "
                        + $"{TextOf(lists, CountryList, one.Country)}: ask {one.Ask.TrimEnd('.')}."
                ),
                "No text of that country's law on it was read. What holds in another country does not hold there.",
                ["common-practice"],
                [],
                one.Where
            )
            {
                Law = new LawAnswer(one.Country, WordSet.Of([one.Topic]), IsHeld: false),
            });

    /// <summary>One problem for each topic that a file leaves open.</summary>
    public static IEnumerable<Problem> Unanswered(
        IEnumerable<LawFileRead> files,
        IReadOnlyCollection<Judgement> judgements,
        IReadOnlyCollection<WordList> lists
    )
    {
        ImmutableArray<string> topics = lists
            .FirstOrDefault(list => list.Id == TopicList)
            ?.Words.Select(word => word.Key)
            .ToImmutableArray()
            ?? [];
        return files.SelectMany(file =>
            topics.Except(AnsweredIn(file.Country)).Select(topic => Unanswered(file, topic))
        );

        IEnumerable<string> AnsweredIn(string country) =>
            judgements
                .Where(judgement => judgement.Law?.Country == country)
                .SelectMany(judgement => judgement.Law!.Topics);
    }

    private static Problem Unanswered(LawFileRead file, string topic) =>
        new(
            Place.Whole(file.File),
            $"nothing on '{topic}'",
            $"rules with 'topic: {topic}', or '- {{ topic: {topic}, not-held: whom to ask }}'"
        );

    private static string TextOf(IEnumerable<WordList> lists, string id, string word) =>
        lists.FirstOrDefault(list => list.Id == id)?.TextOf(word) ?? word;

    private static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
