namespace WeedAdvisor.Asking;

/// <summary>How a line-by-line interview ended.</summary>
public enum AskEnding
{
    /// <summary>Everything said is in a file.</summary>
    Saved,

    /// <summary>The grower left with answers that are in no file; they are kept for the next start.</summary>
    Left,

    /// <summary>The input ended with answers that are in no file; they are kept for the next start.</summary>
    InputEnded,
}
