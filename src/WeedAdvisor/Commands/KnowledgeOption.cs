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

    /// <summary>The environment variable of the local folder.</summary>
    public const string LocalVariable = "WEEDADVISOR_LOCAL";

    private const string Name = "--knowledge";
    private const string LocalName = "--local";

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

    /// <summary>The option for what a nursery says otherwise, valid after every command.</summary>
    public static Option<string?> OfLocal() =>
        new(LocalName)
        {
            Description =
                $"A folder of your own records, laid over the knowledge. Without it: the folder that {LocalVariable} "
                + "names, or none.",
            HelpName = "FOLDER",
            Recursive = true,
        };

    /// <summary>The folders that the command line and the surroundings name.</summary>
    public static KnowledgeFolders FoldersOf(ParseResult parsed, Surroundings surroundings) =>
        new(
            Named(parsed, Name, surroundings, Variable) ?? Path.Combine(surroundings.ProgramFolder, "rules"),
            Named(parsed, LocalName, surroundings, LocalVariable)
        );

    private static string? Named(ParseResult parsed, string option, Surroundings surroundings, string variable)
    {
        if (parsed.GetValue<string?>(option) is { Length: > 0 } given)
            return given;
        return surroundings.Environment(variable) is { Length: > 0 } folder ? folder : null;
    }

    /// <summary>Reads the knowledge, or says every problem it has.</summary>
    public static KnowledgeBase Load(ParseResult parsed, Surroundings surroundings, KnowledgeScope scope) =>
        Load(FoldersOf(parsed, surroundings), surroundings, scope);

    /// <summary>Reads the knowledge of the folders, or says every problem it has.</summary>
    public static KnowledgeBase Load(KnowledgeFolders folders, Surroundings surroundings, KnowledgeScope scope)
    {
        string full = Existing(folders.Folder, "knowledge", $"--knowledge FOLDER or {Variable}", surroundings);
        string? local = folders.Local is { } named
            ? Existing(named, "local", $"--local FOLDER or {LocalVariable}", surroundings)
            : null;
        Outcome<KnowledgeBase, Problem> outcome = surroundings.ReadKnowledge(full, scope, local);
        return outcome.IsGood ? outcome.Value : throw Bad(folders, outcome);
    }

    private static string Existing(string folder, string what, string how, Surroundings surroundings)
    {
        string full = surroundings.FullPath(folder);
        return Directory.Exists(full)
            ? full
            : throw new RefusalException(ExitCode.InputOutput, $"no {what} folder '{folder}'. Name one with {how}.");
    }

    /// <summary>
    /// The sources of the knowledge, without the rest of it. None when their file cannot be read: what only cites them
    /// is told all the same, and <c>knowledge check</c> says what is wrong.
    /// </summary>
    public static ImmutableSortedDictionary<string, Source> Sources(ParseResult parsed, Surroundings surroundings) =>
        SourceFile.Load(surroundings.FullPath(FoldersOf(parsed, surroundings).Folder)).Value
        ?? ImmutableSortedDictionary<string, Source>.Empty;

    private static RefusalException Bad(KnowledgeFolders folders, Outcome<KnowledgeBase, Problem> outcome)
    {
        string where = folders.Local is { } local
            ? $"the knowledge folder '{folders.Folder}' with '{local}' over it"
            : $"the knowledge folder '{folders.Folder}'";
        string count = outcome.Refusals.Length == 1 ? "1 problem" : $"{outcome.Refusals.Length} problems";
        return new RefusalException(
            ExitCode.BadKnowledge,
            outcome.Refusals,
            $"{count} in {where}. Mend them, then run '{CommandLine.Name} knowledge check'."
        );
    }
}
