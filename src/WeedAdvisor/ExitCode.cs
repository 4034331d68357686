namespace WeedAdvisor;

/// <summary>What the program tells the shell when it ends.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>It ran, and the answer is no: an expectation failed.</summary>
    public const int Negative = 1;

    /// <summary>The command line or the visit is wrong.</summary>
    public const int Usage = 2;

    /// <summary>The knowledge is wrong.</summary>
    public const int BadKnowledge = 3;

    /// <summary>A file or folder can't be read or written.</summary>
    public const int InputOutput = 4;

    /// <summary>A fault of the program.</summary>
    public const int Internal = 70;

    /// <summary>Stopped with Ctrl+C.</summary>
    public const int Stopped = 130;
}
