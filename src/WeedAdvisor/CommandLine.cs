using System.CommandLine;
using System.CommandLine.Invocation;
using WeedAdvisor.Commands;

namespace WeedAdvisor;

/// <summary>The program as seen from a shell: reads the arguments, runs a command, turns what goes wrong into words.</summary>
public static class CommandLine
{
    /// <summary>The program's name.</summary>
    public const string Name = "weedadvisor";

    /// <summary>Runs the program and gives its exit code.</summary>
    public static int Run(string[] args, Surroundings surroundings)
    {
        try
        {
            int code = Invoke(args, surroundings);
            surroundings.Out.Flush();
            return code;
        }
        catch (RefusalException refusal)
        {
            return Complain(surroundings, refusal.ExitCode, refusal.Lines);
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Stopped;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Complain(surroundings, ExitCode.InputOutput, [$"cannot read or write: {OneLine(e.Message)}"]);
        }
#pragma warning disable CA1031 // The last catch there is: a person gets one line, not a stack trace.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return Complain(surroundings, ExitCode.Internal,
            [
                $"internal error, a fault of this program ({e.GetType().Name}: {OneLine(e.Message)}). "
                + "Please report it with the command and the visit that led to it.",
            ]);
        }
    }

    private static int Invoke(string[] args, Surroundings surroundings)
    {
        RootCommand root = CommandTree.Of(surroundings);

        // An argument that starts with @ is a name, not a file of further arguments.
        ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction or null)
            throw UsageError.Of(parsed);
        return parsed.Invoke(new InvocationConfiguration
        {
            Output = surroundings.Out,
            Error = surroundings.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }

    private static int Complain(Surroundings surroundings, int code, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
            surroundings.Error.WriteLine($"{Name}: {line}");
        surroundings.Error.Flush();
        return code;
    }

    private static string OneLine(string text) =>
        string.Join(' ', text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
