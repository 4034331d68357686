using System.Globalization;
using System.Text;

namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>Writes text so that it is read back as it was: plainly when that is safe, else in quotes.</summary>
public static class ScalarText
{
    /// <summary>The text as a YAML scalar on one line.</summary>
    public static string Of(string text) => IsPlain(text) ? text : Quoted(text);

    // Stricter than YAML: a colon, a hash or a bracket is quoted wherever it stands, so nobody has to know the
    // exceptions.
    private static bool IsPlain(string text) =>
        char.IsLetter(text[0])
        && text[^1] != ' '
        && text.All(c => char.IsLetterOrDigit(c) || " .-/_()+".Contains(c, StringComparison.Ordinal));

    /// <summary>The text in double quotes, whatever it holds.</summary>
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"", text.Length + 2);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (i + 1 < text.Length && char.IsSurrogatePair(c, text[i + 1]))
            {
                quoted.Append(c).Append(text[++i]);
                continue;
            }

            quoted.Append(
                c switch
                {
                    '"' => "\\\"",
                    '\\' => "\\\\",
                    '\n' => "\\n",
                    '\t' => "\\t",
                    _ when char.IsControl(c) => " ",
                    _ when char.IsSurrogate(c) => "\uFFFD",
                    _ when IsInvisible(c) => $"\\u{(int)c:X4}",
                    _ => c.ToString(),
                }
            );
        }

        return quoted.Append('"').ToString();
    }

    // Line separators would break the line, and a person can't see the others.
    private static bool IsInvisible(char c) =>
        char.GetUnicodeCategory(c)
            is UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.OtherNotAssigned
                or UnicodeCategory.PrivateUse;
}
