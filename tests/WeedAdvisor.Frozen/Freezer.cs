using System.Collections.Concurrent;
using System.Diagnostics;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Frozen;

/// <summary>
/// Asks every command that takes a visit, in every medium, of a folder of visits and writes down what it says.
/// </summary>
internal static class Freezer
{
    private const int SaidEvery = 50;
    private const string LabelBook = "labels.yaml";

    // One on each core: each run is a pure function of its surroundings.
    private static readonly ParallelOptions s_pace = new() { MaxDegreeOfParallelism = Environment.ProcessorCount };

    /// <summary>Writes one file for each visit and command into the folder.</summary>
    /// <param name="rules">The knowledge folder.</param>
    /// <param name="visits">
    /// The visits, those in folders of it too. Where there are more than <see cref="FrozenCommands.Few"/>, only every
    /// tenth is asked everything; of thousands every twentieth.
    /// </param>
    /// <param name="output">Where to write.</param>
    /// <param name="only">The names of the outputs wanted; all when there are none.</param>
    /// <param name="page">Where to say how far it is.</param>
    public static int Make(string rules, string visits, string output, string[] only, TextWriter page)
    {
        string[] files =
        [
            .. Directory
                .GetFiles(visits, "*.yaml", SearchOption.AllDirectories)
                .Where(file => Path.GetFileName(file) != LabelBook)
                .Order(StringComparer.Ordinal),
        ];
        bool isThousands = files.Length >= FrozenCommands.Thousands;
        string[] ofMost = isThousands ? FrozenCommands.OfThousands : FrozenCommands.OfMany;
        int everything = isThousands ? 20
            : files.Length > FrozenCommands.Few ? 10
            : 1,
            done = 0;
        var began = Stopwatch.StartNew();

        // One by one, not in two halves: what is dear lies unevenly.
        var numbers = Partitioner.Create(Enumerable.Range(0, files.Length), EnumerablePartitionerOptions.NoBuffering);
        Parallel.ForEach(numbers, s_pace, number =>
        {
            bool isAskedEverything = number % everything == 0;
            bool isWanted(string name) =>
                only.Length == 0
                    ? isAskedEverything || ofMost.Contains(name)
                    : only.Contains(name) && (isAskedEverything || !isThousands || ofMost.Contains(name));
            string file = files[number];
            string folder = Path.Combine(output, Path.ChangeExtension(Path.GetRelativePath(visits, file), null));
            foreach ((string name, string[] args) in FrozenCommands.OnVisit.Where(one => isWanted(one.Name)))
                Keep(folder, name, Said(rules, file, isThousands && name == "why.txt" ? Why(number) : args));

            bool isWritten = only.Length == 0 && (isAskedEverything || !isThousands);
            foreach ((string name, string text) in isWritten ? Written(rules, file) : [])
                Keep(folder, name, text);
            int now = Interlocked.Increment(ref done);
            if (now % SaidEvery == 0 || now == files.Length)
                page.WriteLine($"{now} of {files.Length} visits, {began.Elapsed.TotalSeconds:0} s");
        });
        page.WriteLine($"{files.Length} visits written to {output}");
        return 0;
    }

    private static string[] Why(int number) =>
        ["why", "{visit}", FrozenCommands.AskedInTurn[number % FrozenCommands.AskedInTurn.Length]];

    private static void Keep(string folder, string name, string text)
    {
        Directory.CreateDirectory(folder);
        AtomicFile.Write(Path.Combine(folder, name), Plain.Of(text));
    }

    private static string Said(string rules, string visit, string[] args)
    {
        string[] asked = [.. args.Select(arg => arg == "{visit}" ? visit : arg)];
        (int code, string said, string complained) = Run(rules, "", Path.GetDirectoryName(visit)!, "/nowhere", asked);
        return $"exit {code}\n{said}{(complained.Length > 0 ? "--\n" + complained : "")}";
    }

    // The visit as it is saved, and as it is kept for recovery, after one edit each.
    private static IEnumerable<(string Name, string Text)> Written(string rules, string visit)
    {
        string folder = Directory.CreateTempSubdirectory("frozen-").FullName;
        try
        {
            string saved = Path.Combine(folder, "saved.yaml");
            Run(rules, $"area name Renamed\nsave {saved}\nquit\n", folder, folder, ["ask", visit]);
            yield return ("saved.yaml", File.Exists(saved) ? File.ReadAllText(saved) : "not written\n");
            Run(rules, "area name Renamed\n", folder, folder, ["ask", visit]);
            string[] kept = Directory.GetFiles(folder, "recovery*.yaml", SearchOption.AllDirectories);
            yield return ("recovery.yaml", kept.Length == 0 ? "not kept\n" : File.ReadAllText(kept[0]));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (int Code, string Said, string Complained) Run(
        string rules,
        string typed,
        string folder,
        string state,
        string[] args
    )
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int code = CommandLine.Run(
            args,
            new Surroundings
            {
                Out = output,
                Error = error,
                In = new StringReader(typed),
                Time = new StandingClock(),
                IsInputTerminal = false,
                IsOutputTerminal = false,
                WorkingFolder = folder,
                ProgramFolder = "/nowhere",
                Environment = name =>
                    name switch
                    {
                        "WEEDADVISOR_KNOWLEDGE" => rules,
                        "XDG_STATE_HOME" => state,
                        _ => null,
                    },
            }
        );
        return (code, output.ToString(), error.ToString());
    }

    private sealed class StandingClock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(2026, 6, 15, 9, 0, 0, TimeSpan.Zero);
    }
}
