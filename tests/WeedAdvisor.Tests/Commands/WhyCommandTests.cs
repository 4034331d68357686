using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Why;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>Why and why not, at the command line.</summary>
public sealed partial class WhyCommandTests
{
    private static readonly string s_visits = Path.Combine(Repository.Rules, "visits");
    private static readonly string s_mist = Path.Combine(s_visits, "mist-house-with-liverwort.yaml");
    private static readonly string[] s_worked =
    [
        "mist-house-with-liverwort",
        "demo-spring",
        "container-yard-with-spurge",
    ];
    private static readonly string[] s_actions =
    [
        "rice-hull-mulch",
        "shorten-mist",
        "hand-weed-now",
        "clean-boots-and-tools",
    ];

    [Theory]
    [InlineData("rice-hull-mulch", "rice-hull-mulch")]
    [InlineData("parboiled rice", "rice-hull-mulch")]
    [InlineData("CUT THE MIST as roots form", "shorten-mist")]
    [InlineData("Clethodim", "clethodim-over-top")]
    [InlineData("sulfentrazone", "sulfentrazone-prodiamine-spray")]
    [InlineData("nonanoic ACID", "pelargonic-acid-floor-spray")]
    public void An_action_is_named_by_id_name_a_part_of_it_or_an_active(string asked, string id)
    {
        CommandRun run = Why(s_mist, asked);
        Assert.Equal("", run.Error);
        Assert.Contains($"({id})", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_that_may_be_meant_are_asked_back_in_one_line()
    {
        CommandRun run = Why(s_mist, "oxadiazon");
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Out);
        Assert.Matches("^weedadvisor: 'oxadiazon' may be one of 4 actions: .*Say which by its id\\.\n$", run.Error);
    }

    [Fact]
    public void Every_line_of_the_working_adds_up_with_the_figures_that_stand_in_it()
    {
        int sums = 0;
        foreach (string action in s_actions)
        {
            foreach (string file in s_worked)
            {
                string text = DocumentText.Of(
                    WhyDocument.Of(
                        ShippedRules.Advisor.Advise(ShippedRules.Visit(file)),
                        ShippedRules.Knowledge.ActionOf(action)!,
                        ShippedRules.Knowledge
                    ),
                    240
                );
                foreach (Match sum in Sum().Matches(text))
                {
                    sums++;
                    (double a, double b, double so) = (Of(sum, "a"), Of(sum, "b"), Of(sum, "so"));
                    Assert.Equal(Of(sum, "a"), Of(sum, "again"));
                    Assert.Equal(a + b * (1 - a), so, 0.0002);
                }

                foreach (Match mixed in Mixed().Matches(text))
                {
                    sums++;
                    double least = Math.Min(Of(mixed, "a"), Of(mixed, "b"));
                    Assert.Equal(least, Of(mixed, "least"));
                    Assert.Equal((Of(mixed, "a") - Of(mixed, "b")) / (1 - least), Of(mixed, "so"), 0.001);
                }

                foreach (Match worth in Worth().Matches(text))
                {
                    sums++;
                    Assert.Equal(Of(worth, "a") * Of(worth, "b"), Of(worth, "so"), 0.0002);
                }
            }
        }

        Assert.InRange(sums, 12, int.MaxValue);
    }

    [Fact]
    public void Where_nothing_speaks_for_it_the_rules_that_nearly_do_are_told_the_nearest_first()
    {
        string text = Why(s_mist, "hand-weed-now").Out;
        string other = Why(Path.Combine(s_visits, "clean-yard-in-august.yaml"), "scrape-off-liverwort").Out;
        Assert.DoesNotContain("WHAT WOULD SPEAK FOR IT", text, StringComparison.Ordinal);
        Assert.Contains("WHAT WOULD SPEAK FOR IT, THE NEAREST FIRST", other, StringComparison.Ordinal);
        int[] missed =
        [
            .. Missed()
                .Matches(other.ReplaceLineEndings(" "))
                .Select(match => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)),
        ];
        Assert.NotEmpty(missed);
        Assert.Equal(missed.Order(), missed);
        Assert.Contains("[no]", other, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_working_and_the_nearest_rules_with_their_conditions()
    {
        using JsonDocument mist = JsonDocument.Parse(Why(s_mist, "rice-hull-mulch", "--format", "json").Out);
        JsonElement working = mist.RootElement.GetProperty("areas")[0].GetProperty("working");
        Assert.Equal(4, working.GetProperty("for").GetArrayLength());
        Assert.Equal(0.8898, working.GetProperty("certainty").GetDouble(), 0.001);
        using JsonDocument yard = JsonDocument.Parse(
            Why(Path.Combine(s_visits, "clean-yard-in-august.yaml"), "scrape-off-liverwort", "--format", "json").Out
        );
        JsonElement nearest = yard.RootElement.GetProperty("areas")[0].GetProperty("nearest");
        Assert.NotEqual(0, nearest.GetArrayLength());
        Assert.All(nearest.EnumerateArray(), rule => Assert.NotEqual(0, rule.GetProperty("missed").GetInt32()));
    }

    // A roof is lifted one day, and vapour under it still says more than a label that names another place.
    [Theory]
    [InlineData("floor", "acetic-acid-spray", "Trapped vapour and residue hurt crops and people")]
    [InlineData("hollies", "halosulfuron-directed", "injure")]
    [InlineData("grasses", "fluazifop-over-top", "kills grasses")]
    public void The_page_and_why_tell_the_same_reason_of_a_bar(string area, string action, string reason)
    {
        string visit = Path.Combine(s_visits, "may-i-use-it.yaml");
        CommandRun page = CommandRun.Of("advise", visit, "--area", area, "--knowledge", Repository.Rules);
        string verdict = Why(visit, action, "--area", area).Out.Split("\n\n")[1];
        string told = string.Join(' ', page.Out.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(reason, told, StringComparison.Ordinal);
        Assert.Contains(reason, verdict.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private static CommandRun Why(string visit, string action, params string[] more) =>
        CommandRun.Of(["why", visit, action, .. more, "--knowledge", Repository.Rules]);

    private static double Of(Match match, string group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@": (?<a>[\d.]+) \+ (?<b>[\d.]+) x \(1 - (?<again>[\d.]+)\) = (?<so>[\d.]+)")]
    private static partial Regex Sum();

    [GeneratedRegex(@"\((?<a>[\d.]+) - (?<b>[\d.]+)\) / \(1 - (?<least>[\d.]+)\) = (?<so>-?[\d.]+)")]
    private static partial Regex Mixed();

    [GeneratedRegex(@"Worth: (?<a>[\d.]+) x (?<b>[\d.]+) = (?<so>[\d.]+)")]
    private static partial Regex Worth();

    [GeneratedRegex(@": (\d+) +conditions? +(?:is|are) +not +met")]
    private static partial Regex Missed();
}
