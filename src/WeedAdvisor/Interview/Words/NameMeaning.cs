using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Words;

/// <summary>Whether a typed name means one record or may mean one of several, and what tells those apart.</summary>
public static class NameMeaning
{
    /// <summary>
    /// The one record that is meant: the only one found, or the one whose own id or name was typed whole. A whole other
    /// name will do when no record found beside it carries the same words: <c>oxalis</c> names one weed, but it is the
    /// first word of another's name too. Null when several may be meant, or none was found.
    /// </summary>
    /// <param name="hits">The records found.</param>
    /// <param name="typed">What was typed.</param>
    public static NameHit? Sole(IReadOnlyList<NameHit> hits, string typed)
    {
        if (hits.Count < 2)
            return hits.Count == 0 ? null : hits[0];
        string folded = NearWords.Fold(typed);
        if (folded.Length == 0)
            return null;
        NameHit[] whole = [.. hits.Where(hit => IsOwn(hit, folded) || IsOther(hit, folded))];
        if (whole is not [var one])
            return null;
        return IsOwn(one, folded) || !hits.Any(hit => hit != one && Carries(hit, folded)) ? one : null;
    }

    /// <summary>
    /// What tells weeds apart: the tells of their records between any two of them, else how to know each.
    /// </summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="weeds">Ids of the weeds.</param>
    public static ImmutableArray<string> Apart(KnowledgeBase knowledge, IReadOnlyList<string> weeds)
    {
        var tells = new List<string>();
        foreach (string id in weeds)
        {
            if (!knowledge.Weeds.TryGetValue(id, out Weed? weed))
                continue;
            string[] told = [.. weed.LookAlikes.Where(like => weeds.Contains(like.Weed)).Select(like => like.Tell)];
            foreach (string tell in told.Length > 0 ? told : [$"{weed.Name}: {weed.Identify}"])
            {
                if (!tells.Contains(tell))
                    tells.Add(tell);
            }
        }

        return [.. tells];
    }

    private static bool IsOwn(NameHit hit, string folded) => hit.Id == folded || NearWords.Fold(hit.Name) == folded;

    private static bool IsOther(NameHit hit, string folded) => hit.Also is { } also && NearWords.Fold(also) == folded;

    private static bool Carries(NameHit hit, string folded) =>
        NearWords.HasWords(NearWords.Fold(hit.Name), folded)
        || (hit.Also is { } also && NearWords.HasWords(NearWords.Fold(also), folded));
}
