using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace WeedAdvisor.Commands;

/// <summary>Help that starts with examples and ends with the exit codes.</summary>
/// <param name="usual">What comes between.</param>
internal sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    private const int Width = 80;

    private static readonly string[] s_atTheRoot =
    [
        "weedadvisor                              open the screens",
        "weedadvisor visit.yaml                   open them with a visit of your own",
        "weedadvisor ask                          the same questions line by line",
        "weedadvisor demo                         see the advice on an invented visit",
        "weedadvisor advise visit.yaml            advice on your own visit",
        "weedadvisor why visit.yaml hand-weed-now why it is advised, waits, is barred",
        "weedadvisor identify                     find out which weed it is",
        "weedadvisor season visit.yaml            plan a year: what goes on when",
        "weedadvisor weeding visit.yaml           hand weeding: hours, cost, how often",
        "weedadvisor rate                         work out rates: sprayers, spreaders",
    ];

    private static readonly string[] s_exitCodes =
    [
        "  0    done",
        "  1    the answer is no: an expectation of a worked visit failed, no year could",
        "       be planned, or the answers for ask ended before the visit was saved",
        "  2    the command line or the visit is wrong",
        "  3    the knowledge is wrong",
        "  4    a file or folder can't be read or written",
        "  70   a fault of the program",
        "  130  stopped with Ctrl+C",
    ];

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        TextWriter output = parseResult.InvocationConfiguration.Output;
        Command command = parseResult.CommandResult.Command;
        string[] examples = command is ExampleCommand example ? example.Examples : s_atTheRoot;
        WriteBlock(output, "Examples:", examples.Select(line => "  " + line));
        usual.MaxWidth = Width;
        int code = usual.Invoke(parseResult);
        WriteBlock(output, "Exit codes:", s_exitCodes);
        return code;
    }

    private static void WriteBlock(TextWriter output, string title, IEnumerable<string> lines)
    {
        output.WriteLine(title);
        foreach (string line in lines)
            output.WriteLine(line);
        output.WriteLine();
    }
}

/// <summary>A command whose help starts with examples.</summary>
/// <param name="name">Its name.</param>
/// <param name="description">What it does.</param>
/// <param name="examples">Examples, one a line.</param>
internal sealed class ExampleCommand(string name, string description, params string[] examples)
    : Command(name, description)
{
    /// <summary>Examples, one a line.</summary>
    public string[] Examples { get; } = examples;
}
