using NRules;
using WeedAdvisor.Inference.Catalogue;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;

namespace WeedAdvisor.Inference.Engine;

/// <summary>One area at a time in the engine. Not safe to share between threads.</summary>
internal sealed class EngineSession(ISession session, MatchKeeper keeper, ActionIndex index, int firingCap)
{
    private Dictionary<string, Fact> _facts = new(StringComparer.Ordinal);
    private Dictionary<Type, FactList> _lists = [];

    /// <summary>
    /// Puts the facts of an area in place of the last ones: what is gone is retracted, what is new inserted, what says
    /// something else updated, the rest left alone. Returns everything that now follows.
    /// </summary>
    /// <exception cref="InvalidOperationException">The rules did not come to rest: a defect in the knowledge or
    /// here.</exception>
    public AreaConclusions Change(IReadOnlyCollection<Fact> facts)
    {
        Dictionary<string, Fact> next = facts.ToDictionary(fact => fact.Key, StringComparer.Ordinal);
        Dictionary<Type, FactList> lists = FactTypes
            .Lists(facts, areOfCatalogue: false)
            .ToDictionary(list => list.GetType());
        object[] gone = [.. _facts.Values.Where(fact => !next.ContainsKey(fact.Key))];
        object[] fresh =
        [
            .. facts.Where(fact => !_facts.ContainsKey(fact.Key)),
            .. lists.Values.Where(list => !_lists.ContainsKey(list.GetType())),
        ];
        object[] changed =
        [
            .. facts.Where(fact => _facts.TryGetValue(fact.Key, out Fact? before) && !before.SaysTheSame(fact)),
            .. lists.Values.Where(list =>
                _lists.TryGetValue(list.GetType(), out FactList? before) && !before.SaysTheSame(list)
            ),
        ];
        if (gone.Length > 0)
            session.RetractAll(gone);
        if (changed.Length > 0)
            session.UpdateAll(changed);
        if (fresh.Length > 0)
            session.InsertAll(fresh);
        _facts = next;
        _lists = lists;

        int fired = session.Fire(firingCap);
        if (fired >= firingCap)
            throw new InvalidOperationException($"the judgements did not come to rest after {fired} conclusions");
        return new AreaConclusions(keeper.Kept, index);
    }
}
