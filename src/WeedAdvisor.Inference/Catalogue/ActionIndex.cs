using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Catalogue;

/// <summary>
/// The actions of the catalogue in ordinal order, and which of them pass a test. It is built while the rules are
/// compiled; the conditions that it gives out share no state with it.
/// </summary>
internal sealed class ActionIndex
{
    private readonly Dictionary<AttributeCondition, Extent> _tested = [];
    private readonly Dictionary<string, ActionColumn> _columns = new(StringComparer.Ordinal);
    private readonly Dictionary<FactKind, ActionSet> _kinds = [];

    /// <summary>An index of the actions of a catalogue.</summary>
    public ActionIndex(IEnumerable<ActionFact> catalogue)
    {
        Actions = [.. catalogue.OrderBy(action => action.Key, StringComparer.Ordinal)];
        Matched = [.. Actions.Select(action => new Matched.One(action))];
    }

    /// <summary>The actions, in ordinal order of key; a set names them by their place here.</summary>
    public ImmutableArray<ActionFact> Actions { get; }

    /// <summary>The same, as what a pattern matched.</summary>
    public ImmutableArray<Matched.One> Matched { get; }

    /// <summary>The actions of a kind.</summary>
    public ActionSet Of(FactKind kind)
    {
        if (!_kinds.TryGetValue(kind, out ActionSet set))
            _kinds[kind] = set = ActionSet.Where(Actions.Length, place => PatternTruth.IsOfKind(Actions[place], kind));
        return set;
    }

    /// <summary>The actions that pass a test in which no variable of the case stands.</summary>
    public Extent Of(AttributeCondition condition)
    {
        if (_tested.TryGetValue(condition, out Extent extent))
            return extent;
        Truth[] truths =
        [
            .. Actions.Select(action => TestTruth.Of(condition.Test, action.Read(condition.Attribute), Bindings.None)),
        ];
        return _tested[condition] = new Extent(
            ActionSet.Where(truths.Length, place => truths[place] == Truth.Yes),
            ActionSet.Where(truths.Length, place => truths[place] != Truth.No)
        );
    }

    /// <summary>An attribute of all actions, laid out for tests on variables.</summary>
    public ActionColumn ColumnOf(string attribute)
    {
        if (!_columns.TryGetValue(attribute, out ActionColumn? column))
            _columns[attribute] = column = ActionColumn.Of(attribute, Actions);
        return column;
    }
}
