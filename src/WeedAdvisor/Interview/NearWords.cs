using System.Text;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Interview;

/// <summary>Words as people type them: capitals, hyphens and apostrophes do not matter.</summary>
public static class NearWords
{
    /// <summary>Lower case, with one hyphen wherever something else than letters and digits stands.</summary>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (char c in text.Trim().ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(c))
                folded.Append(c);
            else if (c is not ('\'' or '’') && folded.Length > 0 && folded[^1] != '-')
                folded.Append('-');
        }

        return folded.ToString().TrimEnd('-');
    }

    /// <summary>Whether folded words stand together in a folded name, each of them whole.</summary>
    public static bool HasWords(string name, string words) =>
        $"-{name}-".Contains($"-{words}-", StringComparison.Ordinal);

    /// <summary>The word nearest to what was typed, as it is written in the list, or null when none is near.</summary>
    public static string? Nearest(string typed, IEnumerable<string> words)
    {
        string[] all = [.. words];
        string? near = NearestWord.Of(Fold(typed), all.Select(Fold));
        return near is null ? null : Array.Find(all, word => Fold(word) == near);
    }
}
