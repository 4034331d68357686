using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>One rule in a file of its own, read with the rest of the fixture.</summary>
internal static class Rule
{
    public static Outcome<KnowledgeBase, Problem> Load(string consequence, params string[] patterns) =>
        Load(
            $"- id: a-rule\n  when:\n{string.Concat(patterns.Select(pattern => $"    - {pattern}\n"))}  "
                + $"{consequence}\n  source: [book]\n"
        );

    public static Outcome<KnowledgeBase, Problem> Load(string text) =>
        new FixtureKnowledge().With("judgements/topic.yaml", text).Load();
}
