using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge;

/// <summary>The name of a chemical as somebody says it, in the one form in which a visit keeps it.</summary>
public static class ChemicalWords
{
    /// <summary>The longest name that is taken, letters.</summary>
    public const int LongestName = 60;

    // In a file it would say that there is no value.
    private const string Nothing = "null";

    /// <summary>
    /// Lower-case words joined by hyphens, such as <c>acetic-acid</c> or <c>2-4-d</c>; null for what is no name.
    /// </summary>
    public static string? Of(string text)
    {
        string folded = FoldedWords.Of(text);
        return folded.Length is 0 or > LongestName || folded == Nothing ? null : folded;
    }
}
