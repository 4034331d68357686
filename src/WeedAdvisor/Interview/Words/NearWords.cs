using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Interview.Words;

/// <summary>Words as people type them: capitals, hyphens and apostrophes do not matter.</summary>
public static class NearWords
{
    /// <summary>Lower case, with one hyphen wherever something else than letters and digits stands.</summary>
    public static string Fold(string text) => FoldedWords.Of(text);

    /// <summary>Whether folded words stand together in a folded name, each of them whole.</summary>
    public static bool HasWords(string name, string words) => FoldedWords.Has(name, words);

    /// <summary>The word nearest to what was typed, as it is written in the list, or null when none is near.</summary>
    public static string? Nearest(string typed, IEnumerable<string> words)
    {
        string[] all = [.. words];
        string? near = NearestWord.Of(Fold(typed), all.Select(Fold));
        return near is null ? null : Array.Find(all, word => Fold(word) == near);
    }
}
