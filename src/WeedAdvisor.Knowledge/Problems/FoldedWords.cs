using System.Text;

namespace WeedAdvisor.Knowledge.Problems;

/// <summary>Names as people write them: capitals, hyphens and apostrophes do not matter.</summary>
public static class FoldedWords
{
    /// <summary>Lower case, with one hyphen wherever something else than letters and digits stands.</summary>
    public static string Of(string text)
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
    public static bool Has(string name, string words) => $"-{name}-".Contains($"-{words}-", StringComparison.Ordinal);
}
