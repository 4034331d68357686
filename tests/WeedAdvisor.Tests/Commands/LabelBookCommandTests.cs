using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>The label book at the command line: where it is found, and that its line stands in every output.</summary>
public sealed class LabelBookCommandTests : IDisposable
{
    private const string Line = "By your label of Own granules, read 2026-01-05: 7 days after potting";
    private static readonly string s_rules = Repository.Rules;
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("weedadvisor-labels-");
    private readonly string _visit;
    private readonly string _book;

    public LabelBookCommandTests()
    {
        _visit = Path.Combine(_folder.FullName, "visit.yaml");
        _book = Path.Combine(_folder.FullName, "labels.yaml");
        File.Copy(Path.Combine(s_rules, "visits", "demo-spring.yaml"), _visit);
        Write(
            _book,
            """
            - id: own-granules
              name: Own granules
              treatment: oxadiazon-granule
              read: 2026-01-05
              wait-after-potting-days: 7
            """
        );
    }

    [Theory]
    [InlineData("advise")]
    [InlineData("advise", "--full")]
    [InlineData("advise", "--format", "json")]
    [InlineData("why", "oxadiazon-granule")]
    [InlineData("why", "OWN granules")]
    [InlineData("money", "--area", "container-yard")]
    [InlineData("season", "--area", "liner-bed")]
    [InlineData("season", "--area", "liner-bed", "--format", "json")]
    public void A_book_beside_the_visit_speaks_in_every_output(string command, params string[] more)
    {
        CommandRun run = Run([command, _visit, .. more]);
        Assert.Equal(0, run.Code);
        Assert.Contains(Unwrapped(Line), Unwrapped(run.Out), StringComparison.Ordinal);
        Assert.Contains(
            more is ["--format", "json"] ? "\"labels-hash\"" : "+labels-",
            run.Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_named_book_that_is_not_there_is_one_line()
    {
        CommandRun run = Run(["advise", _visit, "--labels", "nowhere.yaml"]);
        Assert.Equal(4, run.Code);
        Assert.Contains("no label book 'nowhere.yaml'", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_the_book_is_told_with_its_place()
    {
        Write(_book, "- id: own\n  name: Own\n  treatment: oxadiazon-granul\n  read: 2026-01-05\n");
        CommandRun run = Run(["advise", _visit]);
        Assert.Equal(2, run.Code);
        Assert.Contains(":3:14: found 'oxadiazon-granul'", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_read_on_a_day_still_to_come_clears_nothing_and_is_told_with_its_place()
    {
        Write(_book, "- id: own\n  name: Own\n  treatment: oxadiazon-granule\n  read: 2026-04-15\n");
        CommandRun run = Run(["advise", _visit]);
        Assert.Equal(2, run.Code);
        Assert.Contains(
            ":4:9: found 2026-04-15; expected a day not after today, 2026-04-14",
            run.Error,
            StringComparison.Ordinal
        );
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static CommandRun Run(string[] args) =>
        CommandRun.With(
            s =>
                s with
                {
                    Environment = name => name == "WEEDADVISOR_KNOWLEDGE" ? s_rules : null,
                    Time = new FixedClock(new DateTimeOffset(2026, 4, 14, 9, 0, 0, TimeSpan.Zero)),
                },
            args
        );

    private static void Write(string path, string text)
    {
        using var stream = new FileStream(path, FileMode.Create);
        stream.Write(System.Text.Encoding.UTF8.GetBytes(text));
    }

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }

    private static string Unwrapped(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
