using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Local;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge;

/// <summary>Reads a knowledge folder: whole, or not at all with every problem listed.</summary>
public static class KnowledgeFolder
{
    /// <summary>
    /// Reads and checks the folder. The outcome depends on the paths and bytes of its files alone: not on the order in
    /// which the file system lists them, nor on culture, time or number of processors.
    /// </summary>
    /// <param name="folder">The folder that holds <c>knowledge.yaml</c> and the rest.</param>
    /// <param name="scope">How much of it is read; what is left out is not checked either.</param>
    /// <param name="local">The folder with what a nursery says otherwise, which is laid over it; null for none.</param>
    public static Outcome<KnowledgeBase, Problem> Load(
        string folder,
        KnowledgeScope scope = KnowledgeScope.Whole,
        string? local = null
    )
    {
        FolderFiles files = FolderFiles.Read(folder);
        FolderFiles? own = local is null ? null : FolderFiles.ReadLocal(local);
        if (files.Files.IsEmpty && !files.Problems.IsEmpty)
            return Outcome<KnowledgeBase, Problem>.Bad(Problem.InOrder(files.Problems));
        // Every file counts for it, also those that are not read, so it is made beside the reading.
        var hash = Task.Run(files.Hash);
        PlacedFile[] parsed = Parsed(files, scope);
        ImmutableArray<Problem> overlaid = [];
        if (own is not null)
            (parsed, overlaid) = LocalOverlay.Lay(parsed, Parsed(own, scope));
        Lexicon lexicon = LexiconOfFolder.Of(parsed);
        FileContent[] contents = Read(parsed, lexicon);
        var whole = new WholeFolder(contents.SelectMany(content => content.Records));
        KnowledgeBase knowledge = whole.Build(hash.GetAwaiter().GetResult(), own?.Hash());
        Problem[] problems =
        [
            .. files.Problems,
            .. own?.Problems ?? [],
            .. overlaid,
            .. parsed.SelectMany(file => file.Parsed.Problems),
            .. contents.SelectMany(content => content.Problems),
            .. whole.Problems,
            .. RequiredLists.Undeclared(lexicon.Undeclared),
        ];
        return problems.Length == 0
            ? Outcome<KnowledgeBase, Problem>.Good(knowledge)
            : Outcome<KnowledgeBase, Problem>.Bad(Problem.InOrder(problems));
    }

    private static PlacedFile[] Parsed(FolderFiles files, KnowledgeScope scope)
    {
        FolderFile[] read = [.. files.Files.Where(file => IsRead(file.Role, scope))];
        var parsed = new PlacedFile[read.Length];
        Work.ForEach(parsed.Length, i => parsed[i] = new PlacedFile(read[i].Role, Parse(read[i])));
        return parsed;
    }

    private static bool IsRead(FileRole role, KnowledgeScope scope) =>
        role switch
        {
            FileRole.Visits or FileRole.Lessons => scope == KnowledgeScope.Whole,
            FileRole.Sources => scope != KnowledgeScope.ForAdvice,
            _ => true,
        };

    internal static ParsedFile Parse(FolderFile file)
    {
        if (file.Bytes is null)
            return new ParsedFile(file.Path, null, []);
        string? text = SourceText.Decode(file.Path, file.Bytes, out Problem? problem);
        if (text is null)
            return ParsedFile.Bad(problem!);
        return PlainReader.Read(text) is { } root
            ? new ParsedFile(file.Path, root, [])
            : TreeBuilder.Build(file.Path, text);
    }

    private static FileContent[] Read(PlacedFile[] files, Lexicon lexicon)
    {
        var reader = new ContentReader(lexicon);
        var contents = new FileContent[files.Length];
        int questions = Array.FindIndex(files, file => file.Role == FileRole.Questions);
        if (questions >= 0)
            contents[questions] = reader.ReadQuestions(files[questions].Parsed);

        for (int i = 0; i < files.Length; i++)
        {
            if (files[i].Role == FileRole.Actives)
                contents[i] = reader.ReadActives(files[i].Parsed);
        }

        // Without questions nothing that rules and visits say of a site could be checked.
        bool withoutQuestions = reader.Questions.IsEmpty;
        Work.ForEach(files.Length, i =>
        {
            if (i == questions || files[i].Role == FileRole.Actives)
                return;
            contents[i] =
                withoutQuestions
                && files[i].Role is FileRole.Judgements or FileRole.Law or FileRole.Visits or FileRole.Lessons
                    ? new FileContent([], [])
                    : reader.Read(files[i].Role, files[i].Parsed);
        });
        return contents;
    }
}
