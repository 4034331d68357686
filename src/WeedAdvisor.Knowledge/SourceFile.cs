using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.RecordReaders;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge;

/// <summary>Reads the sources of a knowledge folder alone: a sum cites them and needs nothing else of it.</summary>
public static class SourceFile
{
    /// <summary>The sources by key, those of every folder among them.</summary>
    /// <param name="folder">The knowledge folder.</param>
    /// <returns>The sources, or what is wrong with their file; nothing else of the folder is looked at.</returns>
    public static Outcome<ImmutableSortedDictionary<string, Source>, Problem> Load(string folder)
    {
        byte[]? bytes = FileBytes.Read(
            Path.Combine(folder, FileRoles.Sources),
            FileRoles.Sources,
            SourceText.KnowledgeFileLimit,
            out Problem? unread
        );
        if (bytes is null)
            return Outcome<ImmutableSortedDictionary<string, Source>, Problem>.Bad(unread!);
        var placed = new PlacedFile(
            FileRole.Sources,
            KnowledgeFolder.Parse(new FolderFile(FileRoles.Sources, FileRole.Sources, bytes))
        );
        FileContent content = new ContentReader(LexiconOfFolder.Of([placed])).Read(placed.Role, placed.Parsed);
        Problem[] problems = [.. placed.Parsed.Problems, .. content.Problems];
        return problems.Length == 0
            ? Outcome<ImmutableSortedDictionary<string, Source>, Problem>.Good(ByKey(content.Records.OfType<Source>()))
            : Outcome<ImmutableSortedDictionary<string, Source>, Problem>.Bad(Problem.InOrder(problems));
    }

    /// <summary>The sources of a file and those that need no entry, by key.</summary>
    internal static ImmutableSortedDictionary<string, Source> ByKey(IEnumerable<Source> ofFile)
    {
        var byKey = ImmutableSortedDictionary.CreateBuilder<string, Source>(StringComparer.Ordinal);
        foreach (Source source in ofFile.Concat(SourceReader.Always))
            byKey.TryAdd(source.Key, source);
        return byKey.ToImmutable();
    }
}
