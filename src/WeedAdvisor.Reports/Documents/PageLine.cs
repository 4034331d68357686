namespace WeedAdvisor.Reports.Documents;

/// <summary>A line that is ready to be shown.</summary>
/// <param name="Text">The text.</param>
/// <param name="Tone">How it is meant.</param>
/// <param name="Action">The action that can be opened from this line; null when there is none.</param>
public readonly record struct PageLine(string Text, Tone Tone, string? Action);
