using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>What is held of each country's law, topic by topic, and what is not.</summary>
internal static class LawSection
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        ImmutableArray<Judgement> rules = [.. knowledge.Judgements.Where(rule => rule.Law is not null)];
        string[] countries = [.. rules.Select(rule => rule.Law!.Country).Distinct().Order(StringComparer.Ordinal)];
        page.Heading(2, "Law by country");
        page.Paragraph(
            "Each file in `rules/law/` holds what a cited text says of one country and says of the rest whom to ask. "
                + "Where the register is not held every chemical waits for the grower's label book."
        );
        WordList? topics = knowledge.Vocabulary.GetValueOrDefault("law-topic");
        page.Table(
            "Nothing.",
            ["topic", .. countries],
            [
                .. (countries.Length == 0 ? [] : topics?.Words ?? []).Select(topic =>
                    (string[])[topic.Value, .. countries.Select(country => Held(rules, country, topic.Key))]
                ),
            ]
        );
    }

    private static string Held(ImmutableArray<Judgement> rules, string country, string topic)
    {
        LawAnswer[] answers =
        [
            .. rules.Select(rule => rule.Law!).Where(law => law.Country == country && law.Topics.Contains(topic)),
        ];
        int held = answers.Count(law => law.IsHeld);
        string told = Figures.Count(held, "rule", "rules");
        return (held, answers.Length - held) switch
        {
            (0, _) => "ask",
            (_, 0) => told,
            _ => $"{told}, for the rest ask",
        };
    }
}
