using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Earlier;

/// <summary>
/// Visit files as they were written before files told their format: worked visits, and what an interview saved and kept
/// for recovery. They are never changed: they are read for ever.
/// </summary>
public sealed class FormerFilesTests
{
    private static readonly string s_folder = Path.Combine(
        Repository.Folder,
        "tests",
        "WeedAdvisor.Tests",
        "FormerVisits"
    );

    [Fact]
    public void Files_of_the_first_format_are_read_and_written_in_the_present_one()
    {
        string[] files = [.. Directory.GetFiles(s_folder, "*.yaml").Order(StringComparer.Ordinal)];
        Assert.Equal(6, files.Length);
        string[] written =
        [
            .. files.Select(file =>
            {
                Assert.DoesNotContain("format:", File.ReadAllText(file), StringComparison.Ordinal);
                return VisitText.Of(VisitFile.Read(file, ShippedRules.Knowledge).Value!);
            }),
        ];
        ExpectedText.Matches(string.Join("\n", written));
    }

    [Fact]
    public void What_such_a_file_does_not_tell_of_a_use_is_not_known() =>
        Assert.Equal(
            [
                new PastApplication("oxadiazon-granule", new DateOnly(2026, 3, 1), "escapes", WordSet.Of("liverwort")),
                new PastApplication("isoxaben-dithiopyr-granule", new DateOnly(2025, 10, 4), "clean", WordSet.Empty),
                new PastApplication("isoxaben-prodiamine-granule", null, null, WordSet.Empty),
            ],
            VisitFile
                .Read(Path.Combine(s_folder, "saved-by-an-interview.yaml"), ShippedRules.Knowledge)
                .Value!.Areas[0]
                .Past!.Value.AsEnumerable()
        );

    [Fact]
    public void A_weeds_name_that_several_carry_is_one_line_with_its_place_and_the_weeds_it_may_be()
    {
        const string File =
            "visit: v\ndate: 2026-04-14\nareas:\n  - id: a\n    name: A\n    past:\n"
            + "      - { treatment: oxadiazon-granule, escaped: [nutgrass] }\n";
        Assert.Equal(
            "v.yaml:7:51: found 'nutgrass', which may be nutsedge-purple or nutsedge-yellow; expected the one of them "
                + "that is meant",
            Assert.Single(VisitFile.Parse(File, "v.yaml", ShippedRules.Knowledge).Refusals).ToString()
        );
        Assert.EndsWith(
            "did you mean 'nutsedge-yellow'?",
            Assert
                .Single(
                    VisitFile
                        .Parse(
                            File.Replace("nutgrass", "'Yellow nutsedge'", StringComparison.Ordinal),
                            "v.yaml",
                            ShippedRules.Knowledge
                        )
                        .Refusals
                )
                .ToString(),
            StringComparison.Ordinal
        );
    }
}
