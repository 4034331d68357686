using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>Fills in what each crop is-a: itself and every group above it.</summary>
internal static class CropAncestry
{
    /// <summary>The crops with their ancestry; a crop above itself is a problem.</summary>
    public static ImmutableSortedDictionary<string, Crop> Of(
        ImmutableSortedDictionary<string, Crop> crops,
        ICollection<Problem> problems
    )
    {
        var whole = crops.ToBuilder();
        foreach ((string id, Crop crop) in crops)
        {
            HashSet<string> above = Above(crop, crops);
            if (above.Contains(id))
                problems.Add(new Problem(crop.Where, $"the crop '{id}' above itself", "groups without a circle"));
            whole[id] = crop with { IsA = WordSet.Of([id, .. above]) };
        }

        return whole.ToImmutable();
    }

    private static HashSet<string> Above(Crop crop, ImmutableSortedDictionary<string, Crop> crops)
    {
        var above = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>(crop.Parents);
        while (open.TryPop(out string? id))
        {
            if (!above.Add(id) || !crops.TryGetValue(id, out Crop? parent))
                continue;
            foreach (string next in parent.Parents)
                open.Push(next);
        }

        return above;
    }
}
