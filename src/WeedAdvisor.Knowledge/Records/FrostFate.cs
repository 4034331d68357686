namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// What the first hard frosts of a winter (about -2 to -4 degrees Celsius) do to the green part of a weed in the open.
/// What comes back from below does so whatever becomes of the green part: <see cref="Weed.Underground"/>.
/// </summary>
public enum FrostFate
{
    /// <summary>Nobody said, or no source settles it: nothing may be counted on.</summary>
    NotKnown,

    /// <summary>What stands above the ground dies.</summary>
    Killed,

    /// <summary>It lives through, as a rosette, a mat or wood, and goes on when it is mild.</summary>
    Stands,
}

/// <summary>The words of a knowledge file for <see cref="FrostFate"/>.</summary>
public static class FrostWords
{
    /// <summary>The words that a file may have.</summary>
    public const string Notation = "words:killed|stands|not-known";

    /// <summary>What a word of the file means; not known where there is none.</summary>
    /// <param name="word">The word; null for none.</param>
    public static FrostFate Of(string? word) =>
        word switch
        {
            "killed" => FrostFate.Killed,
            "stands" => FrostFate.Stands,
            _ => FrostFate.NotKnown,
        };
}
