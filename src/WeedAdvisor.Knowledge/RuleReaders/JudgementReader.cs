using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>Reads the rules of one topic.</summary>
/// <param name="topic">The topic: the file's name without its ending.</param>
/// <param name="site">What a site pattern can test.</param>
internal sealed class JudgementReader(string topic, TestableSet site)
{
    /// <summary>A rule, or null when it has no usable consequence; the problems are in the context.</summary>
    public Judgement? Read(MappingReader map)
    {
        var variables = new VariableScope(map.Context);
        string id = map.Id();
        ImmutableArray<Pattern> when = map.Required("when") is { } patterns
            ? new PatternReader(map.Context, site, variables).ReadAll(patterns)
            : [];
        Consequence? then = ConsequenceReader.Read(map, when.Count(IsAction), variables);
        string because = map.Text("because");
        var slots = new SlotCheck(map.Context, when, variables);
        slots.Check(map.Optional("because"));
        slots.Check(map.Optional("caution"));
        slots.Check(map.Optional(LiftReader.NotYet));
        slots.Check(map.Optional(LiftReader.NotThisWay));
        variables.Finish();
        ImmutableArray<string> sources = map.Sources();
        ImmutableArray<string> memory = map.FinishWithMemory();
        return then is null ? null : new Judgement(id, topic, when, then, because, sources, memory, map.Where);
    }

    private static bool IsAction(Pattern pattern) =>
        pattern is Pattern.Fact { Kind: FactKind.Practice or FactKind.Treatment or FactKind.Action };
}
