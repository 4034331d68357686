using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Commands;

/// <summary>Which knowledge to use: <c>--knowledge</c>, else an environment variable, else the shipped one.</summary>
internal static class KnowledgeOption
{
    /// <summary>The environment variable.</summary>
    public const string Variable = "WEEDADVISOR_KNOWLEDGE";

    private const string Name = "--knowledge";

    /// <summary>The option, valid after every command.</summary>
    public static Option<string?> Of() =>
        new(Name)
        {
            Description =
                $"The knowledge folder. Without it: the folder that {Variable} names, "
                + "or the rules beside the program.",
            HelpName = "FOLDER",
            Recursive = true,
        };

    /// <summary>The folder that the command line and the surroundings name.</summary>
    public static string FolderOf(ParseResult parsed, Surroundings surroundings)
    {
        if (parsed.GetValue<string?>(Name) is { Length: > 0 } given)
            return given;
        return surroundings.Environment(Variable) is { Length: > 0 } variable
            ? variable
            : Path.Combine(surroundings.ProgramFolder, "rules");
    }

    /// <summary>Reads the knowledge, or says every problem it has.</summary>
    public static KnowledgeBase Load(ParseResult parsed, Surroundings surroundings, KnowledgeScope scope) =>
        Load(FolderOf(parsed, surroundings), surroundings, scope);

    /// <summary>Reads the knowledge of a folder, or says every problem it has.</summary>
    public static KnowledgeBase Load(string folder, Surroundings surroundings, KnowledgeScope scope)
    {
        string full = surroundings.FullPath(folder);
        if (!Directory.Exists(full))
        {
            throw new RefusalException(
                ExitCode.InputOutput,
                $"no knowledge folder '{folder}'. Name one with --knowledge FOLDER or {Variable}."
            );
        }

        Outcome<KnowledgeBase, Problem> outcome = KnowledgeFolder.Load(full, scope);
        return outcome.IsGood ? outcome.Value : throw Bad(folder, outcome);
    }

    /// <summary>
    /// The sources of the knowledge, without the rest of it. None when their file cannot be read: what only cites them
    /// is told all the same, and <c>knowledge check</c> says what is wrong.
    /// </summary>
    public static ImmutableSortedDictionary<string, Source> Sources(ParseResult parsed, Surroundings surroundings) =>
        SourceFile.Load(surroundings.FullPath(FolderOf(parsed, surroundings))).Value
        ?? ImmutableSortedDictionary<string, Source>.Empty;

    private static RefusalException Bad(string folder, Outcome<KnowledgeBase, Problem> outcome)
    {
        string count = outcome.Refusals.Length == 1 ? "1 problem" : $"{outcome.Refusals.Length} problems";
        return new RefusalException(
            ExitCode.BadKnowledge,
            outcome.Refusals,
            $"{count} in the knowledge folder '{folder}'. Mend them, then run '{CommandLine.Name} knowledge check'."
        );
    }
}
