using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class VisitFileTests
{
    private static readonly string s_good = FixtureFiles.All["visits/wet-house.yaml"];

    [Fact]
    public void A_visit_is_read_and_what_it_must_lead_to_is_passed_over()
    {
        Visit visit = Parse(s_good).Value!;
        VisitArea bench = visit.Areas[0];

        Assert.Equal(("wet-house", "A wet house", new DateOnly(2026, 4, 14)), (visit.Id, visit.Title, visit.Date));
        Assert.Equal("Example Nursery (invented)", visit.Nursery);
        Assert.Equal(["bench", "yard"], visit.Areas.Select(area => area.Id));
        Assert.Equal(new Answer.Words(WordSet.Of(["house"])), bench.Answers["place"]);
        Assert.Equal(new Answer.Words(WordSet.Of(["spreader"])), bench.Answers["equipment"]);
        Assert.Equal(new Answer.Words(WordSet.Empty), bench.Answers["crops"]);
        Assert.Equal(new Answer.Date(new DateOnly(2026, 4, 1)), bench.Answers["potted-on"]);
        Assert.Equal(new Answer.Number(2.5m), bench.Answers["mulch-depth"]);
        Assert.Equal(new Answer.NotKnown(), bench.Answers["sides"]);
        Assert.Equal([new WeedSeen("liverwort", "mature", 20)], bench.Weeds!.Value);
        Assert.Equal(
            [new PastApplication("oxadine-granules", new DateOnly(2026, 3, 1), "escapes", WordSet.Of(["liverwort"]))],
            bench.Past!.Value
        );
    }

    [Fact]
    public void What_is_left_out_or_not_known_is_not_known_and_an_empty_list_is_none()
    {
        VisitArea yard = Parse(s_good).Value!.Areas[1];

        Assert.Null(yard.Weeds);
        Assert.Empty(yard.Past!.Value);
        Assert.Empty(yard.Answers);
        Assert.Null(Parse("visit: v\ndate: 2026-01-01\nareas: [{ id: a, name: A }]\n").Value!.Areas[0].Past);
    }

    [Fact]
    public void A_visit_without_areas_can_be_kept() =>
        Assert.Empty(Parse("visit: v\ndate: 2026-01-01\nareas: []\n").Value!.Areas);

    [Fact]
    public void Stage_cover_date_and_result_may_be_not_known()
    {
        VisitArea area = Area(
            "weeds: [{ weed: liverwort, stage: not-known, cover-percent: not-known }], "
                + "past: [{ treatment: oxadine-granules, date: not-known, result: unknown }]"
        ).Value!.Areas[0];

        Assert.Equal([new WeedSeen("liverwort", null, null)], area.Weeds!.Value);
        Assert.Equal([new PastApplication("oxadine-granules", null, null, WordSet.Empty)], area.Past!.Value);
    }

    [Fact]
    public void A_file_is_read_from_the_disk()
    {
        using var folder = new TempFolder();

        Assert.Equal("wet-house", VisitFile.Read(folder.Write("v.yaml", s_good), FixtureKnowledge.Good).Value?.Id);
    }

    [Fact]
    public void A_missing_file_a_folder_and_a_path_that_cannot_be_are_problems()
    {
        using var folder = new TempFolder();

        Assert.Equal("no such file", Found(folder.At("missing.yaml")));
        Assert.Equal("no such file", Found(folder.At("missing/v.yaml")));
        Assert.Equal("a folder", Found(folder.Path));
        Assert.StartsWith("a file that cannot be read", Found("a\0b"), StringComparison.Ordinal);
        Assert.StartsWith("a file that cannot be read", Found(""), StringComparison.Ordinal);
        Assert.StartsWith("a file that cannot be read", Found(new string('x', 5000)), StringComparison.Ordinal);

        static string Found(string path) => Assert.Single(VisitFile.Read(path, FixtureKnowledge.Good).Refusals).Found;
    }

    [Fact]
    public void A_file_of_10_MB_is_refused_and_one_that_never_ends_too()
    {
        using var folder = new TempFolder();
        string large = folder.Write("large.yaml", new string('#', 10_000_000));

        Assert.Equal("a file of more than 4096 KB", VisitFile.Read(large, FixtureKnowledge.Good).Refusals[0].Found);
        Assert.Equal("a file of more than 4096 KB", Parse(new string('#', 10_000_000)).Refusals[0].Found);
        if (File.Exists("/dev/zero"))
            Assert.Equal(
                "a file of more than 4096 KB",
                VisitFile.Read("/dev/zero", FixtureKnowledge.Good).Refusals[0].Found
            );
    }

    [Fact]
    public void A_thousand_areas_are_read()
    {
        string areas = string.Concat(
            Enumerable
                .Range(0, 1000)
                .Select(i =>
                    $"  - {{ id: bed-{i}, name: Bed {i}, answers: {{ place: yard, cover: open-sky }}, weeds: [] }}\n"
                )
        );

        Assert.Equal(1000, Parse($"visit: v\ndate: 2026-01-01\nareas:\n{areas}").Value!.Areas.Length);
    }

    private static Outcome<Visit, Problem> Parse(string text) =>
        VisitFile.Parse(text, "visit.yaml", FixtureKnowledge.Good);

    private static Outcome<Visit, Problem> Area(string keys) =>
        Parse($"visit: v\ndate: 2026-04-14\nareas:\n  - {{ id: a, name: A, {keys} }}\n");
}
