using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Areas;

/// <summary>
/// The ground that is worked on in an area: pots, trays, a floor, a heap. By place, by the stock where pots may stand,
/// and by place where no stock stands: three lists of the vocabulary. A fourth says which ground is a verge.
/// </summary>
internal static class Grounds
{
    private const string OfPlace = "ground-of-place";
    private const string OfStock = "ground-of-stock";
    private const string WhenEmpty = "ground-when-empty";
    private const string Verges = "verge-ground";

    /// <summary>Word of list <c>ground</c>; null when the place is not told, or without such lists.</summary>
    /// <param name="place">Answer to the place.</param>
    /// <param name="stock">Answer to the stock.</param>
    /// <param name="isEmpty">Whether no stock stands there.</param>
    /// <param name="knowledge">The knowledge.</param>
    public static string? Of(string? place, string? stock, bool isEmpty, KnowledgeBase knowledge)
    {
        if (place is null)
            return null;
        string? empty = Word(WhenEmpty, place, knowledge);
        if (empty is not null && isEmpty)
            return empty;
        // A heap, a floor or a bank stays what it is, whatever stands beside it.
        return (empty is null ? null : Word(OfStock, stock, knowledge)) ?? Word(OfPlace, place, knowledge);
    }

    /// <summary>Whether strips and verges are what is worked on there: list <c>verge-ground</c>.</summary>
    /// <param name="ground">Word of list <c>ground</c>.</param>
    /// <param name="knowledge">The knowledge.</param>
    public static bool IsVerge(string ground, KnowledgeBase knowledge) => Word(Verges, ground, knowledge) is not null;

    private static string? Word(string list, string? word, KnowledgeBase knowledge) =>
        word is not null && knowledge.Vocabulary.TryGetValue(list, out WordList? words) && words.Contains(word)
            ? words.TextOf(word)
            : null;
}
