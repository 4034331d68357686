using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conditions;

/// <summary>What the variables of a rule stand for in one match. A rule has a few: they are kept in a list.</summary>
internal readonly struct Bindings
{
    private readonly ImmutableArray<(string Name, Reading Reading)> _bound;

    private Bindings(ImmutableArray<(string Name, Reading Reading)> bound) => _bound = bound;

    /// <summary>No variable is bound.</summary>
    public static Bindings None { get; } = new([]);

    /// <summary>Reading by variable name.</summary>
    public IEnumerable<KeyValuePair<string, Reading>> Values =>
        Bound.Select(one => KeyValuePair.Create(one.Name, one.Reading));

    /// <summary>What a variable stands for; absent when it is not bound.</summary>
    public Reading this[string name] => PlaceOf(name) is var place and >= 0 ? _bound[place].Reading : Reading.Absent;

    /// <summary>One more variable, or another reading of one that is bound.</summary>
    public Bindings With(string name, Reading reading) =>
        new(PlaceOf(name) is var place and >= 0 ? _bound.SetItem(place, (name, reading)) : Bound.Add((name, reading)));

    /// <summary>With the names that a pattern gives to attributes of the fact that it matched.</summary>
    public Bindings With(Pattern.Fact pattern, Fact fact)
    {
        Bindings bound = this;
        foreach ((string attribute, AttributeTest test) in pattern.Tests)
        {
            if (test is AttributeTest.Variable { Binds: true } variable)
                bound = bound.With(variable.Name, fact.Read(attribute));
        }

        return bound;
    }

    private ImmutableArray<(string Name, Reading Reading)> Bound => _bound.IsDefault ? [] : _bound;

    private int PlaceOf(string name)
    {
        for (int i = 0; i < Bound.Length; i++)
        {
            if (_bound[i].Name == name)
                return i;
        }

        return -1;
    }
}
