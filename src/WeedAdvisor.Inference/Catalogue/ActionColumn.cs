using System.Collections.Immutable;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Catalogue;

/// <summary>
/// One attribute of all actions, laid out by its words, so that a variable that stands for words finds the actions that
/// share one of them without looking at each. Made when the knowledge is loaded; safe to share between threads.
/// </summary>
internal sealed class ActionColumn
{
    private readonly string _attribute;
    private readonly ImmutableArray<ActionFact> _actions;
    private readonly ActionSet _all;
    private readonly ActionSet _open;
    private readonly Dictionary<string, ActionSet> _byWord;
    private readonly ImmutableArray<int> _others;

    private ActionColumn(string attribute, ImmutableArray<ActionFact> actions)
    {
        _attribute = attribute;
        _actions = actions;
        ImmutableArray<Reading> readings = [.. actions.Select(action => action.Read(attribute))];
        _all = ActionSet.Where(actions.Length, _ => true);
        _open = ActionSet.Where(actions.Length, place => readings[place] is Reading.Open { Domain: null });
        _byWord = readings
            .OfType<Reading.Words>()
            .SelectMany(words => words.Value)
            .Distinct(StringComparer.Ordinal)
            .ToDictionary(
                word => word,
                word =>
                    ActionSet.Where(actions.Length, place =>
                        readings[place] is Reading.Words words && words.Value.Contains(word)
                    ),
                StringComparer.Ordinal
            );
        _others = [.. Enumerable.Range(0, actions.Length).Where(place => IsOther(readings[place]))];
    }

    /// <summary>The column of an attribute.</summary>
    public static ActionColumn Of(string attribute, ImmutableArray<ActionFact> actions) => new(attribute, actions);

    /// <summary>Which actions pass a test on a variable.</summary>
    /// <param name="test">The test.</param>
    /// <param name="bindings">What the variables stand for.</param>
    public Extent Of(AttributeTest test, Bindings bindings)
    {
        if (test is not AttributeTest.Variable variable || bindings[variable.Name] is not Reading.Words words)
            return OneByOne(test, bindings);
        Extent shared = Sharing(words.Value, bindings[variable.Name]);
        return variable.Negated ? shared.Turned(_all) : shared;
    }

    // Few readings are neither words nor open nor absent: a number is never equal to a word, an open one with a domain
    // is looked at by itself.
    private Extent Sharing(WordSet words, Reading reading)
    {
        ActionSet sure = ActionSet.None(_actions.Length);
        foreach (string word in words)
        {
            if (_byWord.TryGetValue(word, out ActionSet with))
                sure = sure.Or(with);
        }

        ActionSet perhaps = sure.Or(_open);
        return _others.IsEmpty ? new Extent(sure, perhaps) : With(new Extent(sure, perhaps), reading);
    }

    private Extent With(Extent shared, Reading reading)
    {
        Dictionary<int, Truth> others = _others.ToDictionary(
            place => place,
            place => _actions[place].Read(_attribute).Shares(reading)
        );
        return new Extent(
            shared.Sure.Or(ActionSet.Where(_actions.Length, place => others.GetValueOrDefault(place) == Truth.Yes)),
            shared.Perhaps.Or(ActionSet.Where(_actions.Length, place => others.GetValueOrDefault(place) != Truth.No))
        );
    }

    private Extent OneByOne(AttributeTest test, Bindings bindings)
    {
        var truths = new Truth[_actions.Length];
        for (int place = 0; place < truths.Length; place++)
            truths[place] = TestTruth.Of(test, _actions[place].Read(_attribute), bindings);
        return new Extent(
            ActionSet.Where(truths.Length, place => truths[place] == Truth.Yes),
            ActionSet.Where(truths.Length, place => truths[place] != Truth.No)
        );
    }

    private static bool IsOther(Reading reading) => reading is Reading.Number or Reading.Open { Domain: not null };
}
