using WeedAdvisor.Knowledge.Folder;
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
    public static Outcome<KnowledgeBase> Load(string folder)
    {
        FolderFiles files = FolderFiles.Read(folder);
        if (files.Files.IsEmpty && !files.Problems.IsEmpty)
            return Outcome<KnowledgeBase>.Bad(files.Problems);
        var parsed = new ParsedFile[files.Files.Length];
        Parallel.For(0, parsed.Length, i => parsed[i] = Parse(files.Files[i]));
        FileContent[] contents = Read(files, parsed);
        var assembly = new Assembly(contents.SelectMany(content => content.Records));
        KnowledgeBase knowledge = assembly.Build(files.Hash());
        Problem[] problems =
        [
            .. files.Problems,
            .. parsed.SelectMany(file => file.Problems),
            .. contents.SelectMany(content => content.Problems),
            .. assembly.Problems,
        ];
        return problems.Length == 0 ? Outcome<KnowledgeBase>.Good(knowledge) : Outcome<KnowledgeBase>.Bad(problems);
    }

    private static ParsedFile Parse(FolderFile file)
    {
        if (file.Bytes is null)
            return new ParsedFile(file.Path, null, []);
        string? text = SourceText.Decode(file.Path, file.Bytes, out Problem? problem);
        return text is null ? ParsedFile.Bad(problem!) : TreeBuilder.Build(file.Path, text);
    }

    private static FileContent[] Read(FolderFiles files, ParsedFile[] parsed)
    {
        FileRole Role(int i) => files.Files[i].Role;
        Lexicon lexicon = LexiconOfFolder.Of(parsed.Select((file, i) => (Role(i), file)));
        var reader = new ContentReader(lexicon);
        var contents = new FileContent[parsed.Length];
        int questions = Array.FindIndex(parsed, file => file.File == "questions.yaml");
        if (questions >= 0)
            contents[questions] = reader.ReadQuestions(parsed[questions]);

        // Without questions nothing that rules and visits say of a site could be checked.
        bool withoutQuestions = reader.Questions.IsEmpty;
        Parallel.For(0, parsed.Length, i =>
        {
            if (i == questions)
                return;
            contents[i] = withoutQuestions && Role(i) is FileRole.Judgements or FileRole.Visits
                ? new FileContent([], [])
                : reader.Read(Role(i), parsed[i]);
        });
        return contents;
    }
}
