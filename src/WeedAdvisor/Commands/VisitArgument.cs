using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Commands;

/// <summary>The visit that a command works on.</summary>
internal static class VisitArgument
{
    // More than a visit file may hold; the reader refuses what is too large.
    private const int MostCharacters = (4 * 1024 * 1024) + 1;

    /// <summary>The argument.</summary>
    public static Argument<string> File() => new("VISIT") { Description = "The visit file; - reads standard input." };

    /// <summary>The option that narrows a visit to one area.</summary>
    public static Option<string?> Area() =>
        new("--area") { Description = "Only the area with this id.", HelpName = "ID" };

    /// <summary>
    /// The knowledge of the command line, with the labels that go with the visit over it, and the visit read by it,
    /// narrowed to one area when that is asked for.
    /// </summary>
    public static (KnowledgeBase Knowledge, Visit Visit) Load(
        ParseResult parsed,
        Argument<string> file,
        Option<string?> area,
        KnowledgeScope scope,
        Surroundings surroundings
    )
    {
        string path = parsed.GetRequiredValue(file);
        KnowledgeBase knowledge = LabelsOption.Load(parsed, path, scope, surroundings);
        return (knowledge, Read(path, parsed.GetValue(area), knowledge, surroundings));
    }

    /// <summary>Reads the visit, narrowed to one area when that is asked for.</summary>
    public static Visit Read(string path, string? area, KnowledgeBase knowledge, Surroundings surroundings)
    {
        Outcome<Visit, Problem> outcome =
            path == "-"
                ? VisitFile.Parse(StandardInput(surroundings.In), "standard input", knowledge)
                : VisitFile.Read(Existing(path, surroundings), knowledge);
        if (!outcome.IsGood)
            throw Bad(path, outcome.Refusals);
        return area is null ? outcome.Value : Narrowed(outcome.Value, area);
    }

    /// <summary>Reads the visit of a file with its text, so that it can be saved again.</summary>
    public static VisitDocument Document(string path, KnowledgeBase knowledge, Surroundings surroundings)
    {
        Outcome<VisitDocument, Problem> outcome = VisitDocument.Read(Existing(path, surroundings), knowledge);
        return outcome.IsGood ? outcome.Value : throw Bad(path, outcome.Refusals);
    }

    private static string Existing(string path, Surroundings surroundings)
    {
        string full = surroundings.FullPath(path);
        if (!System.IO.File.Exists(full))
        {
            throw new RefusalException(
                ExitCode.InputOutput,
                $"no visit file '{path}'. Check the path, or see '{CommandLine.Name} demo'."
            );
        }

        return full;
    }

    private static RefusalException Bad(string path, ImmutableArray<Problem> problems)
    {
        string shown = path == "-" ? "standard input" : path;
        int count = problems.Length;
        return new RefusalException(
            ExitCode.Usage,
            problems.Select(problem => problem with { Where = problem.Where with { File = shown } }),
            count == 1 ? null : $"{count} problems in '{shown}'. Mend them and run it again."
        );
    }

    private static Visit Narrowed(Visit visit, string id)
    {
        if (visit.Areas.FirstOrDefault(area => area.Id == id) is { } one)
            return visit with { Areas = [one], Elsewhere = visit.Areas.Remove(one) };
        string[] ids = [.. visit.Areas.Select(area => area.Id)];
        string hint = UsageError.DidYouMean(id, ids);
        throw new RefusalException(
            ExitCode.Usage,
            $"the visit has no area '{id}'{hint}. Its areas: {string.Join(", ", ids)}."
        );
    }

    private static string StandardInput(TextReader input)
    {
        char[] text = new char[MostCharacters];
        return new string(text, 0, input.ReadBlock(text));
    }
}
