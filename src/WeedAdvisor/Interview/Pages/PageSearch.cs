using System.Collections.Immutable;
using System.Text;

namespace WeedAdvisor.Interview.Pages;

/// <summary>Places on a page of lines, wherever its lines were broken.</summary>
public static class PageSearch
{
    /// <summary>
    /// The next line, from the one behind a line round to it, in which words begin that may go on over lines below.
    /// </summary>
    /// <param name="lines">The page.</param>
    /// <param name="words">The words, with one blank between two; in any case.</param>
    /// <param name="at">The line to begin behind.</param>
    /// <returns>The line from 0; null when the words stand nowhere.</returns>
    public static int? Next(ImmutableArray<AdviceLine> lines, string words, int at)
    {
        var text = new StringBuilder();
        int[] starts = new int[lines.Length];
        for (int i = 0; i < lines.Length; i++)
        {
            starts[i] = text.Length;
            text.AppendJoin(' ', WordsOf(lines[i])).Append(' ');
        }

        string whole = text.ToString();
        var found = new List<int>();
        for (
            int place = whole.IndexOf(words, StringComparison.OrdinalIgnoreCase);
            place >= 0;
            place = whole.IndexOf(words, place + 1, StringComparison.OrdinalIgnoreCase)
        )
            found.Add(Array.FindLastIndex(starts, start => start <= place));
        return found.Where(line => line > at).Concat(found).Select(line => (int?)line).FirstOrDefault();
    }

    /// <summary>The line of a page, broken anew, that holds what began a line before.</summary>
    /// <param name="before">The page as it was broken before.</param>
    /// <param name="at">A line of it.</param>
    /// <param name="after">The page as it is broken now.</param>
    /// <returns>The line from 0; null when the page says something else now.</returns>
    public static int? Same(ImmutableArray<AdviceLine> before, int at, ImmutableArray<AdviceLine> after)
    {
        string[] old = [.. before.SelectMany(WordsOf)],
            now = [.. after.SelectMany(WordsOf)];
        if (before.IsEmpty || at >= before.Length || !old.SequenceEqual(now))
            return null;
        int passed = before.Take(at).Sum(line => WordsOf(line).Length),
            line = 0;
        for (int left = passed; line < after.Length - 1; line++)
        {
            left -= WordsOf(after[line]).Length;
            if (left < 0)
                break;
        }

        return line;
    }

    private static string[] WordsOf(AdviceLine line) => line.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
