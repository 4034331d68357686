using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Commands;

/// <summary>The program without a command: the screens for a person at a terminal, else the advice.</summary>
internal static class StartCommand
{
    private static readonly char[] s_marksOfFiles = ['.', '/', '\\'];

    /// <summary>The visit to go on with.</summary>
    public static Argument<string?> File() =>
        new("VISIT")
        {
            Description = "A visit file to open the screens with; without it, a new visit of today.",
            Arity = ArgumentArity.ZeroOrOne,
        };

    public static int Run(ParseResult parsed, string? path, Surroundings surroundings)
    {
        if (path is not null && !IsFile(path, surroundings))
            throw UsageError.UnknownCommand(path, parsed);
        bool isTerminal = surroundings is { IsInputTerminal: true, IsOutputTerminal: true };
        if (isTerminal && surroundings.OpenScreens is { } open)
        {
            KnowledgeFolders folder = KnowledgeOption.FoldersOf(parsed, surroundings);
            return open(surroundings, new ScreensAsked(folder, LabelsOption.Given(parsed), path));
        }

        return path is null ? DemoCommand.Run(parsed, surroundings) : Advise(parsed, path, surroundings);
    }

    // A word that names no file is a command spelt wrong; a path is a file, there or not.
    private static bool IsFile(string word, Surroundings surroundings) =>
        word.IndexOfAny(s_marksOfFiles) >= 0 || System.IO.File.Exists(surroundings.FullPath(word));

    private static int Advise(ParseResult parsed, string path, Surroundings surroundings)
    {
        KnowledgeBase knowledge = LabelsOption.Load(parsed, path, KnowledgeScope.WithoutWorkedVisits, surroundings);
        Visit visit = VisitArgument.Read(path, null, knowledge, surroundings);
        return DemoCommand.Print(DemoCommand.Advised(surroundings.Compile(knowledge), visit), knowledge, surroundings);
    }
}
