using System.Text.Json;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>What if, and what would have to change, at the command line.</summary>
public sealed class WhatIfCommandTests
{
    private static readonly string s_mist = Path.Combine(Repository.Rules, "visits", "mist-house-with-liverwort.yaml");

    [Fact]
    public void The_statuses_then_are_those_of_a_visit_with_these_answers_and_the_file_stays()
    {
        string before = File.ReadAllText(s_mist);
        using JsonDocument json = JsonDocument.Parse(
            Run("whatif", s_mist, "surface-moisture=dry", "stock=rooted", "--format", "json").Out
        );
        Assert.Equal(before, File.ReadAllText(s_mist));
        string copy = Path.Combine(Path.GetTempPath(), $"weedadvisor-whatif-{Guid.NewGuid():N}.yaml");
        try
        {
            using (StreamWriter file = File.CreateText(copy))
            {
                file.Write(
                    before
                        .Replace("surface-moisture: wet", "surface-moisture: dry-between", StringComparison.Ordinal)
                        .Replace("stock: unrooted-cuttings", "stock: rooted-liners", StringComparison.Ordinal)
                );
            }

            foreach (
                JsonElement action in json.RootElement.GetProperty("areas")[0].GetProperty("actions").EnumerateArray()
            )
            {
                string id = action.GetProperty("action").GetString()!;
                if (id is not ("hand-weed-now" or "shorten-mist" or "rice-hull-mulch"))
                    continue;
                using JsonDocument why = JsonDocument.Parse(Run("why", copy, id, "--format", "json").Out);
                Assert.Equal(
                    why.RootElement.GetProperty("areas")[0].GetProperty("status").GetString(),
                    action.GetProperty("then").GetProperty("status").GetString()
                );
            }
        }
        finally
        {
            File.Delete(copy);
        }
    }

    [Fact]
    public void What_appears_goes_and_turns_is_told()
    {
        string text = Run("whatif", s_mist, "surface-moisture=dry").Out;
        foreach (
            string part in (string[])
                [
                    "IF IT WERE SO",
                    "WHAT IS DONE FIRST",
                    "WHAT GOES",
                    "WHAT IS SO THEN, AND WHAT NO LONGER",
                    "- No longer: The surface stays wet between waterings.",
                ]
        )
            Assert.Contains(part, text, StringComparison.Ordinal);
        Assert.Contains(
            "Nothing would be otherwise.",
            Run("whatif", s_mist, "surface-moisture=wet").Out,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("'damp' is no answer", "damp")]
    [InlineData("no question 'surface-mosture' (did you mean 'surface-moisture'?)", "surface-mosture=wet")]
    [InlineData("'weeds' is a list", "weeds=none")]
    [InlineData("drainage: ", "drainage=swampy")]
    public void A_slip_is_one_line(string told, string answer)
    {
        CommandRun run = Run("whatif", s_mist, answer);
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Out);
        Assert.Contains(told, Assert.Single(run.Complaints), StringComparison.Ordinal);
    }

    [Fact]
    public void What_waits_for_roots_is_told_as_nothing_that_anybody_can_do()
    {
        string text = Run("unlock", s_mist, "rice-hull-mulch").Out.ReplaceLineEndings(" ");
        Assert.Contains("Nothing that you can do or tell clears it.", text, StringComparison.Ordinal);
        Assert.Contains("Only time brings it.", text, StringComparison.Ordinal);
        Assert.Contains("By waiting alone: when clean trays are stuck next", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_in_the_growers_hand_is_told_with_what_is_so_now()
    {
        string text = Run("unlock", s_mist, "water-by-need").Out.ReplaceLineEndings(" ");
        Assert.Contains("What you can change or have not told yet:", text, StringComparison.Ordinal);
        Assert.Contains("(now: mist or fog)", text, StringComparison.Ordinal);
    }

    private static CommandRun Run(params string[] args) => CommandRun.Of([.. args, "--knowledge", Repository.Rules]);
}
