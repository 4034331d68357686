namespace WeedAdvisor.Interview.Pages;

/// <summary>Breaks text into lines that fit.</summary>
public static class Wrapping
{
    /// <summary>
    /// The text in lines of at most <paramref name="width"/> columns, broken between words where it can be.
    /// </summary>
    /// <param name="text">The text; line ends in it are kept.</param>
    /// <param name="width">Columns; fewer than 8 count as 8.</param>
    /// <param name="first">What the first line begins with.</param>
    /// <param name="rest">What every other line begins with.</param>
    public static IEnumerable<string> Lines(string text, int width, string first = "", string rest = "")
    {
        int columns = Math.Max(8, width);
        string start = first;
        foreach (string paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            string line = start;
            bool empty = true;
            foreach (string word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                string left = word;
                if (!empty && line.Length + 1 + left.Length > columns)
                {
                    yield return line;
                    (line, empty) = (rest, true);
                }

                while (line.Length + left.Length > columns && left.Length > 1)
                {
                    int fits = Math.Max(1, columns - line.Length);
                    yield return line + left[..fits];
                    (line, left) = (rest, left[fits..]);
                }

                line += empty ? left : " " + left;
                empty = false;
            }

            yield return line;
            start = rest;
        }
    }
}
