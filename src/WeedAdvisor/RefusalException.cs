namespace WeedAdvisor;

/// <summary>
/// A command can't be carried out, and the person at the keyboard can do something about it. Each line says one thing;
/// the last says what to do.
/// </summary>
public sealed class RefusalException : Exception
{
    /// <summary>A refusal of one line.</summary>
    /// <param name="exitCode">The exit code.</param>
    /// <param name="line">What is wrong and what to do.</param>
    public RefusalException(int exitCode, string line)
        : this(exitCode, [line])
    {
    }

    /// <summary>A refusal of several lines.</summary>
    /// <param name="exitCode">The exit code.</param>
    /// <param name="lines">What is wrong; last, what to do.</param>
    public RefusalException(int exitCode, IReadOnlyList<string> lines)
        : base(string.Join('\n', lines))
    {
        ExitCode = exitCode;
        Lines = lines;
    }

    /// <summary>The exit code.</summary>
    public int ExitCode { get; }

    /// <summary>What to say.</summary>
    public IReadOnlyList<string> Lines { get; }
}
