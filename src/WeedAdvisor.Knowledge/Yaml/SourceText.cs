using System.Buffers;
using System.Text;
using System.Text.Unicode;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>Turns the bytes of a file into text, or says why not: UTF-8 only, no control characters.</summary>
internal static class SourceText
{
    /// <summary>The most bytes that a knowledge file may have.</summary>
    public const int KnowledgeFileLimit = 256 * 1024;

    /// <summary>The most bytes that a visit file may have: a thousand areas and more.</summary>
    public const int VisitFileLimit = 4 * 1024 * 1024;

    // NUL would end the parser's stream silently, and escape sequences must not reach a terminal through a name.
    private static readonly SearchValues<char> s_controls = SearchValues.Create(Controls());

    /// <summary>The text of the bytes without a byte order mark, or a problem.</summary>
    public static string? Decode(string file, ReadOnlySpan<byte> bytes, out Problem? problem)
    {
        if (bytes.StartsWith("\uFEFF"u8))
            bytes = bytes[3..];
        char[] buffer = ArrayPool<char>.Shared.Rent(bytes.Length);
        try
        {
            OperationStatus status = Utf8.ToUtf16(
                bytes,
                buffer,
                out int read,
                out int written,
                replaceInvalidSequences: false
            );
            string text = new(buffer, 0, written);
            if (status == OperationStatus.Done)
                return Screened(file, text, out problem);
            problem = new Problem(After(file, text), $"a byte that is not UTF-8 (0x{bytes[read]:X2})", "text in UTF-8");
            return null;
        }
        finally
        {
            ArrayPool<char>.Shared.Return(buffer);
        }
    }

    /// <summary>The text itself, held to the same rules, or a problem.</summary>
    public static string? Accept(string file, string text, int limit, out Problem? problem)
    {
        if (text.Length > limit || Encoding.UTF8.GetByteCount(text) > limit)
        {
            problem = TooLarge(file, limit);
            return null;
        }

        return Screened(file, text.StartsWith('\uFEFF') ? text[1..] : text, out problem);
    }

    /// <summary>Whether the text holds a character that no terminal should be sent.</summary>
    public static bool HasControls(string text) => text.AsSpan().ContainsAny(s_controls);

    /// <summary>The size limit in words.</summary>
    public static Problem TooLarge(string file, int limit) =>
        new(Place.Whole(file), $"a file of more than {limit / 1024} KB", $"at most {limit / 1024} KB");

    private static string Controls()
    {
        var controls = new StringBuilder();
        for (char c = '\0'; c <= '\u009F'; c++)
        {
            if (char.IsControl(c) && c is not ('\t' or '\n' or '\r'))
                controls.Append(c);
        }

        return controls.ToString();
    }

    private static string? Screened(string file, string text, out Problem? problem)
    {
        int control = text.AsSpan().IndexOfAny(s_controls);
        problem =
            control < 0
                ? null
                : new Problem(
                    After(file, text.AsSpan(0, control)),
                    $"the control character U+{(int)text[control]:X4}",
                    "text without control characters"
                );
        return control < 0 ? text : null;
    }

    private static Place After(string file, ReadOnlySpan<char> before)
    {
        int line = 1 + before.Count('\n');
        return new Place(file, line, before.Length - before.LastIndexOf('\n'));
    }
}
