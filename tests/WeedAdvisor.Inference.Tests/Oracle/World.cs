using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>What an attribute is when everything is known: words, a number, or nothing at all.</summary>
/// <param name="Words">The words; empty for a number.</param>
/// <param name="Number">The number; null for words.</param>
internal sealed record Value(ImmutableArray<string> Words, decimal? Number)
{
    /// <summary>Words; no words are nothing.</summary>
    public static Value? Of(IEnumerable<string> words) => words.Any() ? new Value([.. words], null) : null;

    /// <summary>One word.</summary>
    public static Value Of(string word) => new([word], null);

    /// <summary>A flag.</summary>
    public static Value Of(bool flag) => Of(flag ? "true" : "false");

    /// <summary>A number; none is nothing.</summary>
    public static Value? Of(decimal? number) => number is null ? null : new Value([], number);
}

/// <summary>A thing with attributes; one that is not there is nothing.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Key">Its key.</param>
/// <param name="Attributes">What it is like.</param>
internal sealed record Thing(FactKind Kind, string Key, Dictionary<string, Value?> Attributes)
{
    /// <summary>An attribute.</summary>
    public Value? this[string attribute] => Attributes.GetValueOrDefault(attribute);
}

/// <summary>A case in which nothing is left open.</summary>
/// <param name="Things">Everything that patterns may be about.</param>
internal sealed record World(ImmutableArray<Thing> Things)
{
    /// <summary>Everything of a kind; an action is a practice or a treatment.</summary>
    public IEnumerable<Thing> Of(FactKind kind) =>
        Things.Where(thing =>
            thing.Kind == kind || (kind == FactKind.Action && thing.Kind is FactKind.Practice or FactKind.Treatment)
        );
}
