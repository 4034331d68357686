using System.CommandLine;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Commands;

/// <summary>What is wrong with a command line, in one line that ends with what to do.</summary>
internal static class UsageError
{
    public static RefusalException Of(ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        string path = PathOf(command);
        string wrong = parsed switch
        {
            { UnmatchedTokens: [var token, ..] } => Unknown(Misread(token, parsed), command),
            { Errors: [var error, ..] } => error.Message.TrimEnd('.'),
            _ => "nothing to do",
        };
        return new RefusalException(ExitCode.Usage, $"{LowerFirst(wrong)}. See '{path} --help'.");
    }

    /// <summary>A word that is no command, where one is asked for.</summary>
    public static RefusalException UnknownCommand(string word, ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        return new RefusalException(ExitCode.Usage, $"{Unknown(word, command)}. See '{PathOf(command)} --help'.");
    }

    /// <summary>The nearest valid word in brackets; nothing when none is near.</summary>
    public static string DidYouMean(string written, IEnumerable<string> words) =>
        NearestWord.Of(written, words) is { } nearest ? $" (did you mean '{nearest}'?)" : "";

    // Alone, the program takes one word, a visit: of two, the first was meant as a command.
    private static string Misread(string token, ParseResult parsed) =>
        parsed.CommandResult is { Command: RootCommand, Tokens: [var first, ..] } && !token.StartsWith('-')
            ? first.Value
            : token;

    private static string Unknown(string token, Command command)
    {
        bool isOption = token.StartsWith('-');
        IEnumerable<Symbol> known = isOption ? Options(command) : command.Subcommands;
        string what =
            isOption ? "option"
            : command.Subcommands.Any() ? "command"
            : "argument";
        string hint = DidYouMean(token, known.Where(symbol => !symbol.Hidden).Select(symbol => symbol.Name));
        return $"unknown {what} '{token}'{hint}";
    }

    private static IEnumerable<Symbol> Options(Command command) =>
        Line(command).SelectMany(one => one.Options.Where(option => one == command || option.Recursive));

    private static string PathOf(Command command) =>
        string.Join(' ', Line(command).Reverse().Skip(1).Select(one => one.Name).Prepend(CommandLine.Name));

    /// <summary>The command and every command above it.</summary>
    private static IEnumerable<Command> Line(Command command)
    {
        for (Command? one = command; one is not null; one = one.Parents.OfType<Command>().FirstOrDefault())
            yield return one;
    }

    // A name in capitals stays as it is.
    private static string LowerFirst(string text) =>
        text is [var first, var second, ..] && !char.IsUpper(second) ? char.ToLowerInvariant(first) + text[1..] : text;
}
