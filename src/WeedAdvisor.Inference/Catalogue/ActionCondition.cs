using System.Collections.Immutable;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Catalogue;

/// <summary>
/// What a judgement asks of an action, resolved as far as the catalogue alone can: the fixed tests are two sets, made
/// when the knowledge is loaded; what is left are tests on variables of the case. Safe to share between threads.
/// </summary>
internal sealed class ActionCondition
{
    private readonly Extent _fixed;
    private readonly ImmutableArray<(ActionColumn Column, AttributeTest Test)> _open;
    private readonly ImmutableArray<ActionFact> _actions;
    private readonly bool _joinsItself;

    private ActionCondition(
        Pattern.Fact pattern,
        Extent sets,
        ImmutableArray<(ActionColumn, AttributeTest)> open,
        ImmutableArray<ActionFact> actions
    )
    {
        Pattern = pattern;
        _fixed = sets;
        _open = open;
        _actions = actions;
        Binds = pattern.Tests.Any(one => one.Test is AttributeTest.Variable { Binds: true });
        _joinsItself = Binds && pattern.Tests.Any(one => Variables.In(one.Test).Any(used => BoundIn(pattern, used)));
    }

    /// <summary>The pattern.</summary>
    public Pattern.Fact Pattern { get; }

    /// <summary>Whether it gives a name to an attribute of the action.</summary>
    public bool Binds { get; }

    /// <summary>Resolves a pattern.</summary>
    public static ActionCondition Of(Pattern.Fact pattern, ActionIndex index)
    {
        ActionSet kind = index.Of(pattern.Kind);
        var sets = new Extent(kind, kind);
        var open = ImmutableArray.CreateBuilder<(ActionColumn, AttributeTest)>();
        foreach (AttributeCondition condition in pattern.Tests)
        {
            if (Variables.In(condition.Test).Any())
                open.Add((index.ColumnOf(condition.Attribute), condition.Test));
            else
                sets = sets.And(index.Of(condition));
        }

        return new ActionCondition(pattern, sets, open.ToImmutable(), index.Actions);
    }

    /// <summary>Which actions pass in a case.</summary>
    /// <param name="bindings">What the variables of the case stand for.</param>
    public Extent Of(Bindings bindings)
    {
        if (_joinsItself)
            return OneByOne(bindings);
        Extent passing = _fixed;
        foreach ((ActionColumn column, AttributeTest test) in _open)
            passing = passing.And(column.Of(test, bindings));
        return passing;
    }

    // Two attributes of one action are held against each other: only each action by itself can tell.
    private Extent OneByOne(Bindings bindings)
    {
        Truth[] truths =
        [
            .. _actions.Select(
                (action, place) =>
                    _fixed.Perhaps.Contains(place) ? PatternTruth.Of(Pattern, action, bindings).Truth : Truth.No
            ),
        ];
        return new Extent(
            ActionSet.Where(truths.Length, place => truths[place] == Truth.Yes),
            ActionSet.Where(truths.Length, place => truths[place] != Truth.No)
        );
    }

    private static bool BoundIn(Pattern.Fact pattern, string name) =>
        pattern.Tests.Any(one => one.Test is AttributeTest.Variable { Binds: true } bound && bound.Name == name);
}
