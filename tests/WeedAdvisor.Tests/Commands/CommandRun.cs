using System.Collections.Concurrent;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>What a run of the program said and how it ended.</summary>
internal sealed record CommandRun(int Code, string Out, string Error)
{
    private static readonly ConcurrentDictionary<string, Lazy<CommandRun>> s_told = new(StringComparer.Ordinal);

    /// <summary>The small knowledge made for these tests.</summary>
    public static string SmallRules { get; } =
        Path.Combine(Repository.Folder, "tests", "WeedAdvisor.Tests", "SmallRules");

    /// <summary>Its visit, which is also its demo.</summary>
    public static string SmallVisit { get; } = Path.Combine(SmallRules, "visits", "demo-spring.yaml");

    /// <summary>Lines of complaint.</summary>
    public string[] Complaints => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Runs the program on the small knowledge.</summary>
    public static CommandRun Of(params string[] args) => In(new StringReader(""), args);

    /// <summary>Runs the program on the small knowledge with something on standard input.</summary>
    public static CommandRun In(TextReader input, params string[] args) => With(s => s with { In = input }, args);

    /// <summary>Runs the program as it runs anywhere: knowledge is read and compiled for this run alone.</summary>
    public static CommandRun Alone(params string[] args) =>
        With(s => s with { ReadKnowledge = KnowledgeFolder.Load, Compile = Advisor.Of }, args);

    /// <summary>What the program says to a line that reads no more than the repository: run once a process.</summary>
    public static CommandRun Told(params string[] args) =>
        s_told.GetOrAdd(string.Join('\n', args), _ => new Lazy<CommandRun>(() => Of(args))).Value;

    /// <summary>Runs the program in changed surroundings.</summary>
    public static CommandRun With(Func<Surroundings, Surroundings> change, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        Surroundings surroundings = change(
            new Surroundings
            {
                Out = output,
                Error = error,
                In = new StringReader(""),
                Time = TimeProvider.System,
                IsInputTerminal = false,
                IsOutputTerminal = false,
                WorkingFolder = Path.GetDirectoryName(SmallVisit)!,
                ProgramFolder = "/nowhere",
                Environment = name => name == "WEEDADVISOR_KNOWLEDGE" ? SmallRules : null,
                ReadKnowledge = SharedKnowledge.Read,
                Compile = SharedKnowledge.Compile,
            }
        );
        int code = CommandLine.Run(args, surroundings);
        return new CommandRun(code, output.ToString(), error.ToString());
    }
}
