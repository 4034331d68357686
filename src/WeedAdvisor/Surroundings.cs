using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor;

/// <summary>
/// Everything the program meets outside itself. It is handed in, so that every command can be run in a test with other
/// surroundings; only the entry knows the real ones.
/// </summary>
public sealed record Surroundings
{
    /// <summary>Where results go.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Where complaints go.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Where answers come from.</summary>
    public required TextReader In { get; init; }

    /// <summary>The clock.</summary>
    public required TimeProvider Time { get; init; }

    /// <summary>Whether answers come from a person at a terminal.</summary>
    public required bool IsInputTerminal { get; init; }

    /// <summary>Whether results go to a terminal.</summary>
    public required bool IsOutputTerminal { get; init; }

    /// <summary>Whether complaints go to a terminal, so that it can be told there how far the work is.</summary>
    public bool IsErrorTerminal { get; init; }

    /// <summary>The folder that relative paths start from.</summary>
    public required string WorkingFolder { get; init; }

    /// <summary>The folder of the program, with the shipped knowledge beside it.</summary>
    public required string ProgramFolder { get; init; }

    /// <summary>Looks up an environment variable.</summary>
    public required Func<string, string?> Environment { get; init; }

    /// <summary>Reads a knowledge folder: how much of it, and the local folder laid over it.</summary>
    public Func<string, KnowledgeScope, string?, Outcome<KnowledgeBase, Problem>> ReadKnowledge { get; init; } =
        KnowledgeFolder.Load;

    /// <summary>Compiles the judgements of a knowledge base.</summary>
    public Func<KnowledgeBase, Advisor> Compile { get; init; } = Advisor.Of;

    /// <summary>Opens the screens and gives the exit code; null where there are none.</summary>
    public Func<Surroundings, ScreensAsked, int>? OpenScreens { get; init; }

    /// <summary>Today, by the local clock.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Time.GetLocalNow().DateTime);

    /// <summary>A path made absolute.</summary>
    public string FullPath(string path) => Path.GetFullPath(path, WorkingFolder);
}
