using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>
/// No two actives share a name: a visit, a limit or a label that names one must not mean another, and a nursery's own
/// folder must not give a shipped active another group under a new id.
/// </summary>
internal static class ActiveNames
{
    /// <summary>One problem for each active with a name that an earlier one has.</summary>
    public static IEnumerable<Problem> Shared(IEnumerable<ActiveIngredient> actives)
    {
        var first = new Dictionary<string, ActiveIngredient>(StringComparer.Ordinal);
        foreach (ActiveIngredient active in actives)
        {
            foreach (string name in active.AlsoCalled.Prepend(active.Name).Where(name => name.Length > 0))
            {
                if (first.TryAdd(FoldedWords.Of(name), active) || first[FoldedWords.Of(name)].Id == active.Id)
                    continue;
                yield return new Problem(
                    active.Where,
                    $"the active '{name}' a second time",
                    $"another name: {first[FoldedWords.Of(name)].Where} has this one"
                );
            }
        }
    }
}
