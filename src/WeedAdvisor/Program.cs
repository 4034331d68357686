using System.Text;
using WeedAdvisor;
using WeedAdvisor.Commands;

#pragma warning disable RS0030 // The entry is the one place that talks to the console; all else gets a writer.
var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return CommandLine.Run(
    args,
    new Surroundings
    {
        // Neither is disposed: what could not be written was reported by then and must not fail a second time.
        Out = new StreamWriter(Console.OpenStandardOutput(), utf8) { NewLine = "\n" },
        Error = new StreamWriter(Console.OpenStandardError(), utf8) { NewLine = "\n", AutoFlush = true },
        In = new StreamReader(Console.OpenStandardInput(), utf8),
        Time = TimeProvider.System,
        IsInputTerminal = !Console.IsInputRedirected,
        IsOutputTerminal = !Console.IsOutputRedirected,
        IsErrorTerminal = !Console.IsErrorRedirected,
        WorkingFolder = Environment.CurrentDirectory,
        ProgramFolder = AppContext.BaseDirectory,
        Environment = Environment.GetEnvironmentVariable,
        OpenScreens = ScreensCommand.Run,
    }
);
