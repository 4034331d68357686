using System.Collections.Immutable;
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
    public static Outcome<Visit, Problem> Read(string path, KnowledgeBase knowledge)
    {
        string name = path.Replace('\\', '/');
        byte[]? bytes = FileBytes.Read(path, name, SourceText.VisitFileLimit, out Problem? problem);
        string? text = bytes is null ? null : SourceText.Decode(name, bytes, out problem);
        return text is null ? Outcome<Visit, Problem>.Bad([problem!]) : Build(text, name, knowledge);
    }

    /// <summary>Reads a visit from text, under the same rules.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What to call it in problems.</param>
    /// <param name="knowledge">The knowledge whose words the visit uses.</param>
    public static Outcome<Visit, Problem> Parse(string text, string name, KnowledgeBase knowledge)
    {
        string? accepted = SourceText.Accept(name, text, SourceText.VisitFileLimit, out Problem? problem);
        return accepted is null ? Outcome<Visit, Problem>.Bad([problem!]) : Build(accepted, name, knowledge);
    }

    /// <summary>
    /// Reads a text that <see cref="VisitText"/> wrote, with comments before it, even where it holds what a file may
    /// not; null when anything of it would be lost.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="knowledge">The knowledge whose words the visit uses.</param>
    public static Visit? Recover(string text, KnowledgeBase knowledge)
    {
        string? accepted = SourceText.Accept("a visit", text, SourceText.VisitFileLimit, out _);
        Visit? visit = accepted is null ? null : AsFarAsItGoes(accepted, knowledge).Visit;
        return visit is not null && accepted!.EndsWith(VisitText.Of(visit), StringComparison.Ordinal) ? visit : null;
    }

    /// <summary>
    /// The visit as far as it can be read, and what is wrong with it: an interview may come to hold what a file may
    /// not, such as an application after the day of a visit that was moved.
    /// </summary>
    internal static (Visit? Visit, ImmutableArray<Problem> Problems) AsFarAsItGoes(
        string text,
        KnowledgeBase knowledge
    ) => Tried(text, "a visit", knowledge);

    private static Outcome<Visit, Problem> Build(string text, string name, KnowledgeBase knowledge)
    {
        (Visit? visit, ImmutableArray<Problem> problems) = Tried(text, name, knowledge);
        return visit is not null && problems.IsEmpty
            ? Outcome<Visit, Problem>.Good(visit)
            : Outcome<Visit, Problem>.Bad(Problem.InOrder(problems));
    }

    private static (Visit? Visit, ImmutableArray<Problem> Problems) Tried(
        string text,
        string name,
        KnowledgeBase knowledge
    )
    {
        ParsedFile parsed = TreeBuilder.Build(name, text);
        if (parsed.Root is null)
            return (null, parsed.Problems);
        var context = new ReadContext(name, LexiconOfKnowledge.Of(knowledge));
        if (MappingReader.Of(parsed.Root, context, "a visit") is not { } map)
            return (null, [.. parsed.Problems, .. context.Problems]);
        Dictionary<string, Question> questions = knowledge.Questions.ToDictionary(
            question => question.Id,
            StringComparer.Ordinal
        );
        Visit visit = new VisitReader(questions).Read(map);
        map.Optional("expect");
        map.Finish();
        return (visit, [.. parsed.Problems, .. context.Problems]);
    }
}
