using System.Text;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>
/// The one place where a text becomes Markdown (CommonMark, pipe tables): no letter of it is taken for a mark, and none
/// that could not be is escaped.
/// </summary>
internal static class MarkdownLetters
{
    private static readonly string[] s_behind = ["](", "][", "]:"];

    private const string Anywhere = "\\`*<|~",
        Starting = "-+=#>";

    /// <summary>A line, as it stands at the start of a line.</summary>
    public static string Of(Line line) => Of(line.Text);

    /// <summary>A text, as it stands at the start of a line.</summary>
    public static string Of(string text) => Escaped(text, isStart: true);

    /// <summary>A text behind other letters of its line.</summary>
    public static string Within(string text) => Escaped(text, isStart: false);

    private static string Escaped(string text, bool isStart)
    {
        var escaped = new StringBuilder(text.Length + 8);
        string clean = Page.Clean(text).Trim();
        int digits = clean.TakeWhile(char.IsAsciiDigit).Count();
        // Behind a heading they would be taken for its end.
        int closing = clean.TrimEnd('#').Length;
        for (int i = 0; i < clean.Length; i++)
        {
            char letter = clean[i];
            // What would begin a list, a heading or a rule only does so at the start of a line.
            bool isMark =
                Anywhere.Contains(letter, StringComparison.Ordinal)
                || (isStart && i == 0 && Starting.Contains(letter, StringComparison.Ordinal))
                || (isStart && i > 0 && i == digits && letter is '.' or ')' && IsBlank(clean, i + 1))
                || i == closing
                || (letter == '_' && !(IsWord(clean, i - 1) && IsWord(clean, i + 1)))
                || (letter == '&' && (IsWord(clean, i + 1) || At(clean, i + 1) == '#'))
                || (letter == '[' && IsLink(clean, i));
            if (isMark)
                escaped.Append('\\');
            escaped.Append(letter);
        }

        return escaped.ToString();
    }

    // What stands in brackets is a link only with an address, another bracket or a colon behind it; what is nearly
    // empty may be a box to tick.
    private static bool IsLink(string text, int at)
    {
        int end = text.IndexOf(']', at);
        return end >= 0
            && (end <= at + 2 || s_behind.Any(mark => text.IndexOf(mark, at, StringComparison.Ordinal) >= 0));
    }

    private static bool IsBlank(string text, int at) => at >= text.Length || char.IsWhiteSpace(text[at]);

    private static bool IsWord(string text, int at) => char.IsLetterOrDigit(At(text, at));

    private static char At(string text, int at) => at >= 0 && at < text.Length ? text[at] : ' ';
}
