using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Frozen;

/// <summary>Runs every command in every medium on a folder of visits and writes down what it says.</summary>
internal static class Freezer
{
    private static readonly (string Name, string[] Args)[] s_commands =
    [
        ("advise.txt", ["advise", "{visit}"]),
        ("advise-full.txt", ["advise", "{visit}", "--full"]),
        ("advise.json", ["advise", "{visit}", "--format", "json"]),
        ("why.txt", ["why", "{visit}", "oxadiazon-granule"]),
        ("why-hand.txt", ["why", "{visit}", "hand-weed-now"]),
        ("weeding.txt", ["weeding", "{visit}"]),
        ("weeding.json", ["weeding", "{visit}", "--format", "json"]),
        ("money.txt", ["money", "{visit}"]),
        ("money.json", ["money", "{visit}", "--format", "json"]),
        ("money.html", ["money", "{visit}", "--format", "html"]),
        ("season.txt", ["season", "{visit}", "--full"]),
        ("season.json", ["season", "{visit}", "--format", "json"]),
        ("season.html", ["season", "{visit}", "--format", "html"]),
        ("season.ics", ["season", "{visit}", "--format", "ics"]),
        ("rate.txt", ["rate", "product", "treatment", "--visit", "{visit}", "--treatment", "oxadiazon-granule", "--area", "1000 ft2"]),
    ];

    // What a thousand visits are asked: of each topic the medium that says most.
    private static readonly string[] s_ofMany = ["advise.txt", "advise.json", "why.txt", "weeding.json", "money.json", "season.json"];

    /// <summary>Writes one file for each visit and command into the folder, and their hashes.</summary>
    /// <param name="rules">The knowledge folder.</param>
    /// <param name="visits">The visits. Where there are more than a hundred, each topic is asked in one medium only.</param>
    /// <param name="output">Where to write.</param>
    /// <param name="page">Where to say what was done.</param>
    public static int Make(string rules, string visits, string output, TextWriter page)
    {
        string[] files = [.. Directory.GetFiles(visits, "*.yaml").Order(StringComparer.Ordinal)];
        bool isMany = files.Length > 100;
        var hashes = new StringBuilder();
        foreach (string file in files)
        {
            string id = Path.GetFileNameWithoutExtension(file);
            string folder = Path.Combine(output, id);
            Directory.CreateDirectory(folder);
            foreach ((string name, string[] args) in s_commands)
            {
                if (!isMany || s_ofMany.Contains(name))
                    Keep(hashes, folder, id, name, Said(rules, file, args));
            }

            foreach ((string name, string text) in Written(rules, file))
                Keep(hashes, folder, id, name, text);
        }

        AtomicFile.Write(Path.Combine(output, "hashes.txt"), hashes.ToString());
        page.WriteLine($"{files.Length} visits written to {output}");
        return 0;
    }

    private static void Keep(StringBuilder hashes, string folder, string id, string name, string text)
    {
        string plain = Plain.Of(text);
        AtomicFile.Write(Path.Combine(folder, name), plain);
        string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(plain)))[..16];
        hashes.Append(CultureInfo.InvariantCulture, $"{hash} {id}/{name}\n");
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
            string[] kept = [.. Directory.GetFiles(folder, "recovery*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
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
