namespace WeedAdvisor;

/// <summary>The folders that knowledge is read from.</summary>
/// <param name="Folder">The knowledge folder.</param>
/// <param name="Local">The folder of a nursery's own records, laid over it; null for none.</param>
public sealed record KnowledgeFolders(string Folder, string? Local);
