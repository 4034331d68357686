using System.CommandLine;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Commands;

/// <summary>
/// The grower's own labels: <c>--labels</c>, else the file that an environment variable names, else <c>labels.yaml</c>
/// beside the visit.
/// </summary>
internal static class LabelsOption
{
    /// <summary>The environment variable.</summary>
    public const string Variable = "WEEDADVISOR_LABELS";

    private const string Name = "--labels";

    /// <summary>The option, valid after every command.</summary>
    public static Option<string?> Of() =>
        new(Name)
        {
            Description =
                $"Your label book. Without it: the file that {Variable} names, or {LabelShelf.BesideVisit} beside the "
                + $"visit.",
            HelpName = "FILE",
            Recursive = true,
        };

    /// <summary>The knowledge of the command line with the labels over it.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="visit">The visit file; null without one.</param>
    /// <param name="scope">How much of the knowledge is needed.</param>
    /// <param name="surroundings">The surroundings.</param>
    /// <exception cref="RefusalException">The file that was named is not there, or something in it is
    /// wrong.</exception>
    public static KnowledgeBase Load(
        ParseResult parsed,
        string? visit,
        KnowledgeScope scope,
        Surroundings surroundings
    ) => Over(KnowledgeOption.Load(parsed, surroundings, scope), Given(parsed), visit, surroundings);

    /// <summary>The file that the command line names; null when it names none.</summary>
    public static string? Given(ParseResult parsed) => parsed.GetValue<string?>(Name);

    /// <summary>The knowledge with the labels over it; as it is where there are none.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="given">The file that the command line names; null when it names none.</param>
    /// <param name="visit">The visit file; null without one.</param>
    /// <param name="surroundings">The surroundings.</param>
    /// <exception cref="RefusalException">The file that was named is not there, or something in it is
    /// wrong.</exception>
    public static KnowledgeBase Over(KnowledgeBase knowledge, string? given, string? visit, Surroundings surroundings)
    {
        if (PathOf(given, visit, surroundings) is not { } path)
            return knowledge;
        string full = surroundings.FullPath(path);
        if (!File.Exists(full))
            throw new RefusalException(ExitCode.InputOutput, $"no label book '{path}'. Check the path.");
        Outcome<LabelBook, Problem> book = LabelFile.Read(full, knowledge, surroundings.Today);
        if (book.IsGood)
            return LabelOverlay.Of(knowledge, book.Value);
        throw new RefusalException(
            ExitCode.Usage,
            book.Refusals.Select(problem => problem with { Where = problem.Where with { File = path } }),
            book.Refusals.Length == 1
                ? null
                : $"{book.Refusals.Length} problems in '{path}'. Mend them and run it again."
        );
    }

    /// <summary>The book that goes with a visit; null when there is none.</summary>
    public static string? PathOf(string? given, string? visit, Surroundings surroundings)
    {
        if (given is { Length: > 0 })
            return given;
        if (surroundings.Environment(Variable) is { Length: > 0 } variable)
            return variable;
        if (visit is null or "-")
            return null;
        string beside = Path.Combine(Path.GetDirectoryName(visit) ?? "", LabelShelf.BesideVisit);
        return File.Exists(surroundings.FullPath(beside)) ? beside : null;
    }
}
