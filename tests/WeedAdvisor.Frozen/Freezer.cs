using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Frozen;

/// <summary>Asks every command that takes a visit, in every medium, of a folder of visits and writes down what it says.</summary>
internal static class Freezer
{
    // Two at a time: each run is a pure function of its surroundings.
    private static readonly ParallelOptions s_pace = new() { MaxDegreeOfParallelism = 2 };

    /// <summary>Writes one file for each visit and command into the folder.</summary>
    /// <param name="rules">The knowledge folder.</param>
    /// <param name="visits">
    /// The visits. Where there are more than <see cref="FrozenCommands.Few"/>, only every tenth is asked everything.
    /// </param>
    /// <param name="output">Where to write.</param>
    /// <param name="only">The names of the outputs wanted; all when there are none.</param>
    /// <param name="page">Where to say what was done.</param>
    public static int Make(string rules, string visits, string output, string[] only, TextWriter page)
    {
        string[] files = [.. Directory.GetFiles(visits, "*.yaml").Order(StringComparer.Ordinal)];
        bool isMany = files.Length > FrozenCommands.Few;
        Parallel.For(0, files.Length, s_pace, number =>
        {
            bool isAskedEverything = !isMany || number % 10 == 0;
            string file = files[number], id = Path.GetFileNameWithoutExtension(file);
            foreach ((string name, string[] args) in FrozenCommands.OnVisit)
            {
                if (only.Length > 0 ? only.Contains(name) : isAskedEverything || FrozenCommands.OfMany.Contains(name))
                    Keep(Path.Combine(output, id), name, Said(rules, file, args));
            }

            if (only.Length > 0)
                return;
            foreach ((string name, string text) in Written(rules, file))
                Keep(Path.Combine(output, id), name, text);
        });
        page.WriteLine($"{files.Length} visits written to {output}");
        return 0;
    }

    private static void Keep(string folder, string name, string text)
    {
        Directory.CreateDirectory(folder);
        AtomicFile.Write(Path.Combine(folder, name), Plain.Of(text));
    }

    private static string Said(string rules, string visit, string[] args)
    {
        (int code, string said, string complained) = Run(
            rules, "", Path.GetDirectoryName(visit)!, "/nowhere", [.. args.Select(arg => arg == "{visit}" ? visit : arg)]);
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
        string rules, string typed, string folder, string state, string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int code = CommandLine.Run(args, new Surroundings
        {
            Out = output,
            Error = error,
            In = new StringReader(typed),
            Time = new StandingClock(),
            IsInputTerminal = false,
            IsOutputTerminal = false,
            WorkingFolder = folder,
            ProgramFolder = "/nowhere",
            Environment = name => name switch
            {
                "WEEDADVISOR_KNOWLEDGE" => rules,
                "XDG_STATE_HOME" => state,
                _ => null,
            },
        });
        return (code, output.ToString(), error.ToString());
    }

    private sealed class StandingClock : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(2026, 6, 15, 9, 0, 0, TimeSpan.Zero);
    }
}
