using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Commands;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Earlier;

/// <summary>
/// Visits drawn at random in the first file format, with the words the rules had then (tests/frozen/first). They are
/// never changed: they are read for ever.
/// </summary>
public sealed class DrawnVisitsTests
{
    private static readonly string s_repository = Repository.Folder;

    private static string[] Files =>
        [
            .. Directory
                .GetFiles(Path.Combine(s_repository, "tests", "frozen", "first", "visits"), "*.yaml")
                .Order(StringComparer.Ordinal),
        ];

    private static IEnumerable<string> Some => Files.Take(Sizes.Of(5, 300));

    [Fact]
    public void There_are_three_hundred() => Assert.Equal(300, Files.Length);

    [Fact]
    public void They_are_read_and_nothing_in_them_is_lost()
    {
        foreach (string file in Some)
        {
            var read = VisitFile.Read(file, ShippedRules.Knowledge);
            Assert.True(read.IsGood, $"{file}: {string.Join("; ", read.Refusals)}");
            string[] lines = File.ReadAllLines(file);
            Assert.Equal(Beginning(lines, "  - id: "), read.Value.Areas.Length);
            Assert.Equal(Beginning(lines, "      - { weed: "), read.Value.Areas.Sum(area => Count(area.Weeds)));
            Assert.Equal(Beginning(lines, "      - { treatment: "), read.Value.Areas.Sum(area => Count(area.Past)));
            Assert.Equal(lines.Count(IsAnswer), read.Value.Areas.Sum(area => area.Answers.Count));
        }
    }

    [Fact]
    public void Written_in_the_present_format_they_are_the_same_visits()
    {
        foreach (string file in Some)
        {
            string written = VisitText.Of(VisitFile.Read(file, ShippedRules.Knowledge).Value!);
            Assert.Contains("format: 2\n", written, StringComparison.Ordinal);
            Assert.Equal(written, VisitText.Of(VisitFile.Parse(written, "again.yaml", ShippedRules.Knowledge).Value!));
        }
    }

    [Fact]
    public void Advice_is_given_on_them_without_a_complaint()
    {
        foreach (string file in Some)
        {
            CommandRun run = CommandRun.Of("advise", file, "--knowledge", Path.Combine(s_repository, "rules"));
            Assert.Equal((ExitCode.Done, ""), (run.Code, run.Error));
        }
    }

    private static int Beginning(string[] lines, string with) =>
        lines.Count(line => line.StartsWith(with, StringComparison.Ordinal));

    private static bool IsAnswer(string line) =>
        line.StartsWith("      ", StringComparison.Ordinal) && char.IsAsciiLetterLower(line[6]);

    private static int Count<T>(System.Collections.Immutable.ImmutableArray<T>? list) => list?.Length ?? 0;
}
