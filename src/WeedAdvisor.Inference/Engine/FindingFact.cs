using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// A finding in the engine: one fact for each id, always there, with whatever makes it just now. Rules that make the
/// finding add to it and take away again; rules that build on it see one fact that changes.
/// </summary>
/// <param name="id">The finding's id.</param>
internal sealed class FindingFact(string id)
{
    private readonly Dictionary<object, FindingConclusion> _makers = [];
    private ImmutableArray<FindingConclusion> _evidence = [];

    /// <summary>The finding's id.</summary>
    public string Id { get; } = id;

    /// <summary>What makes it, in ordinal order.</summary>
    public ImmutableArray<FindingConclusion> Evidence =>
        _evidence.IsDefault ? _evidence = [.. _makers.Values.Order()] : _evidence;

    /// <summary>Whether it holds.</summary>
    public Truth Truth => Evidences.TruthOf(Evidence);

    /// <summary>A match makes it, or makes it in another way than before.</summary>
    public void Put(object match, FindingConclusion made)
    {
        _makers[match] = made;
        _evidence = default;
    }

    /// <summary>A match makes it no longer.</summary>
    public void Take(object match)
    {
        if (_makers.Remove(match))
            _evidence = default;
    }
}
