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
    public Judgement? Read(MappingReader map) => Read(map, [], null);

    /// <summary>The same with conditions that stand before its own.</summary>
    /// <param name="map">The rule.</param>
    /// <param name="before">The conditions.</param>
    /// <param name="law">What it answers of a country's law; null for a rule of the trade.</param>
    public Judgement? Read(MappingReader map, ImmutableArray<Pattern> before, LawAnswer? law)
    {
        var variables = new VariableScope(map.Context);
        string id = map.Id();
        ImmutableArray<Pattern> when = (before.IsEmpty ? map.Required("when") : map.Optional("when")) is { } patterns
            ? [.. before, .. new PatternReader(map.Context, site, variables).ReadAll(patterns)]
            : before;
        Consequence? then = ConsequenceReader.Read(map, when.Count(FactKinds.IsOnAction), variables);
        string because = map.Text("because");
        var slots = new SlotCheck(map.Context, when, variables);
        slots.Check(map.Optional("because"));
        slots.Check(map.Optional("caution"));
        slots.Check(map.Optional(LiftReader.NotYet));
        slots.Check(map.Optional(LiftReader.NotThisWay));
        variables.Finish();
        ImmutableArray<string> sources = map.Sources();
        ImmutableArray<string> memory = map.FinishWithMemory();
        return then is null
            ? null
            : new Judgement(id, topic, ActionLast(map, when), then, because, sources, memory, map.Where) { Law = law };
    }

    // What is asked of the case comes first and of the action last, whatever the order in the file: a case is matched
    // once and speaks for all actions that fit. So nothing of the case can be held against an attribute of the action.
    private static ImmutableArray<Pattern> ActionLast(MappingReader map, ImmutableArray<Pattern> when)
    {
        Pattern? action = when.FirstOrDefault(FactKinds.IsOnAction);
        if (action is not Pattern.Fact fact || when.Count(FactKinds.IsOnAction) > 1 || when[^1] == action)
            return when;
        string[] bound = [.. Variables.BoundBy(fact)];
        if (when.SelectMany(Variables.In).FirstOrDefault(bound.Contains) is { } used)
        {
            map.Context.Report(
                map.Optional("when")!,
                $"the variable ${used} of the action, used after it",
                $"the comparison on the action itself, as in '{{ called: ${used}, more-than: $days }}'"
            );
        }

        return [.. when.Remove(action), action];
    }
}
