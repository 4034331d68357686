using System.Text.Json;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

public sealed class IdentifyCommandTests
{
    private static readonly string s_rules = Repository.Rules;

    [Theory]
    [InlineData("no feature 'milky-spa' (did you mean 'milky-sap'?)", "milky-spa")]
    [InlineData("no feature 'milky-spa' (did you mean 'milky-sap'?)", "hairy", "--not", "milky-spa")]
    [InlineData("no feature 'xyzzy'. See 'weedadvisor identify --list'", "xyzzy")]
    [InlineData("'leaves' fits several features: ", "leaves")]
    [InlineData("a feature has no name", "...")]
    [InlineData("feature 'hairy' cannot be both there and not there", "hairy", "--not", "clearly hairy")]
    [InlineData("argument missing for option: '--not'", "hairy", "--not")]
    [InlineData("--format json needs a feature", "--format", "json")]
    [InlineData("--format is one of text, json, not 'yaml'", "hairy", "--format", "yaml")]
    public void A_slip_ends_with_code_2_and_one_line(string said, params string[] args)
    {
        CommandRun run = CommandRun.Of(["identify", "--knowledge", s_rules, .. args]);
        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains(said, Assert.Single(run.Complaints), StringComparison.Ordinal);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Features_are_named_by_word_or_text()
    {
        CommandRun word = CommandRun.Of("identify", "milky-sap", "purple-spot-on-leaf", "--knowledge", s_rules);
        CommandRun text = CommandRun.Of("identify", "milky sap", "Dark blotch", "--knowledge", s_rules);
        Assert.Equal(ExitCode.Done, word.Code);
        Assert.Equal(word.Out, text.Out);
        Assert.Contains("ONE WEED FITS ALL OF IT\n  - spotted spurge", word.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_there_may_follow_one_option_or_several()
    {
        CommandRun one = CommandRun.Of("identify", "milky-sap", "--not", "hairy", "taproot", "--knowledge", s_rules);
        CommandRun two = CommandRun.Of(
            "identify",
            "--not",
            "taproot",
            "--not",
            "hairy",
            "--knowledge",
            s_rules,
            "milky-sap"
        );
        Assert.Equal(ExitCode.Done, one.Code);
        Assert.Equal(one.Out, two.Out);
        Assert.Contains("Not there: clearly hairy; strong taproot", one.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_ranks_every_weed()
    {
        CommandRun run = CommandRun.Of(
            "identify",
            "three-heart-shaped-leaflets",
            "--format",
            "json",
            "--knowledge",
            s_rules
        );
        using var json = JsonDocument.Parse(run.Out);
        JsonElement weeds = json.RootElement.GetProperty("weeds");
        // One file a weed; the broad kinds, in a file of their own, are not to be identified.
        Assert.Equal(Directory.EnumerateFiles(Path.Combine(s_rules, "weeds")).Count() - 1, weeds.GetArrayLength());
        Assert.Equal("woodsorrel-creeping", weeds[0].GetProperty("id").GetString());
        Assert.True(weeds[0].GetProperty("fitsAll").GetBoolean());
    }

    [Fact]
    public void Every_feature_is_listed_and_can_be_named()
    {
        CommandRun text = CommandRun.Of("identify", "--list", "--knowledge", s_rules);
        CommandRun run = CommandRun.Of("identify", "--list", "--format", "json", "--knowledge", s_rules);
        using var json = JsonDocument.Parse(run.Out);
        string[] words =
        [
            .. json
                .RootElement.GetProperty("features")
                .EnumerateArray()
                .Select(f => f.GetProperty("feature").GetString()!),
        ];
        Assert.NotEmpty(words);
        Assert.All(words, word => Assert.Contains(word + " ", text.Out, StringComparison.Ordinal));
        Assert.Equal(ExitCode.Done, CommandRun.Of(["identify", .. words, "--knowledge", s_rules]).Code);
    }

    [Fact]
    public void Without_features_it_asks()
    {
        using var answers = new StringReader("yes\nquit\n");
        CommandRun run = CommandRun.In(answers, "identify", "--knowledge", s_rules);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("Do you see this: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("Seen: ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Knowledge_of_a_single_weed_has_nothing_to_ask()
    {
        CommandRun run = CommandRun.Of("identify");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("ONE WEED FITS ALL OF IT\n  - Liverwort", run.Out, StringComparison.Ordinal);
    }
}
