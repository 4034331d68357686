using System.Globalization;
using System.Text;

namespace WeedAdvisor.Reports.Text;

/// <summary>
/// How many columns letters take on a page of fixed columns: two for the wide ones of East Asian scripts and for
/// pictographs (Unicode Standard Annex 11, wide and fullwidth), none for marks that stand over another letter.
/// </summary>
public static class ColumnWidth
{
    // Blocks of Unicode whose letters are wide, first and last.
    private static readonly (int First, int Last)[] s_wide =
    [
        (0x1100, 0x115F),
        (0x231A, 0x231B),
        (0x2329, 0x232A),
        (0x23E9, 0x23EC),
        (0x2E80, 0x303E),
        (0x3041, 0x33FF),
        (0x3400, 0x4DBF),
        (0x4E00, 0x9FFF),
        (0xA000, 0xA4CF),
        (0xA960, 0xA97F),
        (0xAC00, 0xD7A3),
        (0xF900, 0xFAFF),
        (0xFE30, 0xFE6F),
        (0xFF00, 0xFF60),
        (0xFFE0, 0xFFE6),
        (0x16FE0, 0x18DFF),
        (0x1B000, 0x1B2FF),
        (0x1F300, 0x1F64F),
        (0x1F680, 0x1F6FF),
        (0x1F900, 0x1F9FF),
        (0x1FA70, 0x1FAFF),
        (0x20000, 0x3FFFD),
    ];

    /// <summary>Columns of a text.</summary>
    public static int Of(string text)
    {
        foreach (char c in text)
        {
            if (c >= '\u0300')
                return Counted(text);
        }

        return text.Length;
    }

    /// <summary>Columns of one letter.</summary>
    public static int Of(Rune rune)
    {
        if (rune.Value < 0x300)
            return 1;
        // Vowels and finals of Hangul stand in the block of the letter before them.
        if (rune.Value is >= 0x1160 and <= 0x11FF)
            return 0;
        return Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
            _ => IsWide(rune.Value) ? 2 : 1,
        };
    }

    /// <summary>How many characters from the start of a text fit into columns; at least one letter.</summary>
    public static int Fitting(string text, int columns)
    {
        int taken = 0,
            characters = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            taken += Of(rune);
            if (taken > columns && characters > 0)
                break;
            characters += rune.Utf16SequenceLength;
        }

        return Math.Min(characters, text.Length);
    }

    /// <summary>A text with blanks behind it up to a number of columns.</summary>
    public static string PadRight(string text, int columns) => text + new string(' ', Math.Max(0, columns - Of(text)));

    /// <summary>A text with blanks before it up to a number of columns.</summary>
    public static string PadLeft(string text, int columns) => new string(' ', Math.Max(0, columns - Of(text))) + text;

    private static int Counted(string text)
    {
        int columns = 0;
        foreach (Rune rune in text.EnumerateRunes())
            columns += Of(rune);
        return columns;
    }

    private static bool IsWide(int letter)
    {
        foreach ((int first, int last) in s_wide)
        {
            if (letter <= last)
                return letter >= first;
        }

        return false;
    }
}
