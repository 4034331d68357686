using System.Text;

namespace WeedAdvisor.Interview;

/// <summary>Words that a person may have meant.</summary>
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

    /// <summary>The word nearest to what was typed, or null when none is near: about one slip in three letters.</summary>
    public static string? Nearest(string typed, IEnumerable<string> words)
    {
        string folded = Fold(typed);
        string? best = null;
        int least = Math.Max(1, folded.Length / 3) + 1;
        foreach (string word in words)
        {
            int distance = Distance(folded, Fold(word), least);
            if (distance < least)
                (best, least) = (word, distance);
        }

        return best;
    }

    /// <summary>Letters to insert, drop, change or swap with their neighbour to turn one word into the other; at most <paramref name="cap"/>.</summary>
    public static int Distance(string left, string right, int cap)
    {
        if (Math.Abs(left.Length - right.Length) >= cap)
            return cap;
        int[] before = new int[right.Length + 1], last = new int[right.Length + 1], row = new int[right.Length + 1];
        for (int j = 0; j <= right.Length; j++)
            last[j] = j;
        for (int i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int change = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }

            (before, last, row) = (last, row, before);
        }

        return Math.Min(cap, last[right.Length]);
    }
}
