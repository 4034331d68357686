using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>A parsed file and what it holds.</summary>
internal sealed record PlacedFile(FileRole Role, ParsedFile Parsed);
