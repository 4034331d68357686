using System.CommandLine;

namespace WeedAdvisor.Commands;

/// <summary>The program without a command: the screens for a person at a terminal, else the demo.</summary>
internal static class StartCommand
{
    public static int Run(ParseResult parsed, Surroundings surroundings)
    {
        bool isTerminal = surroundings is { IsInputTerminal: true, IsOutputTerminal: true };
        return isTerminal && surroundings.OpenScreens is { } open
            ? open(surroundings, KnowledgeOption.FolderOf(parsed, surroundings), LabelsOption.Given(parsed))
            : DemoCommand.Run(parsed, surroundings);
    }
}
