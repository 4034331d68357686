namespace WeedAdvisor;

/// <summary>What the screens are to be opened on.</summary>
/// <param name="Folders">The folders of the knowledge.</param>
/// <param name="Labels">The label book that the command line names; null when it names none.</param>
/// <param name="Visit">The file of the visit to go on with; null for a new visit of today.</param>
public sealed record ScreensAsked(KnowledgeFolders Folders, string? Labels, string? Visit);
