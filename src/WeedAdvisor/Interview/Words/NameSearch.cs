using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Interview.Words;

/// <summary>A record found by one of its names.</summary>
/// <param name="Id">The record's id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Also">The other name that was found, or what else tells it apart; null when the name itself was
/// found.</param>
public sealed record NameHit(string Id, string Name, string? Also)
{
    /// <summary>The hit in one line.</summary>
    public override string ToString() => Also is null ? Name : $"{Name} ({Also})";
}

/// <summary>Finds weeds and treatments by any of their names.</summary>
public static class NameSearch
{
    private const string NotNamed = "not named yet";

    /// <summary>
    /// Weeds by common, other or scientific name, best match first; with nothing typed, all of them by name, the ones
    /// of the place first, broad kinds for what has no name yet last. Equally good matches go by how common the weed
    /// is: those of the place, then those that come up in the most climates, in the most places, in the most months. A
    /// misspelt name finds what is near when nothing else fits.
    /// </summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="place">The kind of place, when known.</param>
    public static ImmutableArray<NameHit> Weeds(KnowledgeBase knowledge, string text, string? place) =>
        Find(
            text,
            knowledge
                .Weeds.Values.OrderBy(weed => weed.IsUnnamed)
                .ThenBy(weed => place is not null && weed.Places.Contains(place) ? 0 : 1)
                .ThenByDescending(weed => text.Length == 0 ? 0 : weed.Emergence.Values.Count(months => !months.IsEmpty))
                .ThenByDescending(weed => text.Length == 0 ? 0 : weed.Places.Count)
                .ThenByDescending(weed => text.Length == 0 ? 0 : weed.Emergence.Values.Sum(months => months.Length))
                .ThenBy(weed => weed.Name, StringComparer.OrdinalIgnoreCase)
                .Select(weed => new Named(
                    weed.Id,
                    weed.Name,
                    weed.IsUnnamed ? NotNamed : weed.Scientific,
                    [.. weed.AlsoCalled, weed.Id]
                ))
        );

    /// <summary>
    /// Treatments by name or active, best match first, those of one active before mixtures; with nothing typed, all of
    /// them by name.
    /// </summary>
    public static ImmutableArray<NameHit> Treatments(KnowledgeBase knowledge, string text) =>
        Find(text, NamedTreatments(knowledge, text));

    /// <summary>The same with what may not be used any more, which an earlier use may still have been.</summary>
    public static ImmutableArray<NameHit> UsedBefore(KnowledgeBase knowledge, string text) =>
        Find(
            text,
            NamedTreatments(knowledge, text)
                .Concat(
                    knowledge
                        .Gone()
                        .Select(active => new Named(
                            active.Id,
                            $"{active.Name}, withdrawn",
                            string.Join(", ", active.AlsoCalled.Prepend(active.Name)),
                            [.. active.AlsoCalled, active.Name, active.Id]
                        ))
                )
        );

    private static IEnumerable<Named> NamedTreatments(KnowledgeBase knowledge, string text) =>
        knowledge
            .Treatments.Values.OrderBy(treatment => text.Length == 0 ? 0 : treatment.Actives.Length)
            .ThenBy(treatment => treatment.Name, StringComparer.OrdinalIgnoreCase)
            .Select(treatment => new Named(
                treatment.Id,
                treatment.Name,
                string.Join(" + ", treatment.Actives.Select(active => active.Name)),
                [.. treatment.Actives.Select(active => active.Name), treatment.Id]
            ));

    private static ImmutableArray<NameHit> Find(string text, IEnumerable<Named> records)
    {
        string folded = NearWords.Fold(text);
        if (folded.Length == 0)
            return [.. records.Select(record => new NameHit(record.Id, record.Name, record.Second))];
        Named[] all = [.. records];
        ImmutableArray<NameHit> hits =
        [
            .. all.Select(record => (record, Best: record.Best(folded)))
                .Where(found => found.Best.Rank < int.MaxValue)
                .OrderBy(found => found.Best.Rank)
                .Select(found => found.record.Hit(found.Best.Name)),
        ];
        return hits.IsEmpty ? Near(all, folded) : hits;
    }

    private static ImmutableArray<NameHit> Near(Named[] all, string folded) =>
        NearestWord.Of(folded, all.SelectMany(record => record.Words)) is { } near
            ? [.. all.Where(record => record.Words.Contains(near)).Select(record => record.Hit(record.Name))]
            : [];

    private sealed record Named(string Id, string Name, string Second, ImmutableArray<string> Others)
    {
        public IEnumerable<string> Names => Others.Prepend(Second).Prepend(Name);

        /// <summary>Every name and every word in one, folded.</summary>
        public IEnumerable<string> Words =>
            Names
                .Select(NearWords.Fold)
                .SelectMany(name => name.Split('-').Append(name))
                .Where(word => word.Length > 2);

        public NameHit Hit(string by) => new(Id, Name, by == Name || by == Id ? Second : by);

        public (int Rank, string Name) Best(string folded)
        {
            (int Rank, string Name) best = (int.MaxValue, Name);
            int kind = 0;
            foreach (string name in Names)
            {
                int rank = Match(NearWords.Fold(name), folded) is { } match ? (match * 2) + kind : int.MaxValue;
                if (rank < best.Rank)
                    best = (rank, name);
                kind = 1;
            }

            return best;
        }

        private static int? Match(string name, string folded) =>
            name == folded ? 0
            : name.StartsWith(folded, StringComparison.Ordinal) ? 1
            : name.Contains("-" + folded, StringComparison.Ordinal) ? 2
            : name.Contains(folded, StringComparison.Ordinal) ? 3
            : null;
    }
}
