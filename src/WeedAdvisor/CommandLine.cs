using System.CommandLine;
using System.CommandLine.Invocation;
using WeedAdvisor.Commands;

namespace WeedAdvisor;

/// <summary>
/// The program as seen from a shell: reads the arguments, runs a command, turns what goes wrong into words.
/// </summary>
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
            return Complain(surroundings, refusal);
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Stopped;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            string line =
                $"cannot read or write: {OneLine(e.Message)}. Check the path, its permissions and the space left.";
            return Complain(surroundings, new RefusalException(ExitCode.InputOutput, line));
        }
#pragma warning disable CA1031 // The last catch there is: a person gets one line, not a stack trace.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return Complain(surroundings, new RefusalException(ExitCode.Internal, Fault(e)));
        }
    }

    /// <summary>What a person is told of a fault of the program: one line.</summary>
    public static string Fault(Exception fault) =>
        $"internal error, a fault of this program ({fault.GetType().Name}: {OneLine(fault.Message)}). "
        + "Please report it with the command and the visit that led to it.";

    private static int Invoke(string[] args, Surroundings surroundings)
    {
        RootCommand root = CommandTree.Of(surroundings, args);

        // An argument that starts with @ is a name, not a file of further arguments.
        ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction or null)
            throw UsageError.Of(parsed);
        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = surroundings.Out,
                Error = surroundings.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            }
        );
    }

    private static int Complain(Surroundings surroundings, RefusalException refusal)
    {
        foreach (string line in refusal.Lines)
            surroundings.Error.WriteLine(line);
        surroundings.Error.Flush();
        return refusal.ExitCode;
    }

    private static string OneLine(string text) =>
        string.Join(' ', text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
}
