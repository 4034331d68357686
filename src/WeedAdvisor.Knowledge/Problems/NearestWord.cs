namespace WeedAdvisor.Knowledge.Problems;

/// <summary>
/// Finds the valid word that someone most likely meant. Distance is the number of letters to insert, delete, change,
/// or swap with their neighbour (Damerau 1964, Levenshtein 1966; the restricted form, in which no letter moves twice).
/// </summary>
public static class NearestWord
{
    // Longer texts are sentences, not slips of the finger.
    private const int LongestWord = 80;

    /// <summary>
    /// The nearest of the words, or null when none is near. Of equally near ones, the first in ordinal order.
    /// </summary>
    /// <param name="written">What was written.</param>
    /// <param name="words">The valid words, in any order.</param>
    public static string? Of(string written, IEnumerable<string> words)
    {
        if (written.Length is 0 or > LongestWord)
            return null;
        string? best = null;
        int least = Threshold(written) + 1;
        foreach (string word in words)
        {
            if (word.Length > LongestWord || Math.Abs(word.Length - written.Length) > least)
                continue;
            int distance = Distance(written, word);
            if (distance < least || (distance == least && best is not null && string.CompareOrdinal(word, best) < 0))
                (best, least) = (word, distance);
        }

        return best;
    }

    // A third of the letters, at most three: more is a different word.
    private static int Threshold(string written) => Math.Clamp(written.Length / 3, 1, 3);

    private static int Distance(string left, string right)
    {
        Span<int> beforeLast = stackalloc int[right.Length + 1];
        Span<int> last = stackalloc int[right.Length + 1];
        Span<int> now = stackalloc int[right.Length + 1];
        for (int j = 0; j <= right.Length; j++)
            last[j] = j;
        for (int i = 1; i <= left.Length; i++)
        {
            now[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int change = char.ToLowerInvariant(left[i - 1]) == char.ToLowerInvariant(right[j - 1]) ? 0 : 1;
                now[j] = Math.Min(Math.Min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    now[j] = Math.Min(now[j], beforeLast[j - 2] + 1);
            }

            Span<int> spare = beforeLast;
            beforeLast = last;
            last = now;
            now = spare;
        }

        return last[right.Length];
    }
}
