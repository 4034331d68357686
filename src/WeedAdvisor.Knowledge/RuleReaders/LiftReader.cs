using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>
/// Reads what ends a bar: <c>not-yet</c> with a day, an hour or a state, <c>not-this-way</c>, or neither.
/// </summary>
internal static class LiftReader
{
    /// <summary>The key of a bar that ends.</summary>
    public const string NotYet = "not-yet";

    /// <summary>The key of a bar that leaves the product another way.</summary>
    public const string NotThisWay = "not-this-way";

    private const decimal MostDays = 3660;

    private const string Expected =
        "a state in words, { hours: $left }, or { from: $now, to: $needed } or { from: $now, to: 56 } in days";

    /// <summary>What ends the rule's bar.</summary>
    public static Lift Read(MappingReader map, VariableScope variables)
    {
        Node? notYet = map.Optional(NotYet);
        string? otherWay = map.OptionalText(NotThisWay);
        if ((notYet is not null || otherWay is not null) && !map.Has("bar"))
            map.Context.Report(map.Node, $"'{NotYet}' or '{NotThisWay}' without a bar", "'bar' beside it");
        if (notYet is not null && otherWay is not null)
            map.Context.Report(map.Node, $"'{NotYet}' beside '{NotThisWay}'", "one of them");
        if (otherWay is not null)
            return new Lift.OtherWay(otherWay);
        return notYet switch
        {
            null => new Lift.Never(),
            ScalarNode => new Lift.State(map.OptionalText(NotYet) ?? ""),
            _ => map.OptionalMap(NotYet, Expected) is { } counted ? Counted(counted, variables) : new Lift.Never(),
        };
    }

    private static Lift Counted(MappingReader map, VariableScope variables)
    {
        string? hours = Variable(map, "hours", variables);
        string? from = Variable(map, "from", variables);
        decimal? fixedTo =
            map.Optional("to") is ScalarNode { Text: var text } && !text.StartsWith('$')
                ? map.OptionalNumber("to", 1, MostDays)
                : null;
        string? to = fixedTo is null ? Variable(map, "to", variables) : null;
        map.Finish();
        if (hours is not null && from is null && to is null)
            return new Lift.Hours(hours);
        if (hours is null && (to is not null || fixedTo is not null))
            return new Lift.Days(from, to, fixedTo);
        map.Context.Report(map.Node, map.Node.Described, Expected);
        return new Lift.Never();
    }

    private static string? Variable(MappingReader map, string key, VariableScope variables)
    {
        if (map.Optional(key) is not { } node)
            return null;
        if (node is ScalarNode scalar && VariableScope.IsVariable(scalar))
            return variables.Use(scalar, AttributeShape.Number);
        map.Context.Report(node, node.Described, "a variable of the rule that holds a number, such as $days");
        return null;
    }
}
