using System.Collections.Concurrent;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>A nursery's own folder, from the command line: a bar that it lifts is told in every output.</summary>
public sealed class LocalOptionTests : IClassFixture<LocalOptionTests.LiftedFolder>, IDisposable
{
    private const string Why = "our house has a roof that opens";

    private static readonly string s_demo = Path.Combine(Repository.Rules, "visits", "demo-spring.yaml");

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("weedadvisor-");
    private readonly LiftedFolder _lifted;

    public LocalOptionTests(LiftedFolder lifted) => _lifted = lifted;

    public static TheoryData<string[]> Reports { get; } =
        new(
            ["advise", s_demo],
            ["advise", s_demo, "--full"],
            ["why", s_demo, "hand-weed-now"],
            ["unlock", s_demo, "oxadiazon-granule", "--area", "container-yard"],
            ["weeding", s_demo],
            ["lesson", "clean-starts"],
            ["money", s_demo, "--area", "container-yard"],
            ["plan", s_demo, "--area", "liner-bed"],
            ["season", s_demo, "--area", "liner-bed"]
        );

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [MemberData(nameof(Reports))]
    public void A_lifted_bar_is_told_in_every_medium(string[] command)
    {
        // Pages have one document: where planning takes long, text and JSON are enough.
        bool takesLong = command[0] is "season" or "money" or "plan";
        string[] formats = takesLong ? ["text", "json"] : ["text", "md", "html", "json"];
        foreach (string format in formats)
        {
            CommandRun run = _lifted.Run([.. command, "--format", format]);
            Assert.Equal(0, run.Code);
            string flat = string.Join(' ', run.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains(Why, flat, StringComparison.Ordinal);
            Assert.Contains("practice-not-done-under-glass", flat, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_is_wrong_in_it_is_told_with_its_place_and_exit_code_3()
    {
        Write("prices.yaml", "- { amends: labor-rate, value: 23 }\n");
        CommandRun run = Run("knowledge", "check");
        Assert.Equal(3, run.Code);
        Assert.Contains("local/prices.yaml:1:13: found 'labor-rate'", run.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean 'labour-rate'?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        CommandRun run = CommandRun.Of("knowledge", "check", "--local", "no-such-folder");
        Assert.Equal(4, run.Code);
        Assert.Contains("no local folder 'no-such-folder'", run.Error, StringComparison.Ordinal);
    }

    private CommandRun Run(params string[] command) =>
        CommandRun.Of([.. command, "--knowledge", Repository.Rules, "--local", _folder.FullName]);

    private void Write(string name, string text) => Write(_folder, name, text);

    private static void Write(DirectoryInfo folder, string name, string text)
    {
        using var file = new StreamWriter(Path.Combine(folder.FullName, name));
        file.Write(text);
    }

    /// <summary>A folder that lifts a bar; it does not change, so it is read once in each scope.</summary>
    public sealed class LiftedFolder : IDisposable
    {
        private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("weedadvisor-");
        private readonly ConcurrentDictionary<KnowledgeScope, Outcome<KnowledgeBase, Problem>> _read = [];

        public LiftedFolder() =>
            Write(_folder, "lifts.yaml", $"- {{ bar: practice-not-done-under-glass, because: {Why} }}\n");

        public void Dispose() => _folder.Delete(recursive: true);

        internal CommandRun Run(params string[] command) =>
            CommandRun.With(
                surroundings => surroundings with { ReadKnowledge = Read },
                [.. command, "--knowledge", Repository.Rules, "--local", _folder.FullName]
            );

        private Outcome<KnowledgeBase, Problem> Read(string folder, KnowledgeScope scope, string? local) =>
            _read.GetOrAdd(scope, one => SharedKnowledge.Read(folder, one, local));
    }
}
