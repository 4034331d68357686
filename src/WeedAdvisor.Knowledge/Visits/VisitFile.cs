using WeedAdvisor.Knowledge.Folder;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>Reads visit files and holds them against the knowledge: every word, id, number and date.</summary>
public static class VisitFile
{
    /// <summary>Reads a visit. What stands under <c>expect</c>, as in worked visits, is passed over.</summary>
    /// <param name="path">The file; at most 4 MB.</param>
    /// <param name="knowledge">The knowledge whose words the visit uses.</param>
    public static Outcome<Visit> Read(string path, KnowledgeBase knowledge)
    {
        string name = path.Replace('\\', '/');
        byte[]? bytes = FileBytes.Read(path, name, SourceText.VisitFileLimit, out Problem? problem);
        string? text = bytes is null ? null : SourceText.Decode(name, bytes, out problem);
        return text is null ? Outcome<Visit>.Bad([problem!]) : Build(text, name, knowledge);
    }

    /// <summary>Reads a visit from text, under the same rules.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="knowledge">The knowledge whose words the visit uses.</param>
    public static Outcome<Visit> Parse(string text, string name, KnowledgeBase knowledge)
    {
        string? accepted = SourceText.Accept(name, text, SourceText.VisitFileLimit, out Problem? problem);
        return accepted is null ? Outcome<Visit>.Bad([problem!]) : Build(accepted, name, knowledge);
    }

    private static Outcome<Visit> Build(string text, string name, KnowledgeBase knowledge)
    {
        ParsedFile parsed = TreeBuilder.Build(name, text);
        if (parsed.Root is null)
            return Outcome<Visit>.Bad(parsed.Problems);
        var context = new ReadContext(name, LexiconOfKnowledge.Of(knowledge));
        if (MappingReader.Of(parsed.Root, context, "a visit") is not { } map)
            return Outcome<Visit>.Bad([.. parsed.Problems, .. context.Problems]);
        Dictionary<string, Question> questions =
            knowledge.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        Visit visit = new VisitReader(questions).Read(map);
        map.Optional("expect");
        map.Finish();
        return parsed.Problems.IsEmpty && context.Problems.Count == 0
            ? Outcome<Visit>.Good(visit)
            : Outcome<Visit>.Bad([.. parsed.Problems, .. context.Problems]);
    }
}
