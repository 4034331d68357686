using System.Collections.Immutable;
using System.Runtime.InteropServices;
using NRules;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;

namespace WeedAdvisor.Inference.Engine;

/// <summary>One area at a time in the engine. Not safe to share between threads.</summary>
internal sealed class EngineSession(ISession session, int firingCap)
{
    private Dictionary<string, Fact> _facts = new(StringComparer.Ordinal);

    /// <summary>
    /// Puts the facts of an area in place of the last ones: what is gone is retracted, what is new inserted, what says
    /// something else updated, the rest left alone. Returns every conclusion that now stands, in ordinal order of key.
    /// </summary>
    /// <exception cref="InvalidOperationException">The rules did not come to rest: a defect in the knowledge or here.</exception>
    public ImmutableArray<Conclusion> Change(IReadOnlyCollection<Fact> facts)
    {
        Dictionary<string, Fact> next = facts.ToDictionary(fact => fact.Key, StringComparer.Ordinal);
        Fact[] gone = [.. _facts.Values.Where(fact => !next.ContainsKey(fact.Key))];
        Fact[] fresh = [.. facts.Where(fact => !_facts.ContainsKey(fact.Key))];
        Fact[] changed =
            [.. facts.Where(fact => _facts.TryGetValue(fact.Key, out Fact? before) && !before.SaysTheSame(fact))];
        if (gone.Length > 0)
            session.RetractAll(gone);
        if (changed.Length > 0)
            session.UpdateAll(changed);
        if (fresh.Length > 0)
            session.InsertAll(fresh);
        _facts = next;

        int fired = session.Fire(firingCap);
        if (fired >= firingCap)
            throw new InvalidOperationException($"the judgements did not come to rest after {fired} conclusions");
        // As an enumerable: sorting the query itself would compile an expression each time.
        Conclusion[] all = [.. session.Query<Conclusion>().AsEnumerable()];
        Array.Sort(all);
        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }
}
