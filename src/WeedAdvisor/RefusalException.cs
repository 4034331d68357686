using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor;

/// <summary>
/// A command can't be carried out, and the person at the keyboard can do something about it. Problems in files come
/// first, as editors understand them; the last line says what to do.
/// </summary>
public sealed class RefusalException : Exception
{
    /// <summary>A refusal.</summary>
    /// <param name="exitCode">The exit code.</param>
    /// <param name="line">What is wrong and what to do.</param>
    public RefusalException(int exitCode, string line)
        : this(exitCode, [], line) { }

    /// <summary>A refusal because of problems in files.</summary>
    /// <param name="exitCode">The exit code.</param>
    /// <param name="problems">The problems, each in one line that starts with its place.</param>
    /// <param name="line">What to do; null when the one problem says enough.</param>
    public RefusalException(int exitCode, IEnumerable<Problem> problems, string? line)
        : base(line)
    {
        ExitCode = exitCode;
        Lines = [.. problems.Select(problem => problem.ToString()), .. Said(line)];
    }

    /// <summary>A refusal for several reasons, none of them in a file.</summary>
    /// <param name="exitCode">The exit code.</param>
    /// <param name="lines">What is wrong, at least one line.</param>
    public RefusalException(int exitCode, params IReadOnlyList<string> lines)
        : base(lines[0])
    {
        ExitCode = exitCode;
        Lines = [.. lines.SelectMany(Said)];
    }

    /// <summary>The exit code.</summary>
    public int ExitCode { get; }

    /// <summary>What to say, line by line.</summary>
    public ImmutableArray<string> Lines { get; }

    private static string[] Said(string? line) => line is null ? [] : [$"{CommandLine.Name}: {line}"];
}
