using System.Text.RegularExpressions;

namespace WeedAdvisor.Frozen;

/// <summary>Takes out of an output what differs without meaning anything: versions, stamps and paths.</summary>
internal static partial class Plain
{
    /// <summary>The output with fixed words in their place.</summary>
    public static string Of(string text)
    {
        string plain = Stamp().Replace(text.ReplaceLineEndings("\n"), "STAMP");
        plain = Hash().Replace(plain, "\"HASH\"");
        plain = Version().Replace(plain, "\"version\": \"VERSION\"");
        return Folder().Replace(plain, "FOLDER/");
    }

    [GeneratedRegex(@"\d+\.\d+\.\d+\+[0-9a-f]{6,64}(\+\w+-[0-9a-f]+)*")]
    private static partial Regex Stamp();

    [GeneratedRegex("\"[0-9a-f]{64}\"")]
    private static partial Regex Hash();

    [GeneratedRegex("\"version\": \"[^\"]*\"")]
    private static partial Regex Version();

    [GeneratedRegex(@"/(tmp|work|home|root)/[^\s""']*/")]
    private static partial Regex Folder();
}
