using System.Text;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>The one place where a text becomes Markdown (CommonMark): no letter of it is taken for a mark.</summary>
internal static class MarkdownLetters
{
    private const string Marks = "\\`*_[]<>|&~#";

    /// <summary>A line, as it stands at the start of a line.</summary>
    public static string Of(Line line) => Of(line.Text);

    /// <summary>A text, as it stands at the start of a line.</summary>
    public static string Of(string text)
    {
        var escaped = new StringBuilder(text.Length + 8);
        string clean = Page.Clean(text).Trim();
        int number = 0;
        while (number < clean.Length && char.IsAsciiDigit(clean[number]))
            number++;
        for (int i = 0; i < clean.Length; i++)
        {
            char letter = clean[i];
            // What would begin a list or a rule only does so at the start of a line.
            bool isStart = (i == 0 && letter is '-' or '+' or '=') || (i > 0 && i == number && letter is '.' or ')');
            if (Marks.Contains(letter, StringComparison.Ordinal) || isStart)
                escaped.Append('\\');
            escaped.Append(letter);
        }

        return escaped.ToString();
    }
}
